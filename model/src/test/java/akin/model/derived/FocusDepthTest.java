package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.gear.Lens;
import akin.model.optics.DepthOfField;
import akin.model.quantity.Aperture;
import akin.model.quantity.Length;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FocusDepthTest {

    private static FocusDepth depth(double focal, double stop, double diagonal) {
        return new FocusDepth("A", focal, stop, FocusDepth.Basis.SET, DepthOfField.circleOfConfusion(diagonal));
    }

    /** 50 mm at f/2.8, 3 m: ExifTool 12.57, composite tags, run on a test picture. */
    @Test
    void reportsTheLimitsThatExifToolGives() {
        FocusDepth full = depth(50, 2.8, Math.hypot(36, 24));
        DepthOfField at = full.at(Length.parse("3 m"));
        assertThat(full.confusionMm()).isCloseTo(0.0300462606288666, within(1e-9));
        assertThat(full.hyperfocalMm()).isCloseTo(29_716.0819406372, within(1e-3));
        assertThat(at.nearMm()).isCloseTo(2729.07678318806, within(1e-3));
        assertThat(at.farMm()).isCloseTo(3330.64234128954, within(1e-3));
    }

    @Test
    void fourOnFortyHasTheDepthOfTwoPointSixSevenOnTwentySixPointSeven() {
        // common practice, no source
        FocusDepth a = depth(40, 4, Math.hypot(36, 20.25));
        FocusDepth b = depth(80 / 3.0, 4, Math.hypot(24, 13.5));
        assertThat(b.fNumberFor(a)).isCloseTo(2.667, within(0.001));
        assertThat(b.stopsShallower(a)).isCloseTo(-1.17, within(0.001));
    }

    @Test
    void equalPupilsOnMatchedViewsAreSharpOverTheSameRange() {
        Random random = new Random(20_260_302);
        for (int i = 0; i < 300; i++) {
            double ratio = 0.4 + random.nextDouble();
            double focal = 15 + 100 * random.nextDouble();
            FocusDepth a = depth(focal, 1.4 + 4 * random.nextDouble(), 43);
            FocusDepth smaller = depth(focal * ratio, 4, 43 * ratio);
            FocusDepth b = depth(focal * ratio, smaller.fNumberFor(a), 43 * ratio);
            Length subject = new Length(2000 + 3000 * random.nextDouble());
            assertThat(b.stopsShallower(a)).isCloseTo(0, within(1e-9));
            // alike but for the focal length in d - f, which is under a tenth of these distances
            double near = a.at(subject).nearMm();
            assertThat(b.at(subject).nearMm()).isCloseTo(near, within(0.02 * near));
        }
    }

    private static StopRange range(double open, double closed, Lens.Iris iris) {
        return new StopRange("A", "lens", Aperture.parse("f/4"), open, closed, iris);
    }

    @Test
    void staysWithinWhatTheLensOffers() {
        StopRange stepless = range(2.8, 22, Lens.Iris.STEPLESS);
        assertThat(stepless.nearest(2.67)).isEqualTo(Aperture.parse("f/2.8"));
        assertThat(stepless.nearest(3.14)).isEqualTo(Aperture.parse("f/3.1"));
        assertThat(stepless.nearest(40)).isEqualTo(Aperture.parse("f/22"));
        assertThat(stepless.beyond(1.4)).isCloseTo(2, within(1e-9));
        assertThat(stepless.beyond(44)).isCloseTo(2, within(1e-9));
        assertThat(stepless.beyond(22.2)).isZero();
        assertThat(stepless.beyond(5.6)).isZero();
        StopRange thirds = range(2.8, 22, Lens.Iris.THIRDS);
        assertThat(thirds.nearest(3.05)).isEqualTo(Aperture.parse("f/3.2"));
        assertThat(thirds.nearest(1.4)).isEqualTo(Aperture.parse("f/2.8"));
        assertThat(range(2.8, 2.8, Lens.Iris.FIXED).nearest(8)).isEqualTo(Aperture.parse("f/2.8"));
    }

    @Test
    void opensNoFurtherThanAskedAndNotAtAllWhereItCannot() {
        assertThat(range(2.8, 22, Lens.Iris.STEPLESS).atMost(5.89)).isEqualTo(Aperture.parse("f/5.8"));
        assertThat(range(2.8, 22, Lens.Iris.THIRDS).atMost(5.89)).isEqualTo(Aperture.parse("f/5.6"));
        assertThat(range(8, 22, Lens.Iris.STEPLESS).atMost(5.89)).isNull();
    }

    @Test
    void theNearestSettingCanAlwaysBeSet() {
        Random random = new Random(20_260_303);
        for (int i = 0; i < 500; i++) {
            double open = Math.round((0.7 + 5 * random.nextDouble()) * 10) / 10.0;
            StopRange range =
                    range(open, open * (1 + 8 * random.nextDouble()), anyOf(random, List.of(Lens.Iris.values())));
            double wanted = 0.5 + 40 * random.nextDouble();
            assertThat(range.beyond(range.nearest(wanted).number()))
                    .as("%s for %s", range, wanted)
                    .isZero();
        }
    }

    private static <T> T anyOf(Random random, List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    /** The formula holds for a subject farther than the focal length. */
    @Test
    void onlyScenesBeyondTheFocalLengthHaveADepth() {
        Rig rig = PlannedRig.at("25")
                .white(null, null)
                .white(null, null)
                .scene(at(0, "closer", 49.9))
                .scene(at(1, "there", 50.0))
                .scene(at(2, "beyond", 50.1))
                .scene(at(3, "no distance", null))
                .rig();
        assertThat(depth(50, 2.8, 43).inScenes(rig))
                .extracting(in -> in.scene().name())
                .containsExactly("beyond");
    }

    private static Scene at(int index, String name, @Nullable Double millimetres) {
        return new Scene(
                index,
                name,
                millimetres == null ? null : new Length(millimetres),
                Map.of(),
                null,
                null,
                null,
                List.of());
    }
}
