package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Fix;
import akin.model.finding.Missing;
import akin.model.finding.Severity;
import akin.model.finding.Target;
import akin.model.finding.WhereFound;
import akin.model.gear.Aid;
import akin.model.gear.Codec;
import akin.model.gear.Output;
import akin.model.gear.Profile;
import akin.model.gear.Recorder;
import akin.model.gear.SignalRange;
import akin.model.quantity.Stops;
import akin.model.rig.Recording;
import akin.model.rig.Unit;
import akin.published.PublishedTable;
import akin.published.PublishedTable.Row;
import akin.published.SharedData;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordedToneTest {

    private static final Codec VIDEO = new Codec("video", Codec.Kind.ENCODED, 10, "4:2:2", null, null);

    /** Published curves as computed by colour-science 0.4.6: code and per cent of the legal range at 18 %. */
    @ParameterizedTest
    @CsvSource({
        "Sony S-Log3, sony-s-log3",
        "ARRI LogC3 EI800, arri-logc3-ei800",
        "RED Log3G10, red-log3g10",
        "Fujifilm F-Log, fujifilm-f-log",
        "Nikon N-Log, nikon-n-log",
        "DJI D-Log, dji-d-log",
    })
    void greySitsWhereThePublishedCurvePutsIt(String curve, String id) {
        Row row = PublishedTable.read("log-curves.csv").stream()
                .filter(r -> r.text("curve").equals(curve))
                .findFirst()
                .orElseThrow();
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("encoding", SharedData.encoding(id));
        Target waveform = target(draft);
        assertThat(waveform.value()).isCloseTo(row.number("ire_legal_18pct"), within(0.051));
        assertThat(waveform.scale()).isEqualTo("% of the legal range");
        draft.body.put("aids", List.of(Aid.CODE_VALUES));
        assertThat(target(draft).value()).isEqualTo(Math.rint(row.number("cv10_18pct")));
    }

    /** Rec. ITU-R BT.709: 18 % becomes 0.409007729 (colour-science 0.4.6, colormath-jvm 3.6.1). */
    @Test
    void greyOfVideoSitsWhereTheStandardPutsIt() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("encoding", SharedData.encoding("bt709"));
        assertThat(target(draft).value()).isCloseTo(40.9, within(1e-9));
    }

    @Test
    void aDeviceWithoutANumberIsMetered() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.body.put("aids", List.of(Aid.HISTOGRAM));
        assertThat(target(draft).aid()).startsWith("hand-held meter");
        draft.body.put("aids", List.of(Aid.HISTOGRAM, Aid.METER));
        assertThat(target(draft).aid()).startsWith("plus-minus scale");
        draft.body.remove("aids");
        assertThat(GreyAim.derive(draft.make()))
                .containsExactly(new Missing("grey-aim", "B", "gear.bodies.body-B.aids", WhereFound.MANUAL));
    }

    /**
     * The highest light that is held, put through the formula of Sony's Technical Summary for S-Log3: code
     * {@code 420 + 261.5 log10((x + 0.01) / 0.19)} of 1023.
     */
    @Test
    void highlightsClipWhereTheCurvePutsThem() {
        LightRig.Draft draft = LightRig.draft("B");
        double highest = 0.18 * Math.pow(2, clip(draft).headroom());
        double code = 420 + 261.5 * Math.log10((highest + 0.01) / 0.19);
        assertThat(clip(draft).target().name()).isEqualTo("clip");
        assertThat(clip(draft).target().value()).isCloseTo(100 * (code - 64) / 876, within(0.05));
        draft.body.put("aids", List.of(Aid.METER));
        assertThat(clip(draft).target().value()).isEqualTo(clip(draft).headroom());
        draft.body.put("aids", List.of());
        assertThat(clip(draft).target().aid()).startsWith("hand-held meter: the highlights");
    }

    /** In full range the level is the share of all 1024 codes: 420 of 1023 is 41.1 %, against 40.6 % of 64 to 940. */
    @Test
    void aRecorderShowsItsOwnScale() {
        LightRig.Draft draft = external(null, SignalRange.FULL, SignalRange.FULL, null);
        draft.body.put("aids", List.of());
        assertThat(target(draft)).isEqualTo(new Target("B", "middle-grey", 41.1, "% of the full range", "waveform"));
        LightRig.Draft legal = external(null, SignalRange.LEGAL, SignalRange.LEGAL, null);
        assertThat(target(legal).value()).isEqualTo(40.6);
    }

    @Test
    void levelsMustBeReadAsTheyAreSent() {
        assertThat(levels(SignalRange.FULL, SignalRange.LEGAL).differ()).isTrue();
        assertThat(levels(SignalRange.FULL, SignalRange.LEGAL).severity()).isEqualTo(Severity.LOSSY);
        assertThat(levels(SignalRange.LEGAL, SignalRange.FULL).severity()).isEqualTo(Severity.FIXABLE);
        assertThat(levels(SignalRange.LEGAL, SignalRange.LEGAL).differ()).isFalse();
        assertThat(SignalLevels.derive(LightRig.draft("B").make())).isEmpty();
        assertThat(SignalLevels.derive(external(null, null, null, null).make()))
                .containsExactlyInAnyOrder(
                        new Missing("signal-levels", "B", "units.B.recorder.reads", WhereFound.PLAN),
                        new Missing("signal-levels", "B", "gear.bodies.body-B.outputs.out.range", WhereFound.MANUAL));
    }

    @Test
    void anOutputForcesTheEncodingAndNoProfileHelps() {
        LightRig.Draft draft = external("bt709", SignalRange.LEGAL, SignalRange.LEGAL, null);
        draft.unit.put("encoding", SharedData.encoding("bt709"));
        RecordedEncoding forced = encoding(draft);
        assertThat(forced.forced()).isTrue();
        RecordedEncoding hero = encoding(LightRig.draft("A"));
        assertThat(hero.forced()).isFalse();
        assertThat(forced.differs(hero)).isTrue();
        assertThat(forced.fixes(draft.make(), hero)).extracting(Fix::key).containsExactly("convert");
        assertThat(((ProfileChoice) ProfileChoice.derive(draft.make()).get(0)).widest())
                .isNull();
    }

    @Test
    void twoRawRecordingsDoNotDiffer() {
        LightRig.Draft a = LightRig.draft("A");
        LightRig.Draft b = LightRig.draft("B");
        b.unit.put("encoding", SharedData.encoding("bt709"));
        a.recording = new Recording(null, null, new Codec("raw", Codec.Kind.RAW, 12, null, null, null), null);
        assertThat(encoding(b).differs(encoding(a))).isTrue();
        b.recording = a.recording;
        assertThat(encoding(b).differs(encoding(a))).isFalse();
    }

    @Test
    void theWidestProfileOfTheModeIsOffered() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.otherProfiles.put("wide", profile("wide", 8, false));
        draft.otherProfiles.put("painted", profile("painted", 20, true));
        ProfileChoice choice =
                (ProfileChoice) ProfileChoice.derive(draft.make()).get(0);
        assertThat(choice.widest()).isEqualTo("wide");
        assertThat(choice.narrower()).isCloseTo(1, within(1e-9));
        draft.mode.put("profiles", List.of("log", "painted"));
        assertThat(((ProfileChoice) ProfileChoice.derive(draft.make()).get(0)).widest())
                .isNull();
    }

    /** Fujifilm, F-Log Data Sheet: F-Gamut has the primaries and the white of Rec. ITU-R BT.2020. */
    @Test
    void twoNamesForTheSamePrimariesDoNotDiffer() {
        assertThat(gamut("A", "bt2020").differs(gamut("B", "f-gamut"))).isFalse();
        assertThat(gamut("A", "bt2020").differs(gamut("B", "bt709"))).isTrue();
        assertThat(gamut("A", "s-gamut3").differs(gamut("B", "s-gamut3-cine"))).isTrue();
    }

    private static RecordedGamut gamut(String unit, String id) {
        LightRig.Draft draft = LightRig.draft(unit);
        draft.unit.put("gamut", SharedData.gamuts().get(id));
        return (RecordedGamut) RecordedGamut.derive(draft.make()).get(0);
    }

    private static Profile profile(String id, double headroom, boolean look) {
        return Sparse.of(
                Profile.class,
                Map.of("id", id, "headroom", new Stops(headroom), "footroom", new Stops(7), "look", look));
    }

    private static SignalLevels levels(SignalRange sends, SignalRange reads) {
        return (SignalLevels)
                SignalLevels.derive(external(null, sends, reads, null).make()).get(0);
    }

    private static LightRig.Draft external(String forces, SignalRange sends, SignalRange reads, SignalRange fixed) {
        LightRig.Draft draft = LightRig.draft("B");
        Output output = new Output("out", Codec.Kind.ENCODED, 10, "4:2:2", forces, null, sends, null, null);
        Recorder recorder = new Recorder(
                "box",
                null,
                null,
                Map.of("video", VIDEO),
                null,
                fixed,
                null,
                List.of(Aid.WAVEFORM),
                null,
                Map.of(),
                null,
                null,
                null,
                null,
                null);
        draft.recording = new Recording(recorder, output, VIDEO, reads);
        return draft;
    }

    private static RecordedEncoding encoding(LightRig.Draft draft) {
        return (RecordedEncoding) RecordedEncoding.derive(draft.make()).get(0);
    }

    private static ClipAim clip(LightRig.Draft draft) {
        return (ClipAim) ClipAim.derive(draft.make()).get(0);
    }

    private static Target target(LightRig.Draft draft) {
        Unit unit = draft.make();
        return ((GreyAim) GreyAim.derive(unit).get(0)).target();
    }
}
