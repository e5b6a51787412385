package akin.engine.report.lut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * OpenColorIO, run live on files that Akin writes. Needs the Debian package python3-pyopencolorio (2.1.2 was used); without
 * it a test is aborted, which the test report shows.
 */
public final class OutsideColour {

    private static final Path PYTHON = Path.of("/usr/bin/python3");
    private static final int SECONDS = 120;

    private final Path work;
    private final Path script;

    private OutsideColour(Path work, Path script) {
        this.work = work;
        this.script = script;
    }

    /** Readies it, with a folder to work in. */
    public static OutsideColour in(Path work) {
        try (InputStream in = OutsideColour.class.getResourceAsStream("/akin/outside/apply-file.py")) {
            Path script = work.resolve("apply-file.py");
            Files.copy(Objects.requireNonNull(in), script);
            OutsideColour outside = new OutsideColour(work, script);
            if (!Files.isExecutable(PYTHON) || outside.start("", "-c", "import PyOpenColorIO") != 0) {
                abort("the Debian package python3-pyopencolorio is not installed, so the comparison with OpenColorIO"
                        + " was not made");
            }
            return outside;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a file makes of triples. */
    public List<double[]> apply(Path file, List<double[]> inputs) {
        String lines = inputs.stream()
                .map(in -> Arrays.stream(in).mapToObj(Double::toString).collect(Collectors.joining(" ", "", "\n")))
                .collect(Collectors.joining());
        int code = start(lines, script.toString(), file.toString());
        assertThat(code)
                .as(() -> "OpenColorIO on " + file + ": " + read("errors.txt"))
                .isZero();
        List<String> answers = read("out.txt").lines().toList();
        assertThat(answers.get(0)).startsWith("version 2.");
        List<double[]> outputs = answers.stream()
                .skip(1)
                .map(line -> Arrays.stream(line.split(" ", -1))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
        assertThat(outputs).hasSameSizeAs(inputs);
        return outputs;
    }

    private int start(String input, String... arguments) {
        try {
            Path in = Files.writeString(work.resolve("in.txt"), input);
            String[] command = new String[arguments.length + 1];
            command[0] = PYTHON.toString();
            System.arraycopy(arguments, 0, command, 1, arguments.length);
            Process process = new ProcessBuilder(command)
                    .redirectInput(in.toFile())
                    .redirectOutput(work.resolve("out.txt").toFile())
                    .redirectError(work.resolve("errors.txt").toFile())
                    .start();
            assertThat(process.waitFor(SECONDS, TimeUnit.SECONDS)).isTrue();
            return process.exitValue();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private String read(String name) {
        try {
            return Files.readString(work.resolve(name), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
