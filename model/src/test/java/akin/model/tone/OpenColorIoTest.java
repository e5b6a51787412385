package akin.model.tone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.abort;

import akin.model.colour.Gamut;
import akin.model.colour.RgbMatrix;
import akin.published.SharedData;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The shipped curves and gamuts side by side with OpenColorIO, run live. Needs the Debian package
 * python3-pyopencolorio (2.1.2 was used); without it every test here is aborted, which the test report shows.
 */
class OpenColorIoTest {
    private static final Path PYTHON = Path.of("/usr/bin/python3");
    private static final String NEEDED = "the Debian package python3-pyopencolorio is not installed, so the comparison"
            + " with OpenColorIO was not made";
    private static final int SAMPLES = 100;

    private static final Map<String, Encoding> ENCODINGS = SharedData.encodings();
    private static final Map<String, Gamut> GAMUTS = SharedData.gamuts();

    @TempDir
    static Path work;

    private static Path script;

    @BeforeAll
    static void requireOpenColorIo() throws IOException, InterruptedException {
        if (!Files.isExecutable(PYTHON)) {
            abort(NEEDED);
        }
        script = work.resolve("opencolorio.py");
        try (InputStream in = OpenColorIoTest.class.getResourceAsStream("/akin/outside/opencolorio.py")) {
            Files.copy(Objects.requireNonNull(in), script);
        }
        Process probe = new ProcessBuilder(PYTHON.toString(), "-c", "import PyOpenColorIO")
                .redirectErrorStream(true)
                .redirectOutput(work.resolve("probe.txt").toFile())
                .start();
        if (!probe.waitFor(60, TimeUnit.SECONDS) || probe.exitValue() != 0) {
            abort(NEEDED);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "CURVE - ACEScct-LOG_to_LINEAR",
                "ACEScct_to_ACES2065-1",
                "ACEScc_to_ACES2065-1",
                "ACEScg_to_ACES2065-1",
                "ARRI_ALEXA-LOGC-EI800-AWG_to_ACES2065-1",
                "CANON_CLOG2-CGAMUT_to_ACES2065-1",
                "CANON_CLOG3-CGAMUT_to_ACES2065-1",
                "RED_LOG3G10-RWG_to_ACES2065-1",
                "SONY_SLOG3-SGAMUT3_to_ACES2065-1",
                "SONY_SLOG3-SGAMUT3.CINE_to_ACES2065-1",
                "CURVE - ST-2084_to_LINEAR",
                "CURVE - LINEAR_to_ST-2084",
                "DISPLAY - CIE-XYZ-D65_to_REC.1886-REC.709"
            })
    void builtInTransform(String style) {
        Random random = new Random(style.length());
        List<double[]> inputs = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            inputs.add(
                    style.startsWith("DISPLAY")
                            ? displayXyz(random)
                            : random.doubles(3, 0.02, 0.95).toArray());
        }
        List<double[]> answers = run("builtin|" + style, inputs);
        for (int i = 0; i < inputs.size(); i++) {
            double[] expected = answers.get(i);
            double[] actual = OpenColorIoStyles.apply(style, inputs.get(i), ENCODINGS, GAMUTS);
            // Single precision, and curves applied through tables: relative to the brightest channel, since matrices
            // mix the channels.
            double brightest = Arrays.stream(expected).map(Math::abs).max().orElseThrow();
            for (int c = 0; c < 3; c++) {
                assertThat(actual[c])
                        .as("%s of %s", style, Arrays.toString(inputs.get(i)))
                        .isCloseTo(expected[c], within(5e-5 * Math.max(brightest, 0.01)));
            }
        }
    }

    /** Curves of one straight and one logarithmic piece: that library's general form of a camera curve. */
    @Test
    void everyCurveOfAStraightAndALogarithmicPiece() {
        int compared = 0;
        for (Encoding encoding : ENCODINGS.values()) {
            if (encoding.pieces().size() != 2
                    || !(encoding.pieces().get(0).form() instanceof CurveForm.Linear line)
                    || !(encoding.pieces().get(1).form() instanceof CurveForm.Log log)) {
                continue;
            }
            compared++;
            Random random = new Random(encoding.id().hashCode());
            List<double[]> inputs = new ArrayList<>();
            for (int i = 0; i < SAMPLES; i++) {
                double ceiling = encoding.ceiling();
                inputs.add(random.doubles(3)
                        .map(r -> ceiling * (1.001 * Math.pow(r, 8) - 0.001))
                        .toArray());
            }
            String parameters = String.format(
                    Locale.ROOT,
                    "logcamera|%s %s %s %s %s %s %s",
                    log.base(),
                    log.scale(),
                    log.offset(),
                    log.gain(),
                    log.shift(),
                    encoding.pieces().get(0).until(),
                    line.slope());
            List<double[]> answers = run(parameters, inputs);
            for (int i = 0; i < inputs.size(); i++) {
                for (int c = 0; c < 3; c++) {
                    double light = inputs.get(i)[c];
                    // That library bends the straight piece to meet the logarithm; the published constants may not.
                    double step = light < encoding.pieces().get(0).until() ? 1.02e-4 : 0;
                    assertThat(encoding.encode(light))
                            .as("%s of %s", encoding.id(), light)
                            .isCloseTo(answers.get(i)[c], within(3e-6 + step));
                }
            }
        }
        assertThat(compared).as("LogC3 at eleven indices, LogC4 and others").isGreaterThanOrEqualTo(17);
    }

    private static double[] displayXyz(Random random) {
        // Inside the display's gamut, so that no channel is negative: that library mirrors the curve there.
        double[] rgb = random.doubles(3, 0.001, 1).toArray();
        return RgbMatrix.toXyz(GAMUTS.get("bt709")).times(rgb);
    }

    private static List<double[]> run(String request, List<double[]> inputs) {
        StringBuilder lines = new StringBuilder();
        for (double[] input : inputs) {
            lines.append(request).append('|').append(join(input)).append('\n');
        }
        try {
            Path in = Files.writeString(work.resolve("in.txt"), lines, StandardCharsets.UTF_8);
            Path out = work.resolve("out.txt");
            Path errors = work.resolve("errors.txt");
            Process process = new ProcessBuilder(PYTHON.toString(), script.toString())
                    .redirectInput(in.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(errors.toFile())
                    .start();
            boolean ended = process.waitFor(120, TimeUnit.SECONDS);
            assertThat(ended && process.exitValue() == 0)
                    .as(() -> "OpenColorIO failed on " + request + ": " + readAll(errors))
                    .isTrue();
            List<String> answers = Files.readAllLines(out, StandardCharsets.UTF_8);
            assertThat(answers).hasSize(inputs.size() + 1);
            assertThat(answers.get(0)).startsWith("version 2.");
            return answers.stream()
                    .skip(1)
                    .map(line -> Arrays.stream(line.split(" ", -1))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static String readAll(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            return e.toString();
        }
    }

    private static String join(double[] values) {
        return String.join(" ", Arrays.stream(values).mapToObj(Double::toString).toList());
    }
}
