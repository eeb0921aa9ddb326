#!/bin/sh
# What must hold before anything is kept: style, layers, types, and every test on both databases.
set -eu
cd "$(dirname "$0")/.."
BIN=${BIN:-.venv/bin}
SPREAD="-n auto --dist loadfile" # over all processors, a file of tests to one of them
unset QUARTERDAY_DATABASE QUARTERDAY_HOME DJANGO_SETTINGS_MODULE
unset PYTHONDONTWRITEBYTECODE # tests start the program some hundred times: it is compiled once

step() { printf '\n%s\n' "--- $1"; }

step "style"
"$BIN/ruff" check .
"$BIN/ruff" format --check .
step "layers"
"$BIN/lint-imports"
step "types"
"$BIN/mypy"
step "tests, on SQLite"
"$BIN/pytest" $SPREAD
step "the desk in a browser"
"$BIN/pytest" tests/browser
step "tests that use the store, on PostgreSQL"
sh tests/postgres.sh "$BIN/pytest" $SPREAD -m store
