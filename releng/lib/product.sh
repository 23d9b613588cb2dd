# Where the built product is, and building it. Sourced, not run.

repository="$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)"

# product: prints the folder of the product for this machine.
product() {
	local os=linux ws=gtk arch
	[ "$(uname)" = Darwin ] && os=macosx ws=cocoa
	arch="$(uname -m)"
	[ "$arch" = arm64 ] && arch=aarch64
	echo "$repository/releng/org.frisket.product/target/products/org.frisket.product/$os/$ws/$arch"
}

# is_built: whether there is a product no older than any source.
is_built() {
	local built
	built="$(product)/frisket"
	[ -x "$built" ] && [ -z "$(find "$repository"/{bundles,features,releng,pom.xml,.mvn} \
		-path '*/target' -prune -o -type f -newer "$(product)/configuration/config.ini" -print -quit 2>/dev/null)" ]
}

# build_product: builds it without the tests, if it is not built.
build_product() {
	is_built && return 0
	echo "Building the product; the first time this fetches a good deal and takes some minutes." >&2
	(cd "$repository" && releng/mvnw -B -q -DwithoutTests package) >&2
	touch "$(product)/configuration/config.ini"
}
