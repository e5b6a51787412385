package akin.model.colour;

/**
 * How far a neutral is off white: along the daylight locus, as lights of another colour temperature lie, and across it.
 *
 * <p>Source of the coordinates: CIE 1960 uniform chromaticity scale, in which correlated colour temperature is defined (CIE
 * 15). The direction of the locus is taken at white; within some 40 mired the locus is as good as straight.
 *
 * @param mired towards amber where positive, towards blue where negative
 * @param duv towards green where positive, towards magenta where negative
 */
public record WhiteShift(double mired, double duv) {

    private static final double STEP = 5;
    private static final double MIRED = 1e6;

    /**
     * The shift of a neutral.
     *
     * @param xyz the colour it was recorded in; any brightness over 0
     * @param white the white it should have been
     * @throws IllegalArgumentException when the colour has no brightness, or white is none of daylight from 5000 K to 10000 K
     */
    public static WhiteShift of(double[] xyz, Chromaticity white) {
        double sum = xyz[0] + xyz[1] + xyz[2];
        if (!(sum > 0 && xyz[1] > 0)) {
            throw new IllegalArgumentException("a patch without light has no colour");
        }
        double[] is = uv(new Chromaticity(xyz[0] / sum, xyz[1] / sum));
        double[] should = uv(white);
        double at = MIRED / LightColour.correlated(white);
        double[] cooler = uv(LightColour.daylight(MIRED / (at - STEP)));
        double[] warmer = uv(LightColour.daylight(MIRED / (at + STEP)));
        double alongU = (warmer[0] - cooler[0]) / (2 * STEP);
        double alongV = (warmer[1] - cooler[1]) / (2 * STEP);
        double length = Math.hypot(alongU, alongV);
        double u = is[0] - should[0];
        double v = is[1] - should[1];
        // Across the locus: at a right angle to it, upwards in v, which is where green lies.
        return new WhiteShift((u * alongU + v * alongV) / (length * length), (v * alongU - u * alongV) / length);
    }

    /** The shift from another to this one. */
    public WhiteShift from(WhiteShift other) {
        return new WhiteShift(mired - other.mired, duv - other.duv);
    }

    private static double[] uv(Chromaticity c) {
        double divisor = -2 * c.x() + 12 * c.y() + 3;
        return new double[] {4 * c.x() / divisor, 6 * c.y() / divisor};
    }
}
