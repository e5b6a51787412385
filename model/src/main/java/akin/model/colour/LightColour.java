package akin.model.colour;

/** Chromaticities of lights that are described by a colour temperature in kelvin, and back. */
public final class LightColour {
    private LightColour() {}

    /**
     * A phase of daylight.
     *
     * <p>Source: CIE 15, daylight locus, with kelvin on the present temperature scale (D65 is 6504 K).
     *
     * @param kelvin 4000 to 25000
     * @throws IllegalArgumentException outside that range
     */
    public static Chromaticity daylight(double kelvin) {
        require(kelvin, 4000, 25_000, "daylight");
        double t = 1000 / kelvin;
        double x = kelvin <= 7000
                ? ((-4.6070 * t + 2.9678) * t + 0.09911) * t + 0.244063
                : ((-2.0064 * t + 1.9018) * t + 0.24748) * t + 0.237040;
        return new Chromaticity(x, (-3.000 * x + 2.870) * x - 0.275);
    }

    /**
     * A black body, such as a tungsten lamp nearly is.
     *
     * <p>Source: B. Kang et al., "Design of Advanced Color Temperature Control System for HDTV Applications", Journal of
     * the Korean Physical Society 41 (2002); a fit that stays within 0.0005 of Planck's law from 1900 K to 10000 K.
     *
     * @param kelvin 1667 to 25000
     * @throws IllegalArgumentException outside that range
     */
    public static Chromaticity blackBody(double kelvin) {
        require(kelvin, 1667, 25_000, "a black body");
        double t = 1000 / kelvin;
        double x = kelvin <= 4000
                ? ((-0.2661239 * t - 0.2343589) * t + 0.8776956) * t + 0.179910
                : ((-3.0258469 * t + 2.1070379) * t + 0.2226347) * t + 0.240390;
        double y;
        if (kelvin <= 2222) {
            y = ((-1.1063814 * x - 1.34811020) * x + 2.18555832) * x - 0.20219683;
        } else if (kelvin <= 4000) {
            y = ((-0.9549476 * x - 1.37418593) * x + 2.09137015) * x - 0.16748867;
        } else {
            y = ((3.0817580 * x - 5.87338670) * x + 3.75112997) * x - 0.37001483;
        }
        return new Chromaticity(x, y);
    }

    /**
     * The correlated colour temperature in kelvin of a light near the daylight or black-body locus; meaningless for
     * saturated colours.
     *
     * <p>Source: C. S. McCamy, "Correlated color temperature as an explicit function of chromaticity coordinates", Color
     * Research and Application 17 (1992); within 2 K of the exact definition from 2850 K to 7500 K for the standard
     * illuminants.
     */
    public static double correlated(Chromaticity light) {
        double n = (light.x() - 0.3320) / (light.y() - 0.1858);
        return ((-449 * n + 3525) * n - 6823.3) * n + 5520.33;
    }

    private static void require(double kelvin, double lowest, double highest, String what) {
        if (!(kelvin >= lowest && kelvin <= highest)) {
            throw new IllegalArgumentException(
                    "the colour of " + what + " is known from " + lowest + " K to " + highest + " K, not at " + kelvin);
        }
    }
}
