package akin.model.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class FieldOfViewTest {

    /** 50 mm on 36 mm x 24 mm: ayton.id.au, "photo:fov"; 30 mm on 22.5 mm: sciencezero.4hv.org. */
    @ParameterizedTest
    @CsvSource({"36,50,39.6", "24,50,27.0", "43.2666,50,46.8", "22.5,30,41.1"})
    void anglesAsPrinted(double side, double focal, double degrees) {
        assertThat(FieldOfView.degrees(side, focal, 1)).isCloseTo(degrees, within(0.05));
    }

    /**
     * Sources of the sizes stand in the file; diagonals and crop factors there are arithmetic on them, some from
     * inches, so that the thousandths of a millimetre shown leave a little.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/akin/published/film-formats.csv", numLinesToSkip = 1)
    void diagonalsAndCropFactorsOfFilmFormats(
            String format, double width, double height, double diagonal, double crop) {
        assertThat(FieldOfView.diagonal(width, height)).as(format).isCloseTo(diagonal, within(5e-4));
        assertThat(FieldOfView.cropFactor(width, height, CropReference.DIAGONAL))
                .as(format)
                .isCloseTo(crop, within(1e-4));
        double ratio = width / height;
        assertThat(FieldOfView.activeWidthFromCrop(crop, CropReference.DIAGONAL, ratio))
                .as(format)
                .isCloseTo(width, within(1e-4 * width));
    }

    /** Factors that klecker.de, "Film and sensor formats", prints for its sizes. */
    @ParameterizedTest
    @CsvSource({"22.2,14.8,1.62", "13.2,8.8,2.7", "8.8,6.6,3.92"})
    void cropFactorsAsPrinted(double width, double height, double printed) {
        // printed to two or three figures, one of them cut off rather than rounded
        assertThat(FieldOfView.cropFactor(width, height, CropReference.DIAGONAL))
                .isCloseTo(printed, within(0.03));
    }

    /** Crop factors in the lensfun database (1c8b8f07), which counts 43.2666 / diagonal. */
    @ParameterizedTest
    @CsvFileSource(resources = "/akin/published/lens-crop.csv", numLinesToSkip = 1)
    void diagonalsFromTheLensDatabase(double crop, double diagonal) {
        assertThat(FieldOfView.diagonalFromCrop(crop)).isCloseTo(diagonal, within(5e-5));
        double width = FieldOfView.activeWidthFromCrop(crop, CropReference.DIAGONAL, 1.5);
        assertThat(FieldOfView.cropFactor(width, width / 1.5, CropReference.DIAGONAL))
                .isCloseTo(crop, within(1e-12));
    }

    @Test
    void twoConventionsOfCropGiveDifferentWidths() {
        assertThat(FieldOfView.cropFactor(24.892, 18.669, CropReference.DIAGONAL))
                .isCloseTo(1.3905, within(5e-5));
        assertThat(FieldOfView.cropFactor(24.892, 18.669, CropReference.WIDTH)).isCloseTo(1.4462, within(5e-5));
        assertThat(FieldOfView.activeWidthFromCrop(1.5, CropReference.WIDTH, 16 / 9.0))
                .isEqualTo(24);
        assertThat(FieldOfView.activeWidthFromCrop(1.5, CropReference.DIAGONAL, 1.5))
                .isCloseTo(24, within(1e-12));
        assertThat(FieldOfView.activeWidthFromCrop(1.5, CropReference.DIAGONAL, 16 / 9.0))
                .isCloseTo(25.140, within(0.0005));
    }

    @Test
    void matchesFocalLengths() {
        // common practice, no source
        assertThat(FieldOfView.matchedFocal(40, 36, 1, 24, 1)).isCloseTo(26.7, within(0.05));
        double widthOfCrop = FieldOfView.activeWidthFromCrop(1.558, CropReference.WIDTH, 16 / 9.0);
        assertThat(FieldOfView.matchedFocal(50, 36, 1, widthOfCrop, 1)).isCloseTo(32, within(0.5));
        // a lens that squeezes twofold takes in twice the width
        assertThat(FieldOfView.matchedFocal(40, 24, 2, 24, 1)).isCloseTo(20, within(1e-12));
    }

    @Test
    void widthAtTheSubject() {
        assertThat(FieldOfView.widthAt(2000, 36, 50, 1)).isCloseTo(1440, within(1e-9));
        assertThat(FieldOfView.widthAt(2000, 36, 50, 2)).isCloseTo(2880, within(1e-9));
        assertThat(FieldOfView.percentApart(40, 36, 1, 25, 24, 1)).isCloseTo(6.667, within(0.0005));
        assertThat(FieldOfView.percentApart(25, 24, 1, 40, 36, 1)).isCloseTo(6.667, within(0.0005));
    }

    @Test
    void matchedFocalTakesInTheSameAndLeadsBack() {
        Random random = new Random(52);
        for (int i = 0; i < 500; i++) {
            double focal = 8 + 192 * random.nextDouble();
            double widthA = 4 + 60 * random.nextDouble();
            double widthB = 4 + 60 * random.nextDouble();
            double squeezeA = 1 + random.nextDouble();
            double squeezeB = 1 + random.nextDouble();
            double matched = FieldOfView.matchedFocal(focal, widthA, squeezeA, widthB, squeezeB);
            assertThat(FieldOfView.matchedFocal(matched, widthB, squeezeB, widthA, squeezeA))
                    .isCloseTo(focal, within(1e-9));
            assertThat(FieldOfView.degrees(widthB, matched, squeezeB))
                    .isCloseTo(FieldOfView.degrees(widthA, focal, squeezeA), within(1e-9));
            assertThat(FieldOfView.percentApart(focal, widthA, squeezeA, matched, widthB, squeezeB))
                    .isCloseTo(0, within(1e-9));
            // the width seen at a distance is what the angle spans there
            assertThat(FieldOfView.widthAt(3000, widthA, focal, squeezeA))
                    .isCloseTo(
                            6000 * Math.tan(Math.toRadians(FieldOfView.degrees(widthA, focal, squeezeA) / 2)),
                            within(1e-6));
        }
    }

    @Test
    void refusesWhatIsOutOfRange() {
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> FieldOfView.degrees(36, bad, 1))
                    .withMessage("focal length must be above 0 mm and finite, was " + bad);
            assertThatIllegalArgumentException().isThrownBy(() -> FieldOfView.degrees(bad, 50, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> FieldOfView.degrees(36, 50, bad));
            assertThatIllegalArgumentException().isThrownBy(() -> FieldOfView.widthAt(bad, 36, 50, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> FieldOfView.matchedFocal(40, 36, 1, bad, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> FieldOfView.matchedFocal(40, 36, 1, 24, bad));
            assertThatIllegalArgumentException().isThrownBy(() -> FieldOfView.percentApart(40, 36, 1, 25, bad, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> FieldOfView.diagonal(bad, 24));
            assertThatIllegalArgumentException().isThrownBy(() -> FieldOfView.cropFactor(36, bad, CropReference.WIDTH));
            assertThatIllegalArgumentException().isThrownBy(() -> FieldOfView.diagonalFromCrop(bad));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> FieldOfView.activeWidthFromCrop(bad, CropReference.WIDTH, 1.5));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> FieldOfView.activeWidthFromCrop(1.5, CropReference.WIDTH, bad));
        }
    }
}
