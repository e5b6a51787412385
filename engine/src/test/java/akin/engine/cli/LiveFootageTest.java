package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.book.Examples;
import akin.engine.book.Shelf;
import akin.engine.read.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Clips that ffmpeg makes and ffprobe reads, held against a plan. */
class LiveFootageTest {

    private static final String FILM = "24000/1001";

    /** As the plan of B has it. The coding is one that stores scan, depth and tags. */
    private static final String[] AS_PLANNED = {
        "-c:v",
        "libx264",
        "-pix_fmt",
        "yuv422p10le",
        "-c:a",
        "pcm_s16le",
        "-timecode",
        "10:00:00:00",
        "-metadata:s:v",
        "reel_name=S001"
    };

    @TempDir
    Path folder;

    @BeforeAll
    static void ffmpeg() {
        Ffmpeg.require();
    }

    @Test
    void aClipAsPlannedHasNoFinding() throws Exception {
        Ffmpeg.make(clip(), "320x180", FILM, 24, "1.001", AS_PLANNED);
        Run run = footage("{}");
        assertThat(rules(run)).isEmpty();
        assertThat(run.code()).isZero();
        // A log is rightly left without tags, and a check that found none says so.
        assertThat(unchecked(run))
                .containsExactlyInAnyOrder(
                        "footage/tags-differ footage.S001.mov.transfer",
                        "footage/tags-differ footage.S001.mov.primaries",
                        "footage/tags-differ footage.S001.mov.matrix");
    }

    @Test
    void twentyFourIsNotItsSlowerSister() throws Exception {
        Ffmpeg.make(clip(), "320x180", "24", 24, "1", AS_PLANNED);
        Run run = footage("{}");
        assertThat(rules(run)).containsExactly("footage/rate-differs");
        assertThat(run.code()).isEqualTo(1);
        JsonNode finding = report(run).get("findings").get(0);
        assertThat(finding.get("clips").get(0).asString()).isEqualTo("S001.mov");
        assertThat(finding.get("title").asString())
                .isEqualTo("S001.mov of B is at 24 frames a second, planned is 23.976");
        assertThat(finding.get("at").get("path").asString()).isEqualTo("production.rate");
    }

    @Test
    void aRateThatVariesIsTold() throws Exception {
        // Every fifth frame is thrown away and the rest keep their times.
        Ffmpeg.make(
                clip(),
                "320x180",
                "24",
                25,
                "1.2",
                "-vf",
                "select='mod(n,5)'",
                "-vsync",
                "vfr",
                "-c:v",
                "libx264",
                "-pix_fmt",
                "yuv422p10le");
        assertThat(rules(footage("{production: {rate: 24}}"))).contains("footage/rate-varies");
    }

    @Test
    void dropFrameIsTold() throws Exception {
        Ffmpeg.make(
                clip(),
                "320x180",
                "30000/1001",
                30,
                "1.001",
                "-c:v",
                "libx264",
                "-pix_fmt",
                "yuv422p10le",
                "-c:a",
                "pcm_s16le",
                "-timecode",
                "10:00:00;00");
        assertThat(rules(footage("{production: {rate: 30000/1001}}"))).containsExactly("footage/timecode-counting");
        assertThat(rules(footage("{production: {rate: 30000/1001}, units: {B: {timecode: {counting: drop}}}}")))
                .isEmpty();
    }

    @Test
    void pixelsThatAreNotSquareAreTold() throws Exception {
        Ffmpeg.make(clip(), "320x180", FILM, 24, "1.001", with("-vf", "setsar=2"));
        assertThat(rules(footage("{}"))).containsExactly("footage/pixel-shape");
        assertThat(rules(footage("{gear: {lenses: {long-zoom: {squeeze: 2}}}}")))
                .isEmpty();
    }

