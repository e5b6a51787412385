package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import akin.engine.equip.Schemas;
import akin.engine.read.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What was saved of clips, held against the matched pair; and everything that can be wrong with it. */
class FootageTest {

    private static final String PAIR = Path.of(
                    "..", "rules", "src", "main", "resources", "akin", "rules", "matched-pair.yaml")
            .toString();

    private static final String HEAD =
            "clip,unit,reel,rate,average-rate,picture,pixel-shape,bits,primaries,transfer,matrix,"
                    + "scan,timecode,timecode-rate,frames,audio-rate,audio-seconds\n";

    @TempDir
    Path folder;

    private static String row(String clip, String unit, String reel, String timecode) {
        return clip + "," + unit + "," + reel + ",23.976,24000/1001,6144x3456,1,10,unknown,unknown,unknown,progressive,"
                + timecode + ",24,240,48 kHz,10.01\n";
    }

    private Run table(String rows, String... more) throws IOException {
        Path table = folder.resolve("clips.csv");
        Files.writeString(table, rows);
        return Run.of(Stream.concat(Stream.of("footage", PAIR, table.toString(), "--on", "2027-01-01"), Stream.of(more))
                .toArray(String[]::new));
    }

    @Test
    void whatIsAsPlannedPasses() throws IOException {
        Run run = table(HEAD + row("L001.mov", "A", "L1", "10:00:00:00") + row("S001.mov", "B", "S1", "10:00:00:00"));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("1 clip of A: L001.mov", "1 clip of B: S001.mov", "passes");
    }

    @Test
    void aFindingNamesClipAndLineOfThePlan() throws IOException {
        Run run = table(HEAD + row("S001.mov", "B", "S1", "10:00:00:00").replace("23.976,24000/1001", "24,24"));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains(
                        "S001.mov of B is at 24 frames a second, planned is 23.976",
                        "footage/rate-differs, clip S001.mov, line ")
                .contains(": production.rate]", "no clip of A was looked at");
    }

    @Test
    void theReportFollowsItsSchema() throws IOException {
        Run run = table(
                HEAD + row("L001.mov", "A", "R1", "10:00:00:00") + row("S001.mov", "B", "r1", "10:00:00;00"),
                "--format",
                "json");
        Schemas schemas = new Schemas();
        assertThat(schemas.complaints("report", schemas.json(run.out()))).isEmpty();
        assertThat(run.out()).contains("\"clips\"", "footage/names-clash");
    }

    @Test
    void theSameCallGivesTheSameBytesWhateverTheOrder() throws IOException {
        String a = row("L001.mov", "A", "R1", "10:00:00:00");
        String b = row("S001.mov", "B", "R1", "10:00:00:00");
        assertThat(table(HEAD + b + a).out()).isEqualTo(table(HEAD + a + b).out());
    }

    @Test
    void whatIsNotKnownIsUncheckedAndMayFail() throws IOException {
        assertThat(table("clip,unit\nS001.mov,B\n").code()).isZero();
        Run strict = table("clip,unit\nS001.mov,B\n", "--fail-on", "unchecked");
        assertThat(strict.code()).isEqualTo(1);
        assertThat(strict.out()).contains("footage.S001.mov.rate", "footage.S001.mov.scan", "0 checks run");
    }

    @Test
    void aWaiverHolds() throws IOException {
        Path rig = folder.resolve("rig.yaml");
        Files.writeString(
                rig,
                Files.readString(Path.of(PAIR))
                        + "waivers: [{rule: footage/rate-differs, units: [B], because: agreed with the editor}]\n");
        Path table = folder.resolve("clips.csv");
        Files.writeString(
                table, HEAD + row("S001.mov", "B", "S1", "10:00:00:00").replace("23.976,24000/1001", "24,24"));
        Run run = Run.of("footage", rig.toString(), table.toString(), "--on", "2027-01-01");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("WAIVED", "agreed with the editor");
        // While nothing is shot, the waiver is not idle.
        assertThat(Run.of("check", rig.toString(), "--fail-on", "advice", "--on", "2027-01-01")
                        .code())
                .isZero();
    }

    /** A table that is wrong. */
    record Wrong(String what, String table, String line, List<String> words) {
        @Override
        public String toString() {
            return what;
        }
    }

