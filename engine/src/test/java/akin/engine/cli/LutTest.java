package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.report.lut.FileNames;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code akin lut}: which files it writes, and what it says of each unit. */
class LutTest {

    private static final Path SAMPLES = Path.of("..", "samples");

    @TempDir
    Path folder;

    private Path out;

    private Run lut(String rig, String... more) {
        out = folder.resolve("luts");
        Path file = folder.resolve("rig.yaml");
        try {
            Files.writeString(file, rig);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String[] call = Stream.concat(Stream.of("lut", file.toString(), "--out", out.toString()), Stream.of(more))
                .toArray(String[]::new);
        return Run.of(call);
    }

    private static String sample(String name) {
        try {
            return Files.readString(SAMPLES.resolve(name).resolve("rig.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> in(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void eachUnitGetsTheSizesThatItsDeviceTakes() {
        Run run = lut(sample("lantern-room"));
        assertThat(run.code()).isZero();
        assertThat(in(out))
                .containsExactly(
                        "A-arri-logc4-to-bt1886-17.cube",
                        "A-arri-logc4-to-bt1886-33.cube",
                        "A-arri-logc4-to-bt1886-65.cube",
                        "A-arri-logc4-to-bt1886.clf",
                        "B-arri-logc4-to-bt1886-33.cube",
                        "B-arri-logc4-to-bt1886.clf");
        assertThat(run.out())
                .contains(
                        "the same for every unit",
                        "Gamut compression: none by itself",
                        "Adaptation: none, the white is D65",
                        "Halvor Rook Gantry takes 33 points.",
                        "65 points: mean ");
    }

    @Test
    void aSizeThatTheDeviceRefusesIsNotWritten() {
        Run run = lut(sample("lantern-room"), "--size", "65");
        assertThat(run.code()).isEqualTo(Akin.FAILS);
        assertThat(in(out))
                .containsExactly(
                        "A-arri-logc4-to-bt1886-65.cube", "A-arri-logc4-to-bt1886.clf", "B-arri-logc4-to-bt1886.clf");
        assertThat(run.out()).contains("takes 33 points; no .cube is written");
    }

    @Test
    void theSameInputGivesTheSameBytesAndNothingIsWrittenOver() throws IOException {
        lut(sample("regatta"), "--size", "17");
        Path cube = out.resolve("A-arri-logc4-to-bt1886-17.cube");
        byte[] first = Files.readAllBytes(cube);
        byte[] clf = Files.readAllBytes(out.resolve("A-arri-logc4-to-bt1886.clf"));
        Files.writeString(cube, "somebody's own");

        Run refused = lut(sample("regatta"), "--size", "17");
        assertThat(refused.code()).isEqualTo(Akin.BAD_INPUT);
        assertThat(refused.err()).contains("there already", "--overwrite");
        assertThat(cube).hasContent("somebody's own");

        assertThat(lut(sample("regatta"), "--size", "17", "--overwrite").code()).isZero();
        assertThat(cube).hasBinaryContent(first);
        assertThat(out.resolve("A-arri-logc4-to-bt1886.clf")).hasBinaryContent(clf);
    }

    @Test
    void namesThatSystemsTakeForOneAndHostileDataStayApart() throws IOException {
        String rig = sample("lantern-room")
                .replace("hero: A", "hero: a_1")
                .replace("\n  A:", "\n  a_1:")
                .replace("\n  B:", "\n  A-1:");
        Path pack = Files.createDirectories(folder.resolve("akin.d"));
        Files.writeString(pack.resolve("gamut.yaml"), """
                akin-gamuts: 1
                overrides: [arri-wide-gamut-4]
                gamuts:
                  - id: arri-wide-gamut-4
                    name: "</Description>\\nLUT_3D_SIZE 2 é"
                    red: {x: 0.7347, y: 0.2653}
                    green: {x: 0.1424, y: 0.8576}
                    blue: {x: 0.0991, y: -0.0308}
                    white: {x: 0.3127, y: 0.329}
                    source: invented
                """);
        Run run = lut(rig, "--size", "33");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(in(out))
                .containsExactly(
                        "A-1-2-arri-logc4-to-bt1886-33.cube",
                        "A-1-2-arri-logc4-to-bt1886.clf",
                        "a-1-arri-logc4-to-bt1886-33.cube",
                        "a-1-arri-logc4-to-bt1886.clf");
        assertThat(Files.readAllLines(out.resolve("a-1-arri-logc4-to-bt1886-33.cube")))
                .filteredOn(line -> line.startsWith("LUT_3D_SIZE"))
                .containsExactly("LUT_3D_SIZE 33");
        assertThat(Files.readString(out.resolve("a-1-arri-logc4-to-bt1886.clf")))
                .contains("in &lt;/Description&gt;?LUT_3D_SIZE 2 ?,");
    }

    @Test
    void aFinishedPictureGetsNoneAndARawOneWaits() {
        Run finished = lut(sample("night-market"), "--size", "17");
        assertThat(finished.code()).isZero();
        assertThat(finished.out()).contains("A: no table. It records Rec. ITU-R BT.709, a finished picture");

        Run unknown = lut(sample("lantern-room").replaceAll("(?m)^    profile: .*\n", ""), "--overwrite");
        assertThat(unknown.code()).isEqualTo(Akin.FAILS);
        assertThat(unknown.out()).contains("A: no table. The encoding that it records is not known");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--viewing|hlg|no display is sent this",
                "--viewing|bt1887|Did you mean 'bt1886'?",
                "--viewing-gamut|bt708|Did you mean 'bt709'?",
                "--size|34|Allowed: 17, 33, 65",
                "--peak|bright|cd/m2 belong here",
                "--peak|99999|100.0 to 10000",
                "--takes|video|Allowed: full, legal",
                "--adaptation|bradfort|Did you mean 'bradford'?",
            })
    void wordsThatAreNotKnownAreSaid(String option, String word, String says) {
        Run run = lut(sample("lantern-room"), option, word);
        assertThat(run.code()).isEqualTo(Akin.BAD_INPUT);
        assertThat(run.err()).contains(says);
        assertThat(out).doesNotExist();
    }

    @Test
    void namesOfFilesAreHarmless() {
        FileNames names = new FileNames();
        assertThat(names.of("con")).isEqualTo("unit-con");
        assertThat(names.of("COM1")).isEqualTo("unit-COM1");
        assertThat(names.of("../..")).isEqualTo("unit");
        assertThat(names.of("カメラ")).isEqualTo("unit-2");
        assertThat(names.of("A".repeat(300))).hasSize(40);
        assertThat(names.of("B cam\n")).isEqualTo("B-cam");
    }
}
