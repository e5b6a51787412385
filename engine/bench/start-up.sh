#!/bin/sh
# How long akin takes from nothing to its answer, as a multiple of the plainest Java program on the same Java.
#
#   engine/bench/start-up.sh [RUNS] [RIG]       RIG: the sample with the most faults, where none is named
#
# For each Java found (AKIN_BENCH_JAVAS: folders, colons between; else 17 and the newest under /usr/lib/jvm) it compiles a
# program that prints one word, has akin make its class-data archive, and then runs, in turn, RUNS times over: that
# program; the rules alone, which is Drools loading the built-in rules and running them once on nothing, started as akin
# is and with an archive of its own (no check can be under that); akin --version; akin --help; akin check RIG. Medians of
# the whole process's wall time, ratios to the first, and the largest resident set seen. In turn, so that a busy moment strikes all alike.
set -eu
here=$(cd "$(dirname "$0")" && pwd -P)
root=$(cd "$here/../.." && pwd -P)
runs=${1:-21}
rig=${2:-$root/samples/night-market/rig.yaml}
command -v perl >/dev/null || { echo 'start-up.sh needs perl for its clock' >&2; exit 2; }

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

cat >"$scratch/RulesAlone.java" <<'END'
public class RulesAlone {
    public static void main(String[] args) {
        org.kie.api.runtime.KieSession session = akin.engine.assess.RuleBase.builtIn().newKieSession();
        System.out.println(session.fireAllRules());
        session.dispose();
    }
}
END
quick_start=$(sed -n "s/^quick_start='\(.*\)'$/\1/p" "$root/engine/bin/akin")
jars=
for jar in "$root"/engine/target/akin-engine-*.jar "$root"/engine/target/lib/*.jar; do
  case $jar in *-sources.jar | *-javadoc.jar | *-tests.jar) ;; *) jars=$jars:$jar ;; esac
done

echo "rig: ${rig#"$root"/}; $runs runs each, in turn"
IFS=:
for home in $javas; do
  unset IFS
  rm -rf "$scratch/hello"
  "$home/bin/javac" -d "$scratch/hello" "$scratch/Hello.java"
  export AKIN_JAVA="$home" XDG_CACHE_HOME="$scratch/cache"
  AKIN_TRAIN=1 "$root/engine/bin/akin" --version >/dev/null
  rm -rf "$scratch/alone"
  "$home/bin/javac" -cp "${jars#:}" -d "$scratch/alone" "$scratch/RulesAlone.java"
  "$home/bin/jar" cf "$scratch/alone.jar" -C "$scratch/alone" .
  archive=$scratch/alone.$(basename "$home")
  case $(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$home/release") in
    17 | 18 | 19 | 2[0-3]) make=-XX:ArchiveClassesAtExit=$archive use=-XX:SharedArchiveFile=$archive ;;
    *) make=-XX:AOTCacheOutput=$archive use=-XX:AOTCache=$archive ;;
  esac
  # The same options at its making, or the archive would not be taken.
  "$home/bin/java" $quick_start -Xmx96m "$make" -cp "$scratch/alone.jar$jars" RulesAlone >/dev/null 2>&1
  ALONE="$quick_start -Xmx96m -Xlog:disable $use" ALONE_PATH=$scratch/alone.jar$jars HELLO_JAVA=$home/bin/java HELLO=$scratch/hello AKIN=$root/engine/bin/akin RIG=$rig RUNS=$runs perl -e '
    use strict;
    use warnings;
    use Time::HiRes qw(time);
    my @what = (
        ["hello", $ENV{HELLO_JAVA}, "-cp", $ENV{HELLO}, "Hello"],
        ["rules alone", $ENV{HELLO_JAVA}, split(/ /, $ENV{ALONE}), "-cp", $ENV{ALONE_PATH}, "RulesAlone"],
        ["akin --version", $ENV{AKIN}, "--version"],
        ["akin --help", $ENV{AKIN}, "--help"],
        ["akin check", $ENV{AKIN}, "check", $ENV{RIG}],
    );
    my (%wall, %cpu, %peak);
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
            # The peak is read while it runs, from where Linux tells it; elsewhere it stays unknown.
            if ($round == 0 && -r "/proc/$child/status") {
                my $most = 0;
                while (waitpid($child, 1) == 0) {
                    if (open my $status, "<", "/proc/$child/status") {
                        while (<$status>) { $most = $1 if /^VmHWM:\s+(\d+)/ && $1 > $most }
                    }
                    select undef, undef, undef, 0.001;
                }
                $peak{$name} = $most / 1024;
            } else {
                waitpid $child, 0;
            }
            die "@command could not be run\n" if $? >> 8 > 2;
            next if $round == 0;    # warms the disk cache, measures the peak
            push @{$wall{$name}}, (time - $start) * 1000;
            my @after = times;
            push @{$cpu{$name}}, ($after[2] + $after[3] - $before[2] - $before[3]) * 1000;
        }
    }
    my $median = sub { my @s = sort { $a <=> $b } @_; @s % 2 ? $s[$#s / 2] : ($s[@s / 2 - 1] + $s[@s / 2]) / 2 };
    printf "%s\n", `$ENV{HELLO_JAVA} -version 2>&1` =~ /version "([^"]+)"/ ? "Java $1" : "Java";
    printf "  %-16s %10s %8s %10s %8s %10s\n", "", "wall ms", "ratio", "CPU ms", "ratio", "peak MiB";
    for my $one (@what) {
        my $name = $one->[0];
        my ($w, $c) = ($median->(@{$wall{$name}}), $median->(@{$cpu{$name}}));
        my ($hw, $hc) = ($median->(@{$wall{hello}}), $median->(@{$cpu{hello}}));
        printf "  %-16s %10.1f %8.2f %10.1f %8.2f %10s\n", $name, $w, $w / $hw, $c, $c / ($hc || 1),
            defined $peak{$name} ? sprintf("%.0f", $peak{$name}) : "unknown";
    }'
  IFS=:
done
