# A PostgreSQL server of a script's own, on this machine alone. Sourced, not run.

postgres_folder=
# start_postgres VARIABLE: an empty server that asks for no password; VARIABLE holds its address.
start_postgres() {
	local programs port as=()
	programs="$(ls -d /usr/lib/postgresql/*/bin | sort -V | tail -n 1)"
	postgres_folder="$(mktemp -d)"
	# the server refuses to be run by root
	if [ "$(id -u)" -eq 0 ]; then
		chown postgres "$postgres_folder"
		as=(runuser -u postgres --)
	fi
	port="$(python3 -c 'import socket; s = socket.socket(); s.bind(("127.0.0.1", 0)); print(s.getsockname()[1])')"
	"${as[@]}" "$programs/initdb" -D "$postgres_folder/data" -U frisket -A trust -E UTF8 --no-locale >/dev/null
	"${as[@]}" "$programs/pg_ctl" -D "$postgres_folder/data" -w -l "$postgres_folder/log" \
		-o "-c listen_addresses=127.0.0.1 -c unix_socket_directories='' -p $port" start >/dev/null
	export "$1=jdbc:postgresql://127.0.0.1:$port/postgres?user=frisket"
}

stop_postgres() {
	local as=()
	[ -n "$postgres_folder" ] || return 0
	[ "$(id -u)" -ne 0 ] || as=(runuser -u postgres --)
	"${as[@]}" "$(ls -d /usr/lib/postgresql/*/bin | sort -V | tail -n 1)/pg_ctl" -D "$postgres_folder/data" -m immediate stop >/dev/null
	rm -rf "$postgres_folder"
}
