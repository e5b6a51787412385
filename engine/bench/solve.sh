#!/bin/sh
# How long akin solve takes from nothing to its answer, as a multiple of the plainest Java program on the same Java, and how
# few of all plans it judges for it.
#
#   engine/bench/solve.sh [RUNS]
#
# For each Java found (AKIN_BENCH_JAVAS: folders, colons between; else 17 and the newest under /usr/lib/jvm) it compiles a
# program that prints one word, has akin make its class-data archive, and then runs, in turn, RUNS times over: that
# program; akin check and akin solve of the usual kit (usual-kit.yaml: ten modes, three zooms and a prime, 20 ISO steps, eight
# filters, a dial of shutters); the same of samples/night-market. Medians of the whole process's wall and processor time,
# ratios to the first. In turn, so that a busy moment strikes all alike.
#
# Then, for each rig: the plans that were judged, all that its settings give, what one costs (the processor time of solve over
# that of check, by plan), and how long all would take at that price, on one processor.
set -eu
here=$(cd "$(dirname "$0")" && pwd -P)
root=$(cd "$here/../.." && pwd -P)
runs=${1:-9}
command -v perl >/dev/null || { echo 'solve.sh needs perl for its clock' >&2; exit 2; }

javas=${AKIN_BENCH_JAVAS:-}
if [ -z "$javas" ]; then
  newest=0
  for home in /usr/lib/jvm/*; do
    [ -x "$home/bin/javac" ] && [ -r "$home/release" ] || continue
    feature=$(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$home/release")
    if [ "$feature" = 17 ]; then seventeen=$home; fi
    if [ "$feature" -gt "$newest" ]; then newest=$feature newest_home=$home; fi
  done
  javas=${seventeen:-}
  if [ "$newest" -gt 17 ]; then javas=${javas:+$javas:}$newest_home; fi
fi
[ -n "$javas" ] || { echo 'no JDK found; name some in AKIN_BENCH_JAVAS' >&2; exit 2; }

scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
cat >"$scratch/Hello.java" <<'END'
public class Hello {
    public static void main(String[] args) {
        System.out.println("hello");
    }
}
END

echo "$runs runs each, in turn"
IFS=:
for home in $javas; do
  unset IFS
  rm -rf "$scratch/hello"
  "$home/bin/javac" -d "$scratch/hello" "$scratch/Hello.java"
  export AKIN_JAVA="$home" XDG_CACHE_HOME="$scratch/cache"
  AKIN_TRAIN=1 "$root/engine/bin/akin" --version >/dev/null
  HELLO_JAVA=$home/bin/java HELLO=$scratch/hello AKIN=$root/engine/bin/akin USUAL=$here/usual-kit.yaml \
    NIGHT=$root/samples/night-market/rig.yaml RUNS=$runs perl -e '
    use strict;
    use warnings;
    use Time::HiRes qw(time);
    my @rigs = (["usual kit", $ENV{USUAL}], ["night market", $ENV{NIGHT}]);
    my @what = (["hello", $ENV{HELLO_JAVA}, "-cp", $ENV{HELLO}, "Hello"]);
    for my $rig (@rigs) {
        push @what, ["$_ $rig->[0]", $ENV{AKIN}, $_, $rig->[1]] for qw(check solve);
    }
    my (%wall, %cpu);
    for my $round (0 .. $ENV{RUNS}) {
        for my $one (@what) {
            my ($name, @command) = @$one;
            my @before = times;
            my $start = time;
            my $child = fork // die "fork: $!";
            if (!$child) {
                open STDOUT, ">", "/dev/null";
                open STDERR, ">", "/dev/null";
                exec @command or exit 127;
            }
            waitpid $child, 0;
            my $took = (time - $start) * 1000;
            die "@command could not be run\n" if $? & 127 || $? >> 8 > 1;
            next if $round == 0;    # warms the disk cache
            push @{$wall{$name}}, $took;
            my @after = times;
            push @{$cpu{$name}}, ($after[2] + $after[3] - $before[2] - $before[3]) * 1000;
        }
    }
    my $median = sub { my @s = sort { $a <=> $b } @_; @s % 2 ? $s[$#s / 2] : ($s[@s / 2 - 1] + $s[@s / 2]) / 2 };
    printf "%s\n", `$ENV{HELLO_JAVA} -version 2>&1` =~ /version "([^"]+)"/ ? "Java $1" : "Java";
    printf "  %-20s %10s %8s %10s %8s\n", "", "wall ms", "ratio", "CPU ms", "ratio";
    for my $one (@what) {
        my $name = $one->[0];
        my ($w, $c) = ($median->(@{$wall{$name}}), $median->(@{$cpu{$name}}));
        my ($hw, $hc) = ($median->(@{$wall{hello}}), $median->(@{$cpu{hello}}));
        printf "  %-20s %10.1f %8.2f %10.1f %8.2f\n", $name, $w, $w / $hw, $c, $c / ($hc || 1);
    }
    for my $rig (@rigs) {
        my $report = `$ENV{AKIN} solve $rig->[1] --format json`;
        my ($judged, $room) = (0, 0);
        $judged += $1 while $report =~ /"tried"\s*:\s*(\d+)/g;
        $room += $1 while $report =~ /"room"\s*:\s*(\d+)/g;
        die "no count in the report of $rig->[0]\n" unless $judged && $room;
        my $each = ($median->(@{$cpu{"solve $rig->[0]"}}) - $median->(@{$cpu{"check $rig->[0]"}})) / $judged;
        printf "  %s: %d plans judged of %d; at %.2f ms each, all would take %.1f hours\n", $rig->[0], $judged, $room,
            $each, $room * $each / 3.6e6;
    }'
  IFS=:
done
