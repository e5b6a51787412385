package akin.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs {@code engine/bin/akin} in a made-up checkout (with a space in its path) against made-up Javas and Mavens: shell
 * scripts that tell how they were called.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
    private static final List<String> TOOLS = List.of(
            "sh",
            "cat",
            "cksum",
            "cp",
            "find",
            "ls",
            "mkdir",
            "mv",
            "readlink",
            "rm",
            "sed",
            "sleep",
            "tail",
            "touch",
            "tr");

    @TempDir
    Path scratch;

    private Path checkout;
    private Path tools;
    private Path home;
    private Path trainings;
    private final Map<String, String> environment = new HashMap<>();

    private record Outcome(int code, String out, String err) {}

    @BeforeEach
    void layOut() throws IOException {
        Path base = scratch.toRealPath().resolve("a b");
        checkout = base.resolve("check out");
        home = Files.createDirectories(base.resolve("home"));
        trainings = base.resolve("trainings");
        tools = Files.createDirectories(base.resolve("tools"));
        for (String tool : TOOLS) {
            Files.createSymbolicLink(tools.resolve(tool), find(tool));
        }
        Path bin = Files.createDirectories(checkout.resolve("engine/bin"));
        Files.copy(Path.of("bin/akin"), bin.resolve("akin"));
        executable(bin.resolve("akin"));
        Files.createDirectories(checkout.resolve("samples"));
        Files.writeString(checkout.resolve("samples/faulty.yaml"), "akin: 1\n");
        Files.writeString(checkout.resolve("pom.xml"), "<project/>\n");
        jars("first");
        environment.put("PATH", tools.toString());
        environment.put("HOME", home.toString());
        environment.put("AKIN_JAVA_PLACES", "");
    }

    /**
     * Ends the makers of archives that are still at it behind a run, and their programs: a folder into which they write cannot
     * be deleted. Links out of the scratch folder would be remarked upon when it is deleted.
     */
    @AfterEach
    void clearAway() throws Exception {
        for (List<ProcessHandle> left = atWork(); !left.isEmpty(); left = atWork()) {
            left.forEach(ProcessHandle::destroyForcibly);
            Thread.sleep(10);
        }
        deleteTree(tools);
    }

    /** Every process that runs in the scratch folder, where the system tells; else none. */
    private List<ProcessHandle> atWork() throws IOException {
        Path here = scratch.toRealPath();
        return ProcessHandle.allProcesses()
                .filter(process -> {
                    try {
                        return Files.readSymbolicLink(Path.of("/proc", Long.toString(process.pid()), "cwd"))
                                .startsWith(here);
                    } catch (IOException e) {
                        // Ended since, another's, or a system without such links.
                        return false;
                    }
                })
                .toList();
    }

    @Test
    void handsArgumentsAndExitCodeOver() throws Exception {
        environment.put("JAVA_HOME", java("jdk", "17.0.2").toString());
        Outcome run = akin("check", "two words", "", "*", "--code=7");
        assertThat(run.code()).isEqualTo(7);
        assertThat(run.out()).contains("argument [check]\nargument [two words]\nargument []\nargument [*]\n");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void startsThroughLinksAndFromAnywhere() throws Exception {
        environment.put("JAVA_HOME", java("jdk", "17.0.2").toString());
        Path elsewhere = Files.createDirectories(home.resolve("some where"));
        Path link = Files.createSymbolicLink(
                elsewhere.resolve("akin"), elsewhere.relativize(checkout.resolve("engine/bin/akin")));
        Path linkToLink = Files.createSymbolicLink(tools.resolve("akin"), link);
        String expected = "akin-engine-0.1.0.jar";
        assertThat(run(elsewhere, List.of(linkToLink.toString(), "x")).out()).contains(expected);
        assertThat(run(elsewhere, List.of("./akin", "x")).out()).contains(expected);
        assertThat(run(checkout.resolve("engine/bin"), List.of("sh", "akin", "x"))
                        .out())
                .contains(expected);
        assertThat(run(checkout, List.of("sh", "engine/../engine/bin/akin", "x"))
                        .out())
                .contains(
                        checkout.resolve("engine/target/akin-engine-0.1.0.jar").toString());
    }

    @Test
    void prefersTheNamedJavaThenTheFirstThatWillDoThenTheNewestWithAnAheadOfTimeCache() throws Exception {
        Path old = java("old", "11.0.1");
        Path seventeen = java("seventeen", "17.0.2");
        Path twentyOne = java("twenty-one", "21.0.1");
        Path places = Files.createDirectories(scratch.resolve("places"));
        environment.put("JAVA_HOME", old.toString());
        Files.createSymbolicLink(tools.resolve("java"), seventeen.resolve("bin/java"));
        assertThat(akin("x").out()).contains("java " + seventeen);

        environment.put("JAVA_HOME", twentyOne.toString());
        assertThat(akin("x").out()).contains("java " + twentyOne);

        java("places/a", "25.0.1");
        Path newest = java("places/b", "26");
        environment.put("AKIN_JAVA_PLACES", places.toString());
        assertThat(akin("x").out()).contains("java " + newest);

        environment.put("AKIN_JAVA", seventeen.toString());
        assertThat(akin("x").out()).contains("java " + seventeen);
        environment.put("AKIN_JAVA", twentyOne.resolve("bin/java").toString());
        assertThat(akin("x").out()).contains("java " + twentyOne);
    }

    @Test
    void noticesAJavaThatWentAway() throws Exception {
        Path first = java("first", "17.0.2");
        Path second = java("second", "18");
        environment.put("JAVA_HOME", first.toString());
        Files.createSymbolicLink(tools.resolve("java"), second.resolve("bin/java"));
        assertThat(akin("x").out()).contains("java " + first);
        Files.delete(first.resolve("bin/java"));
        assertThat(akin("x").out()).contains("java " + second);
    }

    @Test
    void saysWhatToInstallWhenJavaIsMissingOrTooOld() throws Exception {
        Outcome none = akin("check");
        assertThat(none.code()).isEqualTo(3);
        assertThat(none.out()).isEmpty();
        assertThat(none.err())
                .startsWith("akin: no Java found; install Java 17 or newer")
                .hasLineCount(1);

        environment.put("JAVA_HOME", java("old", "1.8.0_402").toString());
        Outcome old = akin("check");
        assertThat(old.code()).isEqualTo(3);
        assertThat(old.err()).contains("too old (found: 8)").hasLineCount(1);

        environment.put("AKIN_JAVA", scratch.resolve("nothing").toString());
        assertThat(akin("check").err()).contains("AKIN_JAVA is " + scratch.resolve("nothing"));
        environment.put("AKIN_JAVA", java("older", "16").toString());
        assertThat(akin("check").err()).contains("AKIN_JAVA is Java 16; Java 17 or newer is needed");
    }

    @Test
    void saysWhatToInstallWhenItCannotBuild() throws Exception {
        deleteTree(checkout.resolve("engine/target"));
        Path jre = java("jre", "17.0.2");
        environment.put("JAVA_HOME", jre.toString());
        Outcome noMaven = akin("check");
        assertThat(noMaven.code()).isEqualTo(3);
        assertThat(noMaven.err()).contains("Maven is missing").hasLineCount(1);

        script(tools.resolve("mvn"), "echo never");
        Outcome noCompiler = akin("check");
        assertThat(noCompiler.code()).isEqualTo(3);
        assertThat(noCompiler.err()).contains("needs a JDK").contains(jre.toString());
    }

    @Test
    void showsTheEndOfAFailedBuildAndWhereTheRestIs() throws Exception {
        deleteTree(checkout.resolve("engine/target"));
        jdk("jdk", "17.0.2");
        script(tools.resolve("mvn"), "echo first; echo '[ERROR] broken'; exit 1");
        Outcome run = akin("check");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("akin: building once, this takes a minute or two ...\n")
                .contains(
                        "[ERROR] broken",
                        checkout.resolve("engine/target/build.log").toString());
        assertThat(checkout.resolve("engine/target/building")).doesNotExist();
    }

    @Test
    void buildsOnceHoweverManyStartAtOnce() throws Exception {
        // This takes long enough for an archive to be made behind it, in folders that are being deleted.
        environment.put("CI", "true");
        Path kept = scratch.resolve("kept");
        Files.move(checkout.resolve("engine/target"), kept);
        Path builds = scratch.resolve("builds");
        Path jdk = jdk("jdk", "17.0.2");
        script(
                tools.resolve("mvn"),
                "echo \"$JAVA_HOME $*\" >>'" + builds + "'; sleep 1; cp -R '" + kept + "/lib' engine/target/; cp '"
                        + kept + "/akin-engine-0.1.0.jar' engine/target/");
        List<Outcome> runs = atOnce(4);
        assertThat(runs).allSatisfy(run -> {
            assertThat(run.code()).isZero();
            assertThat(run.out()).contains("argument [check]");
        });
        assertThat(Files.readAllLines(builds)).containsExactly(jdk + " -B -q -Dquick -DskipTests package");
        assertThat(runs.stream().filter(run -> run.err().contains("building once")))
                .hasSize(1);
    }

    @Test
    void clearsTheLockOfABuildThatDied() throws Exception {
        Path kept = scratch.resolve("kept");
        Files.move(checkout.resolve("engine/target"), kept);
        jdk("jdk", "17.0.2");
        script(tools.resolve("mvn"), "cp -R '" + kept + "'/* engine/target/");
        Path lock = Files.createDirectories(checkout.resolve("engine/target/building"));
        Process gone = new ProcessBuilder("true").start();
        gone.waitFor();
        Files.writeString(lock.resolve("pid"), gone.pid() + "\n");
        assertThat(akin("check").code()).isZero();
    }

    @Test
    void buildsAgainWhenAPullBroughtNewerSources() throws Exception {
        jdk("jdk", "17.0.2");
        Path source = checkout.resolve("model/src/main/java/A.java");
        Files.createDirectories(source.getParent());
        Files.writeString(source, "class A {}\n");
        age(source, 3600);
        Path history = checkout.resolve(".git/logs/HEAD");
        Files.createDirectories(history.getParent());
        Files.writeString(history, "a commit of what is built\n");
        script(tools.resolve("mvn"), "touch engine/target/akin-engine-0.1.0.jar engine/target/mvn-was-here");
        Path trace = checkout.resolve("engine/target/mvn-was-here");
        assertThat(akin("x").err()).isEmpty();
        assertThat(trace).doesNotExist();

        age(source, -5);
        age(history, -5);
        assertThat(akin("x").err()).contains("building once");
        assertThat(trace).exists();
    }

    @Test
    void makesTheArchiveBehindTheFirstRunAndUsesItAfterwards() throws Exception {
        environment.put("JAVA_HOME", java("jdk", "17.0.2").toString());
        Outcome first = akin("check", "mine.yaml");
        assertThat(first.out()).doesNotContain("SharedArchiveFile", "training");
        Path archive = waitForArchive(".jsa");
        assertThat(Files.readString(trainings)).contains("[check] [samples]");
        Outcome second = akin("check", "mine.yaml");
        assertThat(second.out()).contains("-XX:SharedArchiveFile=" + archive);
        assertThat(second.err()).isEmpty();
        assertThat(Files.getPosixFilePermissions(archive.getParent()))
                .isEqualTo(PosixFilePermissions.fromString("rwx------"));
    }

    @Test
    void keepsAnAheadOfTimeCacheOnNewerJavas() throws Exception {
        environment.put("JAVA_HOME", java("jdk", "25").toString());
        environment.put("AKIN_TRAIN", "1");
        assertThat(akin("check").out()).contains("-XX:AOTCache=").doesNotContain("training");
        environment.put("JAVA_HOME", java("jdk24", "24.0.1").toString());
        assertThat(akin("check").out()).contains("-XX:AOTCache=");
        assertThat(Files.readString(trainings)).contains("-XX:AOTMode=record", "-XX:AOTMode=create");
    }

    @Test
    void neverUsesTheArchiveOfAnotherBuildOrAnotherJava() throws Exception {
        environment.put("JAVA_HOME", java("jdk", "17.0.2").toString());
        environment.put("AKIN_TRAIN", "1");
        String first = archiveUsed(akin("check"));
        environment.remove("AKIN_TRAIN");
        assertThat(archiveUsed(akin("check"))).isEqualTo(first);

        environment.put("CI", "true"); // so that nothing is made behind the run
        jars("second, and longer");
        assertThat(akin("check").out()).doesNotContain("SharedArchiveFile");
        environment.put("AKIN_TRAIN", "1");
        String second = archiveUsed(akin("check"));
        assertThat(second).isNotEqualTo(first);

        environment.remove("AKIN_TRAIN");
        environment.put("JAVA_HOME", java("other", "17.0.2").toString());
        assertThat(akin("check").out()).doesNotContain("SharedArchiveFile");
        Files.writeString(scratch.resolve("other/release"), "JAVA_VERSION=\"17.0.3\"\n");
        environment.put("JAVA_HOME", scratch.resolve("jdk").toString());
        assertThat(archiveUsed(akin("check"))).isEqualTo(second);
    }

    @Test
    void keepsOnlyAFewArchives() throws Exception {
        environment.put("JAVA_HOME", java("jdk", "17.0.2").toString());
        environment.put("AKIN_TRAIN", "1");
        for (int build = 0; build < 7; build++) {
            jars("build " + "x".repeat(build));
            assertThat(akin("check").out()).contains("SharedArchiveFile");
        }
        assertThat(archives()).hasSize(4);
    }

    @Test
    void makesOneArchiveHoweverManyStartAtOnce() throws Exception {
        environment.put("JAVA_HOME", java("jdk", "17.0.2").toString());
        assertThat(atOnce(5)).allSatisfy(run -> {
            assertThat(run.code()).isZero();
            assertThat(run.err()).isEmpty();
        });
        waitForArchive(".jsa");
        assertThat(Files.readAllLines(trainings)).hasSize(1);
    }

    @Test
    void doesWithoutACacheWhereThereIsNoneToBeHad() throws Exception {
        environment.put("JAVA_HOME", java("jdk", "17.0.2").toString());
        environment.put("AKIN_TRAIN", "1");
        environment.remove("HOME");
        assertQuietAndUntrained();
        environment.put("HOME", "/");
        assertQuietAndUntrained();
        environment.put("HOME", home.toString());
        environment.put(
                "XDG_CACHE_HOME", Files.createFile(scratch.resolve("a-file")).toString());
        assertQuietAndUntrained();
        environment.remove("XDG_CACHE_HOME");
        environment.put("AKIN_NO_CACHE", "1");
        assertQuietAndUntrained();
        assertThat(home.resolve(".cache")).doesNotExist();
    }

    @Test
    void startsAllTheSameWhenTheTrainingFails() throws Exception {
        Path jdk = java("jdk", "17.0.2");
        Files.writeString(jdk.resolve("training-fails"), "");
        environment.put("JAVA_HOME", jdk.toString());
        environment.put("AKIN_TRAIN", "1");
        Outcome run = akin("check");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        environment.remove("AKIN_TRAIN");
        assertThat(akin("check").out()).contains("-Xshare:auto");
        assertThat(Files.readAllLines(trainings)).as("not tried at every start").hasSize(1);
    }

    @Test
    void lastOptionsAreThoseOfThePersonRunningIt() throws Exception {
        environment.put("JAVA_HOME", java("jdk", "17.0.2").toString());
        environment.put("AKIN_JAVA_OPTS", "-Xmx512m -Da=*");
        String options = akin("x").out();
        assertThat(options.indexOf("option [-Xmx512m]")).isGreaterThan(options.indexOf("option [-Xmx96m]"));
        assertThat(options).contains("option [-Da=*]", "option [-Dakin.terminal=false]");
    }

    @Test
    void onlyASurveyHasRoomAndTheThoroughCompiler() throws Exception {
        environment.put("JAVA_HOME", java("jdk", "17.0.2").toString());
        String survey = akin("survey", "rig.yaml").out();
        assertThat(survey).contains("option [-Xmx640m]").doesNotContain("option [-Xmx96m]");
        assertThat(survey.indexOf("option [-XX:TieredStopAtLevel=4]"))
                .isGreaterThan(survey.indexOf("option [-XX:TieredStopAtLevel=1]"));
        assertThat(akin("check", "survey").out()).contains("option [-Xmx96m]").doesNotContain("TieredStopAtLevel=4");
        assertThat(survey).as("its output is no terminal").contains("option [-Dakin.progress=false]");
    }

    @Test
    void startsARealJavaFromARealArchiveWithoutAWordOfItsOwn() throws Exception {
        Path source = Files.createDirectories(scratch.resolve("src")).resolve("Akin.java");
        Files.writeString(source, """
                package akin.engine.cli;
                public final class Akin {
                    public static void main(String[] arguments) {
                        System.out.println(String.join("|", arguments));
                        System.exit(arguments.length);
                    }
                }
                """);
        Path classes = Files.createDirectories(scratch.resolve("classes"));
        int compiled =
                ToolProvider.getSystemJavaCompiler().run(null, null, null, "-d", classes.toString(), source.toString());
        assertThat(compiled).isZero();
        jar(
                checkout.resolve("engine/target/akin-engine-0.1.0.jar"),
                "akin/engine/cli/Akin.class",
                Files.readAllBytes(classes.resolve("akin/engine/cli/Akin.class")));
        jar(checkout.resolve("engine/target/lib/akin-model-0.1.0.jar"), "m", new byte[1]);
        jar(checkout.resolve("engine/target/lib/akin-rules-0.1.0.jar"), "r", new byte[1]);
        environment.put("AKIN_JAVA", System.getProperty("java.home"));
        environment.put("AKIN_TRAIN", "1");
        Outcome first = akin("a", "b c");
        assertThat(first).isEqualTo(new Outcome(2, "a|b c\n", ""));
        assertThat(archives()).hasSize(1);
        environment.remove("AKIN_TRAIN");
        assertThat(akin("a", "b c")).isEqualTo(first);
        // A jar changed behind the archive's back: a slower start, and still not a word.
        Path model = checkout.resolve("engine/target/lib/akin-model-0.1.0.jar");
        jar(model, "m", new byte[500]);
        age(model, 7200);
        assertThat(akin("a", "b c")).isEqualTo(first);
    }

    private void assertQuietAndUntrained() throws Exception {
        Outcome run = akin("check");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("-Xshare:auto");
        assertThat(trainings).doesNotExist();
    }

    private static String archiveUsed(Outcome run) {
        return run.out()
                .lines()
                .filter(line -> line.contains("SharedArchiveFile="))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no archive in " + run));
    }

    private List<Path> archives() throws IOException {
        Path cache = home.resolve(".cache/akin");
        if (!Files.isDirectory(cache)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(cache)) {
            return files.filter(file ->
                            file.toString().endsWith(".jsa") || file.toString().endsWith(".aot"))
                    .filter(Files::isRegularFile)
                    .toList();
        }
    }

    private Path waitForArchive(String ending) throws Exception {
        for (int tries = 0; tries < 600; tries++) {
            for (Path archive : archives()) {
                // Last of all, the launcher clears its work folder away.
                Path name = archive.getFileName();
                Path work = archive.resolveSibling(name.toString().replace(ending, ".making"));
                if (name.toString().endsWith(ending) && !Files.exists(work)) {
                    return archive;
                }
            }
            Thread.sleep(100);
        }
        throw new AssertionError("no archive was made");
    }

    private List<Outcome> atOnce(int number) throws Exception {
        List<Process> started = new ArrayList<>();
        List<Path> outs = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            Path out = scratch.resolve("out" + i);
            outs.add(out);
            started.add(start(checkout, List.of("engine/bin/akin", "check"), out));
        }
        List<Outcome> runs = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            runs.add(finish(started.get(i), outs.get(i)));
        }
        return runs;
    }

    private Outcome akin(String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of("engine/bin/akin"));
        command.addAll(List.of(arguments));
        return run(checkout, command);
    }

    private Outcome run(Path folder, List<String> command) throws Exception {
        Path out = scratch.resolve("out");
        return finish(start(folder, command, out), out);
    }

    private Process start(Path folder, List<String> command, Path out) throws IOException {
        // Through the system's sh, so that "sh" and relative names are looked up with the test's PATH.
        List<String> whole = new ArrayList<>(List.of(find("sh").toString(), "-c", "exec \"$@\"", "sh"));
        whole.addAll(command);
        ProcessBuilder builder = new ProcessBuilder(whole)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(Path.of(out + ".err").toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        return builder.start();
    }

    private static Outcome finish(Process process, Path out) throws Exception {
        process.getOutputStream().close();
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).as("ended").isTrue();
        return new Outcome(process.exitValue(), Files.readString(out), Files.readString(Path.of(out + ".err")));
    }

    /** A Java without a compiler; its java tells how it was called, and writes an archive when told to. */
    private Path java(String name, String version) throws IOException {
        Path folder = Files.createDirectories(scratch.toRealPath().resolve(name));
        Files.createDirectories(folder.resolve("bin"));
        Files.writeString(folder.resolve("release"), "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"" + version + "\"\n");
        script(folder.resolve("bin/java"), """
                code=0 main= archive= line=
                for word in "$@"; do
                  case $word in
                    -XX:ArchiveClassesAtExit=*) archive=${word#*=} ;;
                    -XX:AOTCacheOutput=*) archive=${word#*=} ;;
                    -XX:AOTMode=record) archive=/dev/null ;;
                    -XX:AOTMode=create) archive=later ;;
                    -XX:AOTCache=*) [ "$archive" != later ] || archive=${word#*=} ;;
                    --code=*) code=${word#*=} ;;
                  esac
                  line="$line [$word]"
                done
                if [ -n "$archive" ]; then
                  echo training; echo training >&2
                  echo "$line" >>'%s'
                  if [ -e '%s/training-fails' ]; then exit 1; fi
                  echo archive >"$archive"
                  exit 1
                fi
                echo 'java %s'
                for word in "$@"; do
                  if [ -n "$main" ]; then echo "argument [$word]"; else echo "option [$word]"; fi
                  if [ "$word" = akin.engine.cli.Akin ]; then main=yes; fi
                done
                exit $code""".formatted(trainings, folder, folder));
        return folder;
    }

    private Path jdk(String name, String version) throws IOException {
        Path folder = java(name, version);
        script(folder.resolve("bin/javac"), "exit 1");
        environment.put("JAVA_HOME", folder.toString());
        return folder;
    }

    private void jars(String content) throws IOException {
        Path lib = Files.createDirectories(checkout.resolve("engine/target/lib"));
        Files.writeString(checkout.resolve("engine/target/akin-engine-0.1.0.jar"), content);
        Files.writeString(lib.resolve("akin-model-0.1.0.jar"), content);
        Files.writeString(lib.resolve("akin-rules-0.1.0.jar"), content);
    }

    private static void jar(Path file, String entry, byte[] content) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                JarOutputStream jar = new JarOutputStream(out)) {
            jar.putNextEntry(new JarEntry(entry));
            jar.write(content);
        }
    }

    private static void script(Path file, String text) throws IOException {
        Files.writeString(file, "#!" + find("sh") + "\n" + text + "\n");
        executable(file);
    }

    private static void executable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private static void age(Path file, long seconds) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minusSeconds(seconds)));
    }

    private static Path find(String tool) {
        return Stream.of(System.getenv("PATH").split(":"))
                .map(folder -> Path.of(folder, tool))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new AssertionError(tool + " is not on the PATH"));
    }

    private static void deleteTree(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
                if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                    Files.delete(file);
                }
            }
        }
    }
}
