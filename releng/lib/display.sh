# Displays for windows on a machine without one. Sourced, not run.

display_pids=
# start_display [VARIABLE]: an own X server with a window manager, ended with the script; VARIABLE (DISPLAY) names it.
# Keys do not repeat themselves (-r): on a busy machine one that is pressed once would.
start_display() {
	local pipe number variable="${1:-DISPLAY}"
	pipe="$(mktemp -u)" && mkfifo "$pipe"
	Xvfb -displayfd 3 -r -screen 0 1600x1000x24 -nolisten tcp 3>"$pipe" 2>/dev/null &
	display_pids="$display_pids $!"
	read -r number <"$pipe"
	rm -f "$pipe"
	export "$variable=:$number"
	DISPLAY=":$number" openbox >/dev/null 2>&1 &
	display_pids="$display_pids $!"
	trap 'kill $display_pids 2>/dev/null || true' EXIT
}
