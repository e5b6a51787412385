package akin.engine.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A search in a process of its own that a signal breaks off. */
class InterruptTest {

    /** Generous: a busy machine starts a process slowly. */
    private static final long SECONDS = 180;

    private static final long LOOK_AGAIN = 20;

    @TempDir
    Path folder;

    /** The usual kit with so many units that its search lasts far longer than a signal takes. */
    private String rig() throws IOException {
        String kit = Files.readString(Path.of("bench/usual-kit.yaml"));
        int start = kit.indexOf("  B:\n    body: small");
        assertThat(start).isPositive();
        String unit = kit.substring(start);
        StringBuilder many = new StringBuilder(kit);
        for (String name : List.of("C", "D", "E", "F", "G", "H", "I", "J")) {
            many.append("  ").append(name).append(unit.substring(3));
        }
        return Files.writeString(folder.resolve("many.yaml"), many).toString();
    }

    @ParameterizedTest
    @CsvSource({"INT, 2", "TERM, 15"})
    void theBestSoFarIsReported(String signal, int number) throws IOException, InterruptedException {
        assumeThat(Path.of("/proc/self/status")).isRegularFile();
        assumeThat(ignored(number))
                .as("what is started in the background may be deaf to it")
                .isFalse();
        Path out = folder.resolve("out.json");
        Path err = folder.resolve("err.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-Dakin.progress=true",
                        "-Dstdout.encoding=UTF-8",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Akin.class.getName(),
                        "solve",
                        rig(),
                        "--format",
                        "json")
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        try {
            while (process.isAlive() && !Files.readString(err, UTF_8).contains("plans judged")) {
                Thread.sleep(LOOK_AGAIN);
            }
            new ProcessBuilder("kill", "-" + signal, Long.toString(process.pid()))
                    .inheritIO()
                    .start()
                    .waitFor();
            assertThat(process.waitFor(SECONDS, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        assertThat(process.exitValue()).as("as a signal ends Java").isEqualTo(128 + number);
        assertThat(Files.readString(err, UTF_8)).as("the line is taken away").endsWith("\r");
        JsonNode report = new JsonMapper().readTree(Files.readString(out, UTF_8));
        List<JsonNode> units = new ArrayList<>();
        report.at("/units").forEach(units::add);
        assertThat(units).hasSize(9);
        assertThat(units.get(8).at("/stopped").asBoolean()).isTrue();
        for (JsonNode unit : units) {
            assertThat(compare(counts(unit.at("/answers/0/findings")), counts(unit.at("/before"))))
                    .as(unit.at("/unit").asString())
                    .isNotPositive();
        }
    }

    private static List<Long> counts(JsonNode findings) {
        return Stream.of("baked-in", "lossy", "fixable", "advice")
                .map(severity -> {
                    long count = 0;
                    for (JsonNode finding : findings) {
                        count += finding.at("/severity").asString().equals(severity) ? 1 : 0;
                    }
                    return count;
                })
                .toList();
    }

    /** By the most urgent that differs. */
    private static int compare(List<Long> one, List<Long> other) {
        for (int i = 0; i < one.size(); i++) {
            int order = one.get(i).compareTo(other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    /** True when this process, and so each that it starts, ignores a signal. */
    private static boolean ignored(int number) throws IOException {
        String mask = Files.readAllLines(Path.of("/proc/self/status")).stream()
                .filter(line -> line.startsWith("SigIgn:"))
                .map(line -> line.substring("SigIgn:".length()).strip())
                .findFirst()
                .orElseThrow();
        return (Long.parseUnsignedLong(mask, 16) >> (number - 1) & 1) == 1;
    }
}
