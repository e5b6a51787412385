package akin.model.tone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import akin.published.PublishedTable;
import akin.published.PublishedTable.Row;
import akin.published.SharedData;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TonePlacementTest {
    private static final double LOGC3_CLIP_AT_800 = 35.8471;

    static List<Row> logC3Constants() {
        return PublishedTable.read("arri-logc3-constants.csv");
    }

    // ARRI, Log C Curve - Usage in VFX (2012): the light at clip for eleven exposure indices of one sensor. Taking only
    // that of EI 800 and the rule, the other ten follow; at 1600 the curve itself ends first.
    @ParameterizedTest
    @MethodSource("logC3Constants")
    void publishedClipLevelsFollowTheShift(Row row) {
        double ei = row.number("ei");
        Encoding curve = SharedData.encoding("arri-logc3-ei" + row.text("ei"));
        double headroom = TonePlacement.of(curve, ei, 800)
                .withSensorClip(LOGC3_CLIP_AT_800)
                .headroomStops()
                .orElseThrow();
        double published = Math.log(row.number("linear_at_clip") / 0.18) / Math.log(2);
        // Clip codes are printed to four decimals.
        assertThat(headroom).isCloseTo(published, within(0.002));
    }

    // Common practice, no source: a profile whose floor is ISO 400 (another's is 640) loses highlights when rated
    // lower,
    // one stop for each halving.
    @ParameterizedTest
    @CsvSource({"400, 200, 1", "640, 320, 1", "640, 160, 2", "800, 500, 0.678"})
    void ratingBelowBaseLosesHighlights(double base, double rated, double lost) {
        Encoding curve = SharedData.encoding("sony-s-log3");
        TonePlacement atBase = TonePlacement.of(curve, base, base)
                .withSensorClip(curve.ceiling())
                .withFloor(6);
        TonePlacement below = TonePlacement.of(curve, rated, base)
                .withSensorClip(curve.ceiling())
                .withFloor(6);
        assertThat(atBase.headroomStops().orElseThrow() - below.headroomStops().orElseThrow())
                .isCloseTo(lost, within(5e-4));
        assertThat(below.footroomStops().orElseThrow() - atBase.footroomStops().orElseThrow())
                .isCloseTo(lost, within(5e-4));
        assertThat(below.highlightShiftStops()).isCloseTo(-lost, within(5e-4));
        assertThat(below.middleGrey()).isEqualTo(atBase.middleGrey());
    }

    @Test
    void ratingAboveBaseGainsHighlightsOnlyUpToTheCurvesCeiling() {
        Encoding curve = SharedData.encoding("sony-s-log3");
        TonePlacement sensorFirst = TonePlacement.of(curve, 1600, 800).withSensorClip(curve.ceiling() / 4);
        assertThat(sensorFirst.headroomStops().orElseThrow()).isCloseTo(curve.headroomStops() - 1, within(1e-9));
        TonePlacement curveFirst = TonePlacement.of(curve, 1600, 800).withSensorClip(curve.ceiling());
        assertThat(curveFirst.headroomStops().orElseThrow()).isCloseTo(curve.headroomStops(), within(1e-9));
    }

    @Test
    void whatIsNotKnownIsNotAssumed() {
        TonePlacement placement = TonePlacement.of(SharedData.encoding("sony-s-log3"), 400, 800);
        assertThat(placement.headroomStops()).isEmpty();
        assertThat(placement.footroomStops()).isEmpty();
        assertThat(placement.headroomAtMostStops())
                .isCloseTo(placement.encoding().headroomStops() - 1, within(1e-9));
        TonePlacement raw = TonePlacement.of(SharedData.encoding("linear"), 800, 800);
        assertThat(raw.headroomAtMostStops()).isInfinite();
        assertThat(raw.withSensorClip(0.18 * 64).headroomStops().orElseThrow()).isCloseTo(6, within(1e-12));
    }

    @Test
    void theSumOfHeadroomAndFootroomIsTheSensorsWhileTheCurveDoesNotLimit() {
        Random random = new Random(640);
        Encoding raw = SharedData.encoding("linear");
        for (int i = 0; i < 1000; i++) {
            double base = 100 * Math.pow(2, 6 * random.nextDouble());
            double ei = 50 * Math.pow(2, 9 * random.nextDouble());
            double clip = 1 + 40 * random.nextDouble();
            double floor = 3 + 6 * random.nextDouble();
            TonePlacement placement =
                    TonePlacement.of(raw, ei, base).withSensorClip(clip).withFloor(floor);
            double range = placement.headroomStops().orElseThrow()
                    + placement.footroomStops().orElseThrow();
            assertThat(range).isCloseTo(Math.log(clip / 0.18) / Math.log(2) + floor, within(1e-9));
        }
    }

    // Sony, Technical Summary for S-Gamut3.Cine/S-Log3: 18 % at code 420, 41 %.
    @Test
    void middleGreyInEveryReading() {
        TonePlacement placement = TonePlacement.of(SharedData.encoding("sony-s-log3"), 800, 800);
        assertThat(placement.middleGreyCode10()).isCloseTo(420, within(1e-6));
        assertThat(placement.middleGreyLegalPercent()).isCloseTo(41, within(0.5));
        assertThat(placement.middleGrey()).isCloseTo(420.0 / 1023, within(1e-9));
    }

    @Test
    void impossibleSpeedsAreRefused() {
        Encoding curve = SharedData.encoding("sony-s-log3");
        assertThatThrownBy(() -> TonePlacement.of(curve, 0, 800)).hasMessageContaining("exposure index");
        assertThatThrownBy(() -> TonePlacement.of(curve, 800, Double.NaN)).hasMessageContaining("base ISO");
        assertThatThrownBy(() -> TonePlacement.of(curve, 800, 800).withSensorClip(-1))
                .hasMessageContaining("sensor clip");
        assertThatThrownBy(() -> TonePlacement.of(curve, 800, 800).withFloor(Double.NaN))
                .hasMessageContaining("noise floor");
    }
}
