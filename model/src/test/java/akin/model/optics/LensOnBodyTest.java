package akin.model.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a lens meets on a body: diffraction, image circle, flange distance, converters, read-out. */
class LensOnBodyTest {

    @Test
    void airyDisk() {
        // 2.44 lambda N: coonaskies.com; f/8 in light of 550 nm by arithmetic
        assertThat(Diffraction.airyDiameterMicrometres(8)).isCloseTo(10.736, within(1e-9));
        assertThat(Diffraction.airyDiameterMicrometres(8, 550)).isCloseTo(10.736, within(1e-9));
        assertThat(Diffraction.photositePitchMicrometres(24, 6000)).isCloseTo(4, within(1e-12));
        assertThat(Diffraction.stopSpanning(2, 4)).isCloseTo(5.961, within(0.0005));
        assertThat(Diffraction.airyDiameterMicrometres(Diffraction.stopSpanning(2, 4)))
                .isCloseTo(8, within(1e-9));
    }

    @Test
    void imageCircle() {
        assertThat(ImageCircle.needed(30, 1.5)).isEqualTo(33);
        assertThat(ImageCircle.needed(36, 24, 0, 5)).isCloseTo(49.518, within(0.0005));
        assertThat(ImageCircle.cornersShortBy(31, 43.2666)).isCloseTo(6.133, within(0.0005));
        assertThat(ImageCircle.cornersShortBy(43.3, 43.2666)).isZero();
    }

    @Test
    void travelAlongTheDiagonalIsTheWorst() {
        Random random = new Random(58);
        for (int i = 0; i < 300; i++) {
            double width = 5 + 50 * random.nextDouble();
            double height = 5 + 50 * random.nextDouble();
            double travel = 10 * random.nextDouble();
            double direction = Math.PI / 2 * random.nextDouble();
            double worst = ImageCircle.needed(FieldOfView.diagonal(width, height), travel);
            double along = Math.atan2(height, width);
            assertThat(ImageCircle.needed(width, height, travel * Math.cos(direction), travel * Math.sin(direction)))
                    .isLessThanOrEqualTo(worst + 1e-9);
            assertThat(ImageCircle.needed(width, height, travel * Math.cos(along), travel * Math.sin(along)))
                    .isCloseTo(worst, within(1e-9));
        }
    }

    @Test
    void adapterNeedsRoom() {
        assertThat(FlangeFocal.adapterRoom(52, 18)).isEqualTo(34);
        assertThat(FlangeFocal.adapterRoom(18, 52)).isEqualTo(-34);
        assertThat(FlangeFocal.adapterPossible(52, 18, 3)).isTrue();
        assertThat(FlangeFocal.adapterPossible(52, 50, 3)).isFalse();
        // 46.50 - 44.20 is a shade below 2.3 in doubles; it is 2.3 on the bench
        assertThat(46.5 - 44.2).isLessThan(2.3);
        assertThat(FlangeFocal.adapterPossible(46.5, 44.2, 2.3)).isTrue();
    }

    @Test
    void reducerMakesItShorterFasterSmaller() {
        ConvertedLens reduced = new ConvertedLens(50, 2.8, 3, 43.3).through(0.71, 1);
        assertThat(reduced.focalMm()).isCloseTo(35.5, within(1e-9));
        assertThat(reduced.fNumber()).isCloseTo(1.988, within(0.0005));
        assertThat(reduced.tNumber()).isCloseTo(2.13, within(1e-9));
        assertThat(reduced.circleMm()).isCloseTo(30.743, within(0.0005));
        // half the light lost in glass is a stop: T times the root of two
        assertThat(new ConvertedLens(50, 2.8, 3, 43.3).through(1, 0.5).tNumber())
                .isCloseTo(3 * Math.sqrt(2), within(1e-9));
    }

    @Test
    void converterLeavesEntrancePupilAndCoverageAlone() {
        Random random = new Random(59);
        for (int i = 0; i < 300; i++) {
            ConvertedLens bare = new ConvertedLens(
                    10 + 190 * random.nextDouble(), 1 + 10 * random.nextDouble(), 12, 10 + 50 * random.nextDouble());
            double factor = 0.5 + 1.5 * random.nextDouble();
            ConvertedLens converted = bare.through(factor, 1);
            assertThat(DepthOfField.pupilStopsApart(
                            bare.focalMm(), bare.fNumber(), converted.focalMm(), converted.fNumber()))
                    .isCloseTo(0, within(1e-9));
            assertThat(FieldOfView.degrees(converted.circleMm(), converted.focalMm(), 1))
                    .isCloseTo(FieldOfView.degrees(bare.circleMm(), bare.focalMm(), 1), within(1e-9));
        }
    }

    @Test
    void rollingShutterLeansInAPan() {
        double skew = RollingShutter.skewPixels(40, 16, 40, 3840);
        assertThat(skew).isCloseTo(61.44, within(1e-9));
        assertThat(RollingShutter.leanDegrees(skew, 2160)).isCloseTo(1.629, within(0.0005));
        assertThat(RollingShutter.skewPixels(0, 16, 40, 3840)).isZero();
        assertThat(RollingShutter.skewPixels(40, 0, 40, 3840)).isZero();
        assertThat(RollingShutter.leanDegrees(0, 2160)).isZero();
    }

    @Test
    void refusesWhatIsOutOfRange() {
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> Diffraction.airyDiameterMicrometres(bad));
            assertThatIllegalArgumentException().isThrownBy(() -> Diffraction.airyDiameterMicrometres(8, bad));
            assertThatIllegalArgumentException().isThrownBy(() -> Diffraction.photositePitchMicrometres(bad, 10));
            assertThatIllegalArgumentException().isThrownBy(() -> Diffraction.stopSpanning(bad, 4));
            assertThatIllegalArgumentException().isThrownBy(() -> ImageCircle.needed(30, bad));
            assertThatIllegalArgumentException().isThrownBy(() -> ImageCircle.needed(bad, 24, 0, 0));
            assertThatIllegalArgumentException().isThrownBy(() -> ImageCircle.needed(36, 24, bad, 0));
            assertThatIllegalArgumentException().isThrownBy(() -> ImageCircle.cornersShortBy(bad, 30));
            assertThatIllegalArgumentException().isThrownBy(() -> FlangeFocal.adapterRoom(bad, 18));
            assertThatIllegalArgumentException().isThrownBy(() -> FlangeFocal.adapterPossible(52, 18, bad));
            assertThatIllegalArgumentException().isThrownBy(() -> new ConvertedLens(bad, 1, 1, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> new ConvertedLens(50, 2, 2, 43).through(bad, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> RollingShutter.skewPixels(bad, 16, 40, 3840));
            assertThatIllegalArgumentException().isThrownBy(() -> RollingShutter.skewPixels(40, bad, 40, 3840));
            assertThatIllegalArgumentException().isThrownBy(() -> RollingShutter.leanDegrees(bad, 2160));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> Diffraction.photositePitchMicrometres(24, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> RollingShutter.skewPixels(40, 16, 0, 3840));
        assertThatIllegalArgumentException().isThrownBy(() -> RollingShutter.skewPixels(40, 16, 40, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> RollingShutter.leanDegrees(1, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ConvertedLens(50, 2, 2, 43).through(0.71, 1.01))
                .withMessageContaining("transmittance of the converter");
    }
}
