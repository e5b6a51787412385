#!/bin/sh
# How long akin takes to rank a kit list, and how much memory: wall time, processor time and the largest resident set of
# the whole process, as started by the launcher.
#
#   engine/bench/survey.sh [BODIES] [LENSES]
#
# 50 bodies and 100 lenses (the default) are 100,000 candidates. The gear is invented by engine/bench/KitList.java, the same
# each time; the rig is the matched pair that rule pages start from. Give processor time as well as wall time where others use
# the machine.
set -eu
here=$(cd "$(dirname "$0")" && pwd -P)
root=$(cd "$here/../.." && pwd -P)
[ -x /usr/bin/time ] || { echo 'survey.sh needs GNU time as /usr/bin/time' >&2; exit 2; }
kit=$(mktemp -d)
trap 'rm -rf "$kit"' EXIT
java "$here/KitList.java" "$kit" "${1:-50}" "${2:-100}"
"$root/engine/bin/akin" --version
/usr/bin/time -f '%e s wall, %U s + %S s processor, %M kB resident' "$root/engine/bin/akin" survey \
  "$root/rules/src/main/resources/akin/rules/matched-pair.yaml" --candidates "$kit" --top 1 --out "$kit/report.txt"
sed -n '2,4p' "$kit/report.txt"