    @Test
    void eightBitsAreTold() throws Exception {
        Ffmpeg.make(
                clip(),
                "320x180",
                FILM,
                24,
                "1.001",
                "-c:v",
                "libx264",
                "-pix_fmt",
                "yuv420p",
                "-c:a",
                "pcm_s16le",
                "-timecode",
                "10:00:00:00");
        assertThat(rules(footage("{}"))).containsExactly("footage/bit-depth");
    }

    @Test
    void tagsAreTold() throws Exception {
        Ffmpeg.make(
                clip(),
                "320x180",
                FILM,
                24,
                "1.001",
                with("-color_primaries", "bt2020", "-color_trc", "arib-std-b67", "-colorspace", "bt2020nc"));
        assertThat(rules(footage("{}"))).containsOnly("footage/tags-differ").hasSize(2);
        Run display = footage("{units: {B: {profile: look}}}");
        assertThat(rules(display)).containsOnly("footage/tags-differ").hasSize(3);
        assertThat(display.out()).contains("transfer arib-std-b67", "primaries bt2020", "matrix bt2020nc");
    }

    @Test
    void theRightTagsPass() throws Exception {
        Ffmpeg.make(
                clip(),
                "320x180",
                FILM,
                24,
                "1.001",
                with("-color_primaries", "bt709", "-color_trc", "bt709", "-colorspace", "bt709"));
        Run run = footage("{units: {B: {profile: look}}}");
        assertThat(rules(run)).isEmpty();
        assertThat(unchecked(run)).isEmpty();
    }

    @Test
    void interlacedIsTold() throws Exception {
        Ffmpeg.make(
                clip(),
                "320x180",
                FILM,
                24,
                "1.001",
                with("-vf", "setfield=tff", "-flags", "+ilme+ildct", "-x264opts", "tff=1"));
        assertThat(rules(footage("{}"))).containsExactly("footage/interlaced");
    }

    @Test
    void anotherSizeIsTold() throws Exception {
        Ffmpeg.make(clip(), "256x144", FILM, 24, "1.001", AS_PLANNED);
        assertThat(rules(footage("{}"))).containsExactly("footage/picture-size");
    }

    @Test
    void aPictureShorterThanItsSoundIsTold() throws Exception {
        Ffmpeg.make(clip(), "320x180", FILM, 12, "1.001", AS_PLANNED);
        assertThat(rules(footage("{}"))).containsExactly("footage/picture-ends-early");
    }

    @Test
    void silenceIsTold() throws Exception {
        Ffmpeg.make(clip(), "320x180", FILM, 24, null, AS_PLANNED);
        assertThat(rules(footage("{}"))).containsExactly("footage/no-sound");
    }

    @Test
    void anMxfSaysItsTimecodeToo() throws Exception {
        Path clip = folder.resolve("S002.mxf");
        Ffmpeg.make(
                clip,
                "1920x1080",
                "25",
                25,
                "1",
                "-c:v",
                "mpeg2video",
                "-pix_fmt",
                "yuv422p",
                "-c:a",
                "pcm_s16le",
                "-timecode",
                "10:00:00:00");
        Run run = footage(
                clip,
                "{production: {rate: 25}, gear: {bodies: {small: {modes: {open: {picture: 1920x1080}}, codecs: {inside: {bits: 8}}}}}}");
        assertThat(rules(run)).isEmpty();
        assertThat(unchecked(run)).noneMatch(gap -> gap.contains("timecode") || gap.contains("frames"));
    }

    @Test
    void whatIsSavedEqualsWhatIsReadLive() throws Exception {
        Ffmpeg.make(clip(), "320x180", "24", 12, "1", with("-vf", "setsar=2", "-color_trc", "bt709"));
        Run live = footage("{}");
        Path saved = folder.resolve("saved.json");
        Files.writeString(saved, Ffmpeg.probe(clip()));
        Run again = footage(saved, "{}");
        assertThat(rules(live)).hasSizeGreaterThan(2);
        assertThat(again.out()).isEqualTo(live.out());
    }

