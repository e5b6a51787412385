package akin.engine.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own, with little memory. */
class ProcessTest {

    /** Generous: a busy machine starts a process slowly. Only a process that never ends must not get past it. */
    private static final long SECONDS = 180;

    @TempDir
    Path folder;

    @Test
    void theNastiestFilesEndSoonWithLittleMemory() throws IOException, InterruptedException {
        Path large = folder.resolve("large.yaml");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(50_000_000);
        }
        StringBuilder bomb = new StringBuilder("akin: 1\na: &a [x,x,x,x,x,x,x,x,x]\n");
        for (char c = 'b'; c <= 'z'; c++) {
            bomb.append(c)
                    .append(": &")
                    .append(c)
                    .append(" [")
                    .append(("*" + (char) (c - 1) + ",").repeat(9))
                    .append("x]\n");
        }
        String start = "akin: 1\nx: ";
        assertRefused(write("bomb.yaml", bomb.toString()), "2:4: the anchor &a");
        assertRefused(write("flow.yaml", start + "[".repeat(500_000)), "2:35: nested deeper");
        assertRefused(write("block.yaml", "- ".repeat(400_000)), "1:65: nested deeper");
        assertRefused(write("values.yaml", start + "[" + "1,".repeat(490_000) + "1]"), "more than the 100000 values");
        assertRefused(write("word.yaml", "akin: " + "9".repeat(900_000)), "1:7: read '999");
        assertRefused(large, "larger than the 1 MB");
    }

    @Test
    void theReportIsTheSameInTwoProcesses() throws IOException, InterruptedException {
        String rig = write("rig.yaml", CallTest.blurred()).toString();
        Run here = Run.of("check", "--format", "json", rig);
        // Sets of the JDK iterate in an order that differs from process to process.
        Run first = start("-Xmx256m", "check", "--format", "json", rig);
        Run second = start("-Xmx256m", "check", "--format", "json", rig);
        assertThat(first.err()).isEmpty();
        assertThat(first.out()).isEqualTo(here.out());
        assertThat(second).isEqualTo(first);
        assertThat(first.code()).isEqualTo(Akin.FAILS);
    }

    private void assertRefused(Path file, String words) throws IOException, InterruptedException {
        Run run = start("-Xmx64m", "check", file.toString());
        Said.of(run, file.toString()).says(List.of(words));
    }

    private Run start(String memory, String... args) throws IOException, InterruptedException {
        List<String> call = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                memory,
                "-Dstdout.encoding=UTF-8",
                "-cp",
                System.getProperty("java.class.path"),
                Akin.class.getName()));
        call.addAll(List.of(args));
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        Process process = new ProcessBuilder(call)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        boolean ended = process.waitFor(SECONDS, TimeUnit.SECONDS);
        process.destroyForcibly();
        assertThat(ended).as("%s ends", List.of(args)).isTrue();
        return new Run(process.exitValue(), Files.readString(out, UTF_8), Files.readString(err, UTF_8));
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
