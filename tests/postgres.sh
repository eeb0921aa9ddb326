#!/bin/sh
# Start a throw-away PostgreSQL server, run the given command with QUARTERDAY_DATABASE naming it,
# stop the server and remove its folder. Works as root (then as user postgres) and as anybody.
# It listens on no network, only on a socket in its own folder: that is why it trusts who connects.
set -eu

# the newest version installed
bin=$(ls -d /usr/lib/postgresql/*/bin 2>/dev/null | sort -t/ -k5 -n | tail -n 1)
if [ -z "$bin" ] || [ ! -x "$bin/initdb" ]; then
    echo "PostgreSQL is not installed (no initdb in /usr/lib/postgresql/*/bin): its tests were skipped." >&2
    [ "${CI:-}" != true ] # under CI a skipped test is a failure
    exit
fi

if [ "$(id -u)" = 0 ]; then
    as_owner() { runuser -u postgres -- "$@"; }
else
    as_owner() { "$@"; }
fi

folder=$(mktemp -d "${TMPDIR:-/tmp}/quarterday-pg.XXXXXX")
[ "$(id -u)" != 0 ] || chown postgres "$folder"
data=$folder/data

stop() {
    (cd / && as_owner "$bin/pg_ctl" -D "$data" -m fast -w -s stop) || true
    rm -rf "$folder"
}
trap stop EXIT
trap 'exit 1' HUP INT TERM

(
    cd / # the postgres user may not read the current folder
    # another order of letters than SQLite's, where the version has it (15 and later)
    locale=$("$bin/initdb" --help | grep -q icu-locale && echo "--locale-provider=icu --icu-locale=en-CA" || true)
    # shellcheck disable=SC2086 # two options or none
    as_owner "$bin/initdb" -D "$data" -U postgres -A trust --no-sync -E UTF8 $locale >"$folder/initdb.log" ||
        { cat "$folder/initdb.log" >&2; exit 1; }
    as_owner "$bin/pg_ctl" -D "$data" -w -t 60 -s -l "$folder/data/server.log" \
        -o "-c listen_addresses='' -c unix_socket_directories='$folder'" start ||
        { cat "$folder/data/server.log" >&2; exit 1; }
)
QUARTERDAY_DATABASE="postgresql://postgres@/postgres?host=$folder" "$@"