    static Stream<Wrong> wrongTables() {
        return Stream.of(
                new Wrong("nothing", "", "", List.of("names the columns", "average-rate")),
                new Wrong("a head alone", "clip,unit\n", "", List.of("a line for each clip")),
                new Wrong("no column clip", "unit,rate\nA,24\n", ":1:1:", List.of("the column 'clip' is missing")),
                new Wrong(
                        "a column twice", "clip,rate,rate\nx,24,24\n", ":1:11:", List.of("'rate' stands there twice")),
                new Wrong(
                        "an unknown column",
                        "clip,unit,bit\nx,A,10\n",
                        ":1:11:",
                        List.of("no column is called 'bit'", "Did you mean 'bits'?")),
                new Wrong("a cell too many", "clip,unit\nx,A\ny,A,24\n", ":3:5:", List.of("3 cells", "2 columns")),
                new Wrong("no name", "clip,unit\nx,A\n\n,A\n", ":4:1:", List.of("the name of the clip is missing")),
                new Wrong("a wrong rate", "clip,unit,rate\nx,A,24\ny,A,fast\n", ":3:5:", List.of("rate: ", "\"fast\"")),
                new Wrong("a decimal rate", "clip,unit,rate\nx,A,23.9\n", ":2:5:", List.of("23.976 (24000/1001)")),
                new Wrong("a wrong size", "clip,unit,picture\nx,A,big\n", ":2:5:", List.of("picture", "3840x2160")),
                new Wrong("wrong bits", "clip,unit,bits\nx,A,99\n", ":2:5:", List.of("bits", "from 1 to 32")),
                new Wrong("a wrong shape", "clip,unit,pixel-shape\nx,A,0:1\n", ":2:5:", List.of("width of a pixel")),
                new Wrong("a wrong range", "clip,unit,range\nx,A,wide\n", ":2:5:", List.of("legal (tv) or full (pc)")),
                new Wrong("a wrong scan", "clip,unit,scan\nx,A,twice\n", ":2:5:", List.of("progressive or interlaced")),
                new Wrong("a wrong timecode", "clip,unit,timecode\nx,A,25:00:00:00\n", ":2:5:", List.of("HH:MM:SS:FF")),
                new Wrong("wrong frames", "clip,unit,frames\nx,A,-1\n", ":2:5:", List.of("a number of frames")),
                new Wrong("wrong seconds", "clip,unit,audio-seconds\nx,A,1e9\n", ":2:5:", List.of("seconds, such as")),
                new Wrong("a bare frequency", "clip,unit,audio-rate\nx,A,48000\n", ":2:5:", List.of("48000 Hz")),
                new Wrong(
                        "an unknown unit",
                        "clip,unit\nx,D\n",
                        ":2:3:",
                        List.of("no unit is called 'D'", "Units: A, B")),
                new Wrong("an open quotation mark", "clip,unit\n\"x,A\n", ":2:1:", List.of("no comma-separated table")),
                new Wrong("binary", "clip\u0000", ":1:5", List.of("zero byte")));
    }

    @ParameterizedTest
    @MethodSource("wrongTables")
    void aWrongTableIsToldWithItsPlace(Wrong wrong) throws IOException {
        Run run = table(wrong.table());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("clips.csv" + wrong.line())
                .contains(wrong.words())
                .hasLineCount(1);
    }

    @Test
    void aQuotedCellMayHoldCommasAndLines() throws IOException {
        Run run = table("unit,clip\r\nB,\"a,\"\"b\"\"\n.mov\"\r\nB,c.mov\r\nD,d.mov\r\n");
        assertThat(run.err()).contains("clips.csv:5:1", "'D'");
    }

    /** Saved metadata that is wrong. */
    static Stream<Wrong> wrongJson() {
        return Stream.of(
                new Wrong("nothing", "", "", List.of("it has no streams")),
                new Wrong(
                        "no JSON", "{\n  \"streams\": [}\n", ":2:", List.of("not JSON from here on", "-show_streams")),
                new Wrong("a list", "[]", "", List.of("it has no streams")),
                new Wrong("something else", "{\"akin\": 1}", "", List.of("it has no streams", "ffprobe")),
                new Wrong("streams of a kind", "{\"streams\": {}}", "", List.of("it has no streams")),
                new Wrong(
                        "no picture",
                        "{\"streams\": [{\"codec_type\": \"audio\"}, 3, null]}",
                        "",
                        List.of("no picture")),
                new Wrong("deep", "[".repeat(100_000), ":", List.of("not JSON")),
                new Wrong("huge", "[" + "1,".repeat(600_000) + "1]", "", List.of("larger than the 1 MB")));
    }

    @ParameterizedTest
    @MethodSource("wrongJson")
    void wrongSavedMetadataIsToldInOneLine(Wrong wrong) throws IOException {
        Path saved = folder.resolve("S001.json");
        Files.writeString(saved, wrong.table());
        Run run = Run.of("footage", PAIR, "B=" + saved);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("S001.json" + wrong.line())
                .contains(wrong.words())
                .hasLineCount(1);
    }

    @Test
    void valuesThatMakeNoSenseAreNotKnown() throws IOException {
        Path saved = folder.resolve("S001.json");
        Files.writeString(saved, """
                {"streams": [{"codec_type": "video", "width": 3, "height": "x", "r_frame_rate": "0/0", "pix_fmt": {},
                "avg_frame_rate": "1/0", "sample_aspect_ratio": "0:1", "nb_frames": "many", "field_order": "unknown",
                "bits_per_raw_sample": "-1", "tags": {"timecode": "noon"}, "color_transfer": "reserved"}]}
                """);
        Run run = Run.of("footage", PAIR, "B=" + saved);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("footage.S001.json.rate", "footage.S001.json.picture", "footage.S001.json.bits")
                .contains("footage.S001.json.timecode", "footage.S001.json.frames", "footage.S001.json.pixel-shape");
    }

