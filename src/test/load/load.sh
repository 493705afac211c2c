#!/usr/bin/env bash
# load.sh PORT SECONDS ROUNDS: asks, and does nothing, by turns, at 1 and at 32 clients. One line each: clients, address, requests/s, p50 ms, p99 ms, failed.
# Needs wrk. The server is pairwright.http.LoadServer of the tests, which is the real one and one address more.
set -euo pipefail
port=$1 seconds=$2 rounds=$3
here=$(dirname "$0")
command -v wrk > /dev/null || { echo "wrk is missing. Install it (package wrk)" >&2; exit 2; }
begin=0
run() { # clients, address, seconds
  begin=$((begin + 3001))
  wrk -t1 -c"$1" -d"$3"s --timeout 20s -s "$here/ask.lua" "http://127.0.0.1:$port" -- "$2" "$begin" | sed -n "s/^RESULT/$1 ${2//\//.}/p"
}
run 4 /api/ask "$seconds" > /dev/null # warm
run 4 /nothing "$seconds" > /dev/null
for _ in $(seq "$rounds"); do
  for clients in 1 32; do
    run $clients /nothing "$seconds"
    run $clients /api/ask "$seconds"
  done
done
