# Installs what a script needs and the machine lacks. Sourced, not run.

# install_packages NAME...: Debian packages; does nothing, and asks for no rights, when all are there.
install_packages() {
	local missing=() name
	for name in "$@"; do
		dpkg-query -W -f='${Status}' "$name" 2>/dev/null | grep -q 'ok installed' || missing+=("$name")
	done
	[ ${#missing[@]} -eq 0 ] && return 0
	local as_root=()
	if [ "$(id -u)" -ne 0 ]; then
		command -v sudo >/dev/null || { echo "Please install as root: ${missing[*]}" >&2; return 1; }
		as_root=(sudo)
	fi
	echo "Installing ${missing[*]}" >&2
	"${as_root[@]}" apt-get update -qq >&2
	"${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >&2
}

# need_java: a Java 17 or newer, with its compiler.
need_java() {
	local major
	major="$(javac -version 2>&1 | sed -nE 's/^javac ([0-9]+).*/\1/p')"
	[ "${major:-0}" -ge 17 ] || install_packages openjdk-17-jdk-headless
}
