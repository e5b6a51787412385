package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Missing;
import akin.model.finding.WhereFound;
import akin.model.gear.Profile;
import akin.model.quantity.Iso;
import akin.model.quantity.Stops;
import akin.published.PublishedTable;
import akin.published.PublishedTable.Row;
import akin.published.SharedData;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ToneRangeTest {

    static List<Row> logC3Constants() {
        return PublishedTable.read("arri-logc3-constants.csv");
    }

    /**
     * ARRI, Log C Curve - Usage in VFX (2012): the light at clip for eleven exposure indices. Given the headroom at EI 800
     * alone, a unit's headroom at the others follows.
     */
    @ParameterizedTest
    @MethodSource("logC3Constants")
    void headroomFollowsPublishedClipLevels(Row row) {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("encoding", SharedData.encoding("arri-logc3-ei" + row.text("ei")));
        draft.unit.put("iso", new Iso((int) row.number("ei")));
        draft.profile.put("encoding", "arri-logc3-ei" + row.text("ei"));
        draft.profile.put("headroom", new Stops(Math.log(35.8471 / 0.18) / Math.log(2)));
        double published = Math.log(row.number("linear_at_clip") / 0.18) / Math.log(2);
        // Clip codes are printed to four decimals.
        assertThat(range(draft).headroom()).isCloseTo(published, within(0.002));
    }

    /** A body with two native ISOs changes over at the upper one. Common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "200,  5, 9, 800",
        "800,  7, 7, 800",
        "1600, 8, 6, 800",
        "3200, 7, 7, 3200",
        "6400, 8, 6, 3200",
    })
    void isoShiftsTheRangeFromTheBaseThatWorks(int iso, double over, double under, int base) {
        LightRig.Draft draft = LightRig.draft("B");
        // A curve that ends far above what the sensor gives.
        draft.unit.put("encoding", SharedData.encoding("red-log3g10"));
        draft.profile.put("encoding", "red-log3g10");
        draft.unit.put("iso", new Iso(iso));
        draft.profile.put("isoBases", List.of(new Iso(3200), new Iso(800)));
        ToneRange range = range(draft);
        assertThat(range.headroom()).isCloseTo(over, within(1e-9));
        assertThat(range.footroom()).isCloseTo(under, within(1e-9));
        assertThat(range.placement().baseIso()).isEqualTo(base);
        assertThat(range.iso()).isEqualTo(new Iso(iso));
        // The whole range does not depend on how it is split.
        assertThat(range.whole()).isCloseTo(14, within(1e-9));
    }

    /** Sony, Technical Summary for S-Log3: the curve ends 7.7378 stops over 18 %, whatever the sensor holds. */
    @Test
    void theCurveEndsTheHeadroom() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("iso", new Iso(12800));
        assertThat(range(draft).headroom()).isCloseTo(7.7378, within(5e-5));
    }

    @Test
    void theModesOwnBasesComeFirst() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.mode.put("isoBases", List.of(new Iso(400)));
        assertThat(range(draft).placement().baseIso()).isEqualTo(400);
    }

    @Test
    void withoutBasesThatMatterNothingShifts() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.profile.put("isoBases", List.of());
        draft.unit.put("iso", new Iso(200));
        assertThat(range(draft).headroom()).isCloseTo(7, within(1e-9));
    }

    @Test
    void aForcedEncodingIsRatedByTheProfileThatWritesIt() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("encoding", SharedData.encoding("bt709"));
        draft.otherProfiles.put(
                "look",
                Sparse.of(
                        Profile.class,
                        Map.of(
                                "id",
                                "look",
                                "encoding",
                                "bt709",
                                "isoBases",
                                List.of(new Iso(800)),
                                "headroom",
                                new Stops(2))));
        assertThat(range(draft).headroom()).isCloseTo(2, within(1e-9));
        draft.otherProfiles.clear();
        assertThat(ToneRange.derive(draft.make()))
                .containsExactly(new Missing("tone-range", "B", "gear.bodies.body-B.profiles", WhereFound.TEST));
    }

    @Test
    void anUnknownHeadroomIsMissingNotAssumed() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.profile.remove("headroom");
        assertThat(ToneRange.derive(draft.make()))
                .containsExactly(
                        new Missing("tone-range", "B", "gear.bodies.body-B.profiles.log.headroom", WhereFound.TEST));
        draft.profile.put("headroom", new Stops(7));
        draft.profile.remove("footroom");
        assertThat(range(draft).whole()).isNull();
    }

    private static ToneRange range(LightRig.Draft draft) {
        return (ToneRange) ToneRange.derive(draft.make()).get(0);
    }
}
