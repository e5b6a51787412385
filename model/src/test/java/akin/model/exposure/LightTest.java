package akin.model.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class LightTest {

    /** camera-wiki.org, "Neutral density filter", Table 1; opticalglasscn.com, ND table. */
    @ParameterizedTest
    @CsvFileSource(resources = "/akin/published/nd-density.csv", numLinesToSkip = 1)
    void densitiesAsPublished(double density, String nominalStops, double transmittance, double exactStops) {
        assertThat(Light.stopsOfDensity(density)).isCloseTo(exactStops, within(1e-6));
        assertThat(Math.pow(10, -density)).isCloseTo(transmittance, within(1e-6));
        // six printed places of the transmittance leave this much
        assertThat(Light.stopsOfTransmittance(transmittance)).isCloseTo(exactStops, within(1e-6 / transmittance));
        assertThat(Light.densityOfStops(exactStops)).isCloseTo(density, within(1e-6));
        // the marked stops are the exact ones to within 0.4 %
        assertThat(Light.stopsOfDensity(density)).isCloseTo(mixedNumber(nominalStops), within(0.004 * exactStops));
    }

    /** ExifTool 12.57, composite tag LightValue. */
    @ParameterizedTest
    @CsvFileSource(resources = "/akin/published/exiftool-optics.csv", useHeadersInDisplayName = true)
    void lightValuesAsComputedByAnIndependentProgram(
            String name,
            double focal,
            double fNumber,
            double focal35,
            double subject,
            double exposure,
            double iso,
            double scale,
            double confusion,
            double hyperfocal,
            double near,
            double far,
            double view,
            double lightValue) {
        // one row was given 1/48 s as 0.020833333
        assertThat(Light.lightValue(fNumber, exposure, iso)).as(name).isCloseTo(lightValue, within(1e-6));
    }

    @Test
    void tNumbersAsPublished() {
        // T2.3 for f/2.0 at 75 % and T5.6 for f/4 at 50 %: idigitalphoto.com, "T-number", among others
        assertThat(Light.tNumber(2, 0.75)).isCloseTo(2.309, within(0.0005));
        assertThat(Light.tNumber(4, 0.5)).isCloseTo(5.657, within(0.0005));
        assertThat(Light.tNumber(2.8, 1)).isEqualTo(2.8);
    }

    @Test
    void stopsAndRatiosAreInverse() {
        assertThat(Light.stops(8)).isCloseTo(3, within(1e-12));
        assertThat(Light.ratio(-1)).isEqualTo(0.5);
        Random random = new Random(49);
        for (int i = 0; i < 300; i++) {
            double stops = 40 * random.nextDouble() - 20;
            assertThat(Light.stops(Light.ratio(stops))).isCloseTo(stops, within(1e-9));
        }
    }

    @Test
    void eachSettingCountsItsStops() {
        double t = 1 / 50.0;
        assertThat(Light.stopsApart(t, 800, 2.8, 0, t, 800, 5.6, 0)).isCloseTo(-2, within(1e-12));
        assertThat(Light.stopsApart(t, 800, 2.8, 0, t, 1600, 2.8, 0)).isCloseTo(1, within(1e-12));
        assertThat(Light.stopsApart(t, 800, 2.8, 0, t, 800, 2.8, 3)).isCloseTo(-3, within(1e-12));
        assertThat(Light.stopsApart(t, 800, 2.8, 0, 2 * t, 800, 2.8, 0)).isCloseTo(1, within(1e-12));
        // the formula as it is written down, in one piece
        double written = Math.log((0.01 * 500 / (4 * 4 * Math.pow(2, 2))) / (0.02 * 800 / (2 * 2 * Math.pow(2, 1))))
                / Math.log(2);
        assertThat(Light.stopsApart(0.02, 800, 2, 1, 0.01, 500, 4, 2)).isCloseTo(written, within(1e-12));
    }

    @Test
    void swappingUnitsTurnsTheSign() {
        Random random = new Random(50);
        for (int i = 0; i < 500; i++) {
            double[] a = setting(random);
            double[] b = setting(random);
            double there = Light.stopsApart(a[0], a[1], a[2], a[3], b[0], b[1], b[2], b[3]);
            double back = Light.stopsApart(b[0], b[1], b[2], b[3], a[0], a[1], a[2], a[3]);
            assertThat(back).isEqualTo(-there);
            assertThat(Light.stopsApart(a[0], a[1], a[2], a[3], a[0], a[1], a[2], a[3]))
                    .isZero();
            // ISO that pays the difference back
            double iso = Light.isoBrighterBy(b[1], -there);
            assertThat(Light.stopsApart(a[0], a[1], a[2], a[3], b[0], iso, b[2], b[3]))
                    .isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void depthOnASmallerAreaCostsLight() {
        // common practice, no source: 1.17 stops for a width ratio of 1.5
        assertThat(DepthCost.stops(1.5)).isCloseTo(1.17, within(0.005));
        assertThat(DepthCost.stops(1)).isZero();
        assertThat(Light.isoBrighterBy(800, -1.17)).isCloseTo(355.5, within(0.05));
        // the same as opening f/4 to f/2.667
        assertThat(Light.stopsApart(0.02, 800, 4, 0, 0.02, 800, 4 / 1.5, 0))
                .isCloseTo(DepthCost.stops(1.5), within(1e-12));
    }

    @Test
    void refusesWhatIsOutOfRange() {
        assertThatIllegalArgumentException().isThrownBy(() -> Light.stops(0));
        assertThatIllegalArgumentException().isThrownBy(() -> Light.ratio(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Light.ratio(Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Light.tNumber(2, 1.1))
                .withMessage("transmittance must be above 0 and up to 1, was 1.1");
        assertThatIllegalArgumentException().isThrownBy(() -> Light.tNumber(0, 0.5));
        assertThatIllegalArgumentException().isThrownBy(() -> Light.stopsOfTransmittance(0));
        assertThatIllegalArgumentException().isThrownBy(() -> Light.lightValue(-1, 1, 100));
        assertThatIllegalArgumentException().isThrownBy(() -> Light.lightValue(1, 0, 100));
        assertThatIllegalArgumentException().isThrownBy(() -> Light.lightValue(1, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Light.stopsOfDensity(-0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Light.densityOfStops(-0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Light.isoBrighterBy(0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> DepthCost.stops(-1));
        double[] good = {0.02, 800, 2.8, 1, 0.02, 800, 2.8, 1};
        for (int i = 0; i < good.length; i++) {
            double[] bad = good.clone();
            bad[i] = -1;
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Light.stopsApart(bad[0], bad[1], bad[2], bad[3], bad[4], bad[5], bad[6], bad[7]));
        }
    }

    private static double[] setting(Random random) {
        return new double[] {
            1e-4 + 0.04 * random.nextDouble(),
            100 + random.nextInt(12_000),
            1 + 21 * random.nextDouble(),
            10 * random.nextDouble()
        };
    }

    /** Reads "1 2/3". */
    private static double mixedNumber(String text) {
        double sum = 0;
        for (String part : text.split(" ", -1)) {
            int bar = part.indexOf('/');
            sum += bar < 0
                    ? Double.parseDouble(part)
                    : Double.parseDouble(part.substring(0, bar)) / Double.parseDouble(part.substring(bar + 1));
        }
        return sum;
    }
}
