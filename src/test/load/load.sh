#!/usr/bin/env bash
# load.sh PORT SECONDS ROUNDS: asks with the usual draws, without, and does nothing, by turns, at 1 and at 32 clients. One line each: clients, what, requests/s, p50 ms, p99 ms, failed.
# Needs wrk. The server is pairwright.http.LoadServer of the tests, which is the real one and one address more.
set -euo pipefail
port=$1 seconds=$2 rounds=$3
here=$(dirname "$0")
command -v wrk > /dev/null || { echo "wrk is missing. Install it (package wrk)" >&2; exit 2; }
begin=0
run() { # clients, address, seconds, draws, name
  begin=$((begin + 3001))
  wrk -t1 -c"$1" -d"$3"s --timeout 20s -s "$here/ask.lua" "http://127.0.0.1:$port" -- "$2" "$begin" "$4" | sed -n "s/^RESULT/$1 $5/p"
}
run 4 /api/ask $((4 * seconds)) 200 warm > /dev/null
run 4 /nothing "$seconds" 200 warm > /dev/null
for _ in $(seq "$rounds"); do
  for clients in 1 32; do
    run $clients /nothing "$seconds" 200 nothing
    run $clients /api/ask "$seconds" 200 ask
    run $clients /api/ask "$seconds" 0 undrawn
  done
done