    @Test
    void whoseAClipIsIsToldByNameFolderOrCall() throws IOException {
        String any = "{\"streams\": [{\"codec_type\": \"video\"}]}";
        Path b = Files.createDirectories(folder.resolve("B"));
        Path elsewhere = Files.createDirectories(folder.resolve("cards"));
        Files.writeString(b.resolve("x.json"), any);
        Files.writeString(elsewhere.resolve("L001.json"), any);
        Files.writeString(elsewhere.resolve("y.json"), any);
        Run told = Run.of(
                "footage", PAIR, b.toString(), elsewhere.resolve("L001.json").toString(), "A=" + elsewhere);
        assertThat(told.err()).isEmpty();
        assertThat(told.out().replaceAll("\\s+", " "))
                .contains("2 clips of A: L001.json, y.json", "1 clip of B: x.json");

        Run untold = Run.of("footage", PAIR, elsewhere.toString());
        assertThat(untold.code()).isEqualTo(2);
        assertThat(untold.err())
                .contains("y.json: nothing tells which unit shot it.", "A=y.json", "Units: A, B", "clip-names")
                .hasLineCount(1);

        Files.writeString(b.resolve("L002.json"), any);
        assertThat(Run.of("footage", PAIR, b.toString()).err()).contains("L002.json: its names tell of A and of B.");
        assertThat(Run.of("footage", PAIR, "C=" + elsewhere).err()).contains("no unit is called 'C'", "Units: A, B");
    }

    @Test
    void twoFilesOfOneNameAreToldApart() throws IOException {
        String any = "{\"streams\": [{\"codec_type\": \"video\"}], \"format\": {\"filename\": \"%s/C001.mov\"}}";
        Files.writeString(folder.resolve("one.json"), String.format(any, "/cards/one"));
        Files.writeString(folder.resolve("two.json"), String.format(any, "D:\\\\cards\\\\two"));
        Run run = Run.of("footage", PAIR, "A=" + folder.resolve("one.json"), "B=" + folder.resolve("two.json"));
        assertThat(run.err()).isEmpty();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("Clips of A and B have one file name, C001.mov", "one/C001.mov, two/C001.mov")
                .doesNotContain("/cards", "\\cards");
    }

    @Test
    void callsThatAreIncompleteSayHow() throws IOException {
        assertThat(Run.of("footage", PAIR).err()).contains("clips are missing", "A=cards/A001");
        assertThat(Run.of("footage", PAIR, folder.resolve("S1.mov").toString()).err())
                .contains("there is no such file");
        assertThat(Run.of("footage", PAIR, folder.toString()).err()).contains("no clip is in this folder");
        assertThat(Run.of("footage", PAIR, "x.json", "--format", "html").err())
                .contains("Allowed: text, json, markdown");
    }

    @Test
    void aPipeIsNotWaitedFor() throws Exception {
        Path pipe = folder.resolve("S001.mov");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        assertThat(Run.of("footage", PAIR, "B=" + pipe).err()).contains("this is a pipe or a device");
    }

    @Test
    void withoutFfprobeItSaysWhatToInstall() throws IOException {
        Path clip = Files.writeString(folder.resolve("S001.mov"), "x");
        Run run = Run.of("footage", PAIR, "B=" + clip, "--ffprobe", "no-such-program-here");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("no-such-program-here must be installed", "ffmpeg", "-show_format -show_streams")
                .hasLineCount(1);
    }

    @Test
    void oneThatHangsIsEnded() throws IOException {
        Path clip = Files.writeString(folder.resolve("S001.mov"), "x");
        Probe probe = new Probe(script("exec sleep 600").toString(), Duration.ofMillis(300));
        assertThatThrownBy(() -> probe.print(clip, "S001.mov"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("did not come to an end");
    }

    @Test
    void oneThatFloodsIsEnded() throws IOException {
        Path clip = Files.writeString(folder.resolve("S001.mov"), "x");
        Probe probe = new Probe(script("exec yes").toString(), Probe.PATIENCE);
        assertThatThrownBy(() -> probe.print(clip, "S001.mov"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("prints more of this file");
    }

    @Test
    void whatItComplainsOfIsPassedOnInOneLine() throws IOException {
        Path clip = Files.writeString(folder.resolve("S001.mov"), "x");
        Path program = script("printf 'first\\n\\033[2Jbad\\n' >&2; exit 1");
        Run run = Run.of("footage", PAIR, "B=" + clip, "--ffprobe", program.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("cannot read this as a clip: \\u001B[2Jbad")
                .hasLineCount(1);
    }

    private Path script(String command) throws IOException {
        Path script = folder.resolve("probe.sh");
        Files.writeString(script, "#!/bin/sh\n" + command + "\n");
        return Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwx------"));
    }
}