    @Test
    void noReportSaysWhereTheFileLies() throws Exception {
        Ffmpeg.make(clip(), "320x180", "24", 24, "1", AS_PLANNED);
        Path rig = rig("{}");
        Run run = Run.of("footage", rig.toString(), "B=" + clip().toAbsolutePath(), "--on", "2027-01-01");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out().replace(rig.toString(), "rig.yaml"))
                .contains("S001.mov")
                .doesNotContain(folder.toString());
    }

    /** Names that another program would take for an option, an address, or a list of other files. */
    @ParameterizedTest
    @ValueSource(strings = {"-version.mov", "concat:a|b.mov", "http:--x.mov", "a=b.mov", "%d.mov", "ä 'x'\".mov"})
    void anyNameIsAName(String name) throws Exception {
        Path clip = Ffmpeg.make(folder.resolve("plain.mov"), "320x180", FILM, 24, "1.001", AS_PLANNED);
        Path odd = Files.move(clip, folder.resolve(name));
        Run run = footage(odd, "{}");
        assertThat(run.err()).isEmpty();
        assertThat(rules(run)).isEmpty();
    }

    @Test
    void aListOfOtherFilesIsNoClip() throws Exception {
        Path list = folder.resolve("list.mov");
        Files.writeString(
                list, "#EXTM3U\n#EXT-X-TARGETDURATION:1\n#EXTINF:1,\nhttp://127.0.0.1:9/x.ts\n#EXT-X-ENDLIST\n");
        Run run = Run.of("footage", rig("{}").toString(), "B=" + list);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("list.mov").doesNotContain("Exception").hasLineCount(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "this is no clip\n", "\u0000\u0001\u0002\u0003"})
    void whatIsNoClipIsToldInOneLine(String content) throws Exception {
        Files.writeString(clip(), content);
        Run run = Run.of("footage", rig("{}").toString(), "B=" + clip());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("S001.mov: ffprobe cannot read this as a clip")
                .hasLineCount(1);
    }

    @Test
    void soundAloneIsNoClip() throws Exception {
        Path sound = folder.resolve("S001.mkv");
        Ffmpeg.make(sound, "320x180", FILM, 1, "1", "-vn", "-c:a", "pcm_s16le");
        Run run = Run.of("footage", rig("{}").toString(), "B=" + sound);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("it has no picture").hasLineCount(1);
    }

    private Path clip() {
        return folder.resolve("S001.mov");
    }

    private static String[] with(String... more) {
        List<String> options = new ArrayList<>(List.of(AS_PLANNED));
        options.addAll(List.of(more));
        return options.toArray(String[]::new);
    }

    private Path rig(String changes) throws IOException {
        String small = "{gear: {bodies: {small: {modes: {open: {picture: 320x180}}}}}}";
        Path rig = folder.resolve("rig.yaml");
        var laid = Examples.lay(YamlReader.read("rig.yaml", small), Shelf.matchedPair());
        Files.writeString(
                rig, Examples.lay(YamlReader.read("rig.yaml", changes), laid).text());
        return rig;
    }

    private Run footage(String changes) throws IOException {
        return footage(clip(), changes);
    }

    private Run footage(Path clip, String changes) throws IOException {
        return Run.of("footage", rig(changes).toString(), "B=" + clip, "--format", "json", "--on", "2027-01-01");
    }

    private static JsonNode report(Run run) {
        assertThat(run.err()).isEmpty();
        return new JsonMapper().readTree(run.out());
    }

    private static List<String> rules(Run run) {
        List<String> rules = new ArrayList<>();
        report(run)
                .get("findings")
                .forEach(finding -> rules.add(finding.get("rule").asString()));
        return rules;
    }

    private static List<String> unchecked(Run run) {
        List<String> gaps = new ArrayList<>();
        report(run)
                .get("unchecked")
                .forEach(gap -> gaps.add(
                        gap.get("rule").asString() + " " + gap.get("missing").asString()));
        return gaps;
    }
}
