package akin.model.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhiteShiftTest {

    /** CIE 15, table of standard illuminants: chromaticity of D65, 2 degree observer. */
    private static final Chromaticity D65 = new Chromaticity(0.31272, 0.32903);

    private static double[] xyz(Chromaticity light, double brightness) {
        return new double[] {
            brightness * light.x() / light.y(), brightness, brightness * (1 - light.x() - light.y()) / light.y()
        };
    }

    /**
     * CIE 15: D50, D55 and D75 lie on the daylight locus, at 5003 K, 5503 K and 7504 K; D65 at 6504 K. Their mired apart are
     * what the numbers of kelvin say, within the bend of the locus, and none of them is green or magenta.
     */
    @ParameterizedTest
    @CsvSource({
        "0.34567, 0.35850, 5003",
        "0.33242, 0.34743, 5503",
        "0.29902, 0.31485, 7504",
        "0.31272, 0.32903, 6504",
    })
    void standardIlluminants(double x, double y, double kelvin) {
        WhiteShift shift = WhiteShift.of(xyz(new Chromaticity(x, y), 0.2), D65);
        double mired = 1e6 / kelvin - 1e6 / 6504;
        assertThat(shift.mired()).isCloseTo(mired, within(1.5));
        // The locus bends away from its tangent with the square of the distance.
        assertThat(shift.duv()).isCloseTo(0, within(1e-4 + 9e-7 * mired * mired));
    }

    @Test
    void greenIsUpAndMagentaIsDownWhateverTheBrightness() {
        for (double brightness : new double[] {0.01, 0.18, 0.9}) {
            double[] green = xyz(D65, brightness);
            green[1] *= 1.02;
            double[] magenta = xyz(D65, brightness);
            magenta[1] *= 0.98;
            assertThat(WhiteShift.of(green, D65).duv()).isBetween(0.001, 0.01);
            assertThat(WhiteShift.of(magenta, D65).duv()).isBetween(-0.01, -0.001);
        }
    }

    /**
     * ANSI C78.377 and CIE 1960: duv is the distance to the locus in u, v. A point that was moved along the normal by a
     * distance is that far.
     */
    @Test
    void theDistanceIsThatOfTheUniformScale() {
        double u = 4 * D65.x() / (-2 * D65.x() + 12 * D65.y() + 3);
        double v = 6 * D65.y() / (-2 * D65.x() + 12 * D65.y() + 3);
        double su = u - 0.003;
        double sv = v + 0.004;
        double divisor = 2 * su - 8 * sv + 4;
        WhiteShift shift = WhiteShift.of(xyz(new Chromaticity(3 * su / divisor, 2 * sv / divisor), 0.5), D65);
        WhiteShift step = WhiteShift.of(xyz(LightColour.daylight(1e6 / (1e6 / 6504 + 1)), 0.5), D65);
        double alongLocus = shift.mired() / step.mired();
        Chromaticity one = LightColour.daylight(1e6 / (1e6 / 6504 + 1));
        double du = 4 * one.x() / (-2 * one.x() + 12 * one.y() + 3) - u;
        double dv = 6 * one.y() / (-2 * one.x() + 12 * one.y() + 3) - v;
        // Pythagoras: both shares together are the five thousandths that it was moved.
        assertThat(Math.hypot(alongLocus * Math.hypot(du, dv), shift.duv())).isCloseTo(0.005, within(5e-5));
    }

    @Test
    void aPatchWithoutLightHasNoColour() {
        assertThatThrownBy(() -> WhiteShift.of(new double[] {0, 0, 0}, D65))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("without light");
    }
}
