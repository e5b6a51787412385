package akin.model.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class DepthOfFieldTest {

    /**
     * ExifTool 12.57, composite tags; it takes pi as 3.14159, writes 0 for infinity and leaves + f off the hyperfocal.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/akin/published/exiftool-optics.csv", numLinesToSkip = 1)
    void agreesWithAnIndependentProgram(
            String name,
            double focal,
            double fNumber,
            double focal35,
            double subjectM,
            double exposure,
            double iso,
            double scale,
            double confusion,
            double hyperfocalM,
            double nearM,
            double farM,
            double viewDegrees) {
        double diagonal = FieldOfView.diagonalFromCrop(focal35 / focal);
        double circle = DepthOfField.circleOfConfusion(diagonal);
        DepthOfField depth = DepthOfField.of(focal, fNumber, circle, 1000 * subjectM, HyperfocalConvention.SIMPLIFIED);
        assertThat(circle).as(name).isCloseTo(confusion, within(1e-9));
        assertThat(depth.hyperfocalMm() / 1000).as(name).isCloseTo(hyperfocalM, within(1e-6));
        assertThat(depth.nearMm() / 1000).as(name).isCloseTo(nearM, within(1e-6));
        if (farM == 0) {
            assertThat(depth.reachesInfinity()).as(name).isTrue();
            assertThat(depth.totalMm()).as(name).isInfinite();
        } else {
            assertThat(depth.farMm() / 1000).as(name).isCloseTo(farM, within(1e-6));
        }
        assertThat(FieldOfView.degrees(36, focal35, 1)).as(name).isCloseTo(viewDegrees, within(1e-3));
    }

    @Test
    void hyperfocalOfAPrintedHandbook() {
        // The Barnet Book of Photography, "Depth": 6 in, f/8, c = 1/100 in, 450 in
        assertThat(DepthOfField.hyperfocal(6 * 25.4, 8, 0.254, HyperfocalConvention.SIMPLIFIED) / 25.4)
                .isCloseTo(450, within(1e-9));
    }

    @Test
    void hyperfocalOfTheThinLens() {
        // illuma.blogspot.com, 12 March 2014: 50 mm, f/4, c = 0.018 mm, 34772 mm
        assertThat(DepthOfField.hyperfocal(50, 4, 0.018, HyperfocalConvention.THIN_LENS))
                .isCloseTo(34_772, within(1.0));
    }

    @Test
    void limitsOfAPrintedManual() {
        // a navy's training manual, Photography (Basic), 14209, "Conjugate Foci" (photographytraining.tpub.com): 155
        // mm, f/2.8,
        // hyperfocal 554 ft, focused at 10 ft: sharp from 9.8 ft to 10.2 ft
        double foot = 304.8;
        double circle = 155.0 * 155.0 / (2.8 * 554 * foot);
        DepthOfField depth = DepthOfField.of(155, 2.8, circle, 10 * foot, HyperfocalConvention.SIMPLIFIED);
        assertThat(depth.hyperfocalMm() / foot).isCloseTo(554, within(1e-9));
        assertThat(depth.nearMm() / foot).isCloseTo(9.8, within(0.05));
        assertThat(depth.farMm() / foot).isCloseTo(10.2, within(0.05));
    }

    @Test
    void circlesOfConfusion() {
        assertThat(DepthOfField.circleOfConfusion(43.2666)).isCloseTo(0.0300463, within(1e-7));
        assertThat(DepthOfField.circleOfConfusion(43.2666, DepthOfField.CONFUSION_DIVISOR_1500))
                .isCloseTo(0.028844, within(1e-6));
    }

    @Test
    void totalIsFromNearToFar() {
        DepthOfField depth = DepthOfField.of(50, 2.8, 0.0300463, 3000, HyperfocalConvention.SIMPLIFIED);
        assertThat(depth.totalMm()).isCloseTo(601.6, within(0.05));
        assertThat(depth.reachesInfinity()).isFalse();
    }

    @Test
    void sharpFromHalfTheHyperfocalOn() {
        Random random = new Random(53);
        for (int i = 0; i < 300; i++) {
            double focal = 10 + 190 * random.nextDouble();
            double fNumber = 1 + 15 * random.nextDouble();
            double hyperfocal = DepthOfField.hyperfocal(focal, fNumber, 0.025, HyperfocalConvention.THIN_LENS);
            DepthOfField there =
                    DepthOfField.of(focal, fNumber, 0.025, hyperfocal * (1 + 1e-9), HyperfocalConvention.THIN_LENS);
            DepthOfField nearer =
                    DepthOfField.of(focal, fNumber, 0.025, hyperfocal * (1 - 1e-6), HyperfocalConvention.THIN_LENS);
            assertThat(there.reachesInfinity()).isTrue();
            assertThat(nearer.reachesInfinity()).isFalse();
            assertThat(there.nearMm()).isCloseTo(hyperfocal / 2, within(1e-4 * hyperfocal));
        }
    }

    /**
     * Forms the images by the lens equation and looks for the blur circle: another road to the same limits.
     */
    @Test
    void limitsAreWhereTheBlurCircleIsTheOneAllowed() {
        Random random = new Random(54);
        int finite = 0;
        for (int i = 0; i < 300; i++) {
            double focal = 10 + 140 * random.nextDouble();
            double fNumber = 1 + 10 * random.nextDouble();
            double circle = 0.005 + 0.03 * random.nextDouble();
            double distance = focal * (5 + 200 * random.nextDouble());
            DepthOfField depth = DepthOfField.of(focal, fNumber, circle, distance, HyperfocalConvention.SIMPLIFIED);
            assertThat(blur(focal, fNumber, distance, depth.nearMm())).isCloseTo(circle, within(1e-9));
            if (!depth.reachesInfinity()) {
                finite++;
                assertThat(blur(focal, fNumber, distance, depth.farMm())).isCloseTo(circle, within(1e-9));
            }
        }
        assertThat(finite).isGreaterThan(100);
    }

    @Test
    void conventionChangesTheHyperfocalOnly() {
        DepthOfField a = DepthOfField.of(50, 4, 0.03, 3000, HyperfocalConvention.SIMPLIFIED);
        DepthOfField b = DepthOfField.of(50, 4, 0.03, 3000, HyperfocalConvention.THIN_LENS);
        assertThat(b.nearMm()).isEqualTo(a.nearMm());
        assertThat(b.farMm()).isEqualTo(a.farMm());
        assertThat(b.hyperfocalMm() - a.hyperfocalMm()).isCloseTo(50, within(1e-9));
    }

    @Test
    void equalDepthOnSmallerAreas() {
        // common practice, no source: f/4 to f/2.67 for 40 mm to 26.7 mm; f/3 to about f/1.9 for 50 mm to 32 mm
        assertThat(DepthOfField.equalDepthStop(4, 40, 40 / 1.5)).isCloseTo(2.667, within(0.0005));
        assertThat(DepthOfField.equalDepthStop(3, 50, 32)).isCloseTo(1.9, within(0.05));
        assertThat(DepthOfField.entrancePupil(50, 2)).isEqualTo(25);
    }

    @Test
    void pupilsApartInStops() {
        assertThat(DepthOfField.pupilStopsApart(50, 2, 50, 4)).isCloseTo(2, within(1e-12));
        assertThat(DepthOfField.pupilStopsApart(50, 4, 50, 2)).isCloseTo(-2, within(1e-12));
        assertThat(DepthOfField.pupilStopsApart(40, 4, 40 / 1.5, 4 / 1.5)).isCloseTo(0, within(1e-12));
    }

    @Test
    void equalPupilsGiveEqualDepthFarAway() {
        Random random = new Random(55);
        for (int i = 0; i < 300; i++) {
            double focalA = 15 + 85 * random.nextDouble();
            double scale = 0.3 + random.nextDouble();
            double focalB = focalA * scale;
            double stopA = 1.4 + 10 * random.nextDouble();
            double stopB = DepthOfField.equalDepthStop(stopA, focalA, focalB);
            assertThat(DepthOfField.pupilStopsApart(focalA, stopA, focalB, stopB))
                    .isCloseTo(0, within(1e-9));
            // matched views: the circle of confusion goes with the picture width, as the focal length does
            double circleA = 0.03;
            double distance = 200 * focalA;
            DepthOfField a = DepthOfField.of(focalA, stopA, circleA, distance, HyperfocalConvention.SIMPLIFIED);
            DepthOfField b = DepthOfField.of(focalB, stopB, circleA * scale, distance, HyperfocalConvention.SIMPLIFIED);
            // what is left is at most the difference of the focal lengths over the distance
            double firstOrder = Math.abs(focalA - focalB) / distance;
            assertThat(b.nearMm() / a.nearMm()).isCloseTo(1, within(firstOrder));
        }
    }

    @Test
    void refusesWhatIsOutOfRange() {
        HyperfocalConvention simplified = HyperfocalConvention.SIMPLIFIED;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DepthOfField.of(50, 4, 0.03, 50, simplified))
                .withMessage("subject distance must be above the focal length of 50.0 mm, was 50.0 mm");
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> DepthOfField.of(bad, 4, 0.03, 3000, simplified));
            assertThatIllegalArgumentException().isThrownBy(() -> DepthOfField.of(50, bad, 0.03, 3000, simplified));
            assertThatIllegalArgumentException().isThrownBy(() -> DepthOfField.of(50, 4, bad, 3000, simplified));
            assertThatIllegalArgumentException().isThrownBy(() -> DepthOfField.of(50, 4, 0.03, bad, simplified));
            assertThatIllegalArgumentException().isThrownBy(() -> DepthOfField.circleOfConfusion(bad));
            assertThatIllegalArgumentException().isThrownBy(() -> DepthOfField.circleOfConfusion(43, bad));
            assertThatIllegalArgumentException().isThrownBy(() -> DepthOfField.entrancePupil(50, bad));
            assertThatIllegalArgumentException().isThrownBy(() -> DepthOfField.equalDepthStop(4, 40, bad));
            assertThatIllegalArgumentException().isThrownBy(() -> DepthOfField.pupilStopsApart(50, 2, bad, 2));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> new DepthOfField(2, 1, 10, 0.03));
        assertThatIllegalArgumentException().isThrownBy(() -> new DepthOfField(2, Double.NaN, 10, 0.03));
    }

    /** Diameter of the blur of a point at one distance on a sensor that is focused for another. */
    private static double blur(double focal, double fNumber, double focused, double point) {
        double sensor = 1 / (1 / focal - 1 / focused);
        double image = 1 / (1 / focal - 1 / point);
        return focal / fNumber * Math.abs(sensor - image) / image;
    }
}
