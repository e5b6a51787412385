#!/bin/sh
# A general solver library beside the search of akin solve, on the usual kit and two samples: how many plans each
# has the rules judge before it holds an answer as good as ours, and how long it takes. Both judge with the same rules, and the
# library is given the same starts and the same turns.
#
#   engine/bench/solver-library.sh [RIG ...]
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd -P)
[ $# -gt 0 ] || set -- "$root/engine/bench/usual-kit.yaml" "$root/samples/night-market/rig.yaml" "$root/samples/regatta/rig.yaml"
here=$PWD
cd "$root"
for rig; do
  case $rig in /*) ;; *) rig=$here/$rig ;; esac
  mvn -B -q -Dquick -Pbench -DskipTests -Dbench.main=akin.engine.assess.LibrarySearch "-Dbench=$rig" -pl engine -am verify
done
