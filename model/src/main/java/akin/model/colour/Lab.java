package akin.model.colour;

/** A colour in CIE 1976 L*a*b*: lightness 0 to 100, and two opponent axes. Source of the formulas: ISO/CIE 11664-4. */
public record Lab(double l, double a, double b) {

    /** Below this share of white, lightness is straight: (6/29)^3. */
    private static final double DARK = 216.0 / 24389;

    private static final double SLOPE = 841.0 / 108;
    private static final double FOOT = 4.0 / 29;

    public Lab {
        if (!Double.isFinite(l) || !Double.isFinite(a) || !Double.isFinite(b)) {
            throw new IllegalArgumentException("L*, a* and b* must be finite, was " + l + ", " + a + ", " + b);
        }
    }

    /** The colour of an XYZ under a white; both on one scale. Values under 0, of noise, go on straight. */
    public static Lab of(double[] xyz, double[] white) {
        double x = root(xyz[0] / white[0]);
        double y = root(xyz[1] / white[1]);
        double z = root(xyz[2] / white[2]);
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    /** The XYZ of this colour under a white, on the scale of that white. */
    public double[] toXyz(double[] white) {
        double y = (l + 16) / 116;
        return new double[] {
            white[0] * power(y + a / 500), white[1] * power(y), white[2] * power(y - b / 200),
        };
    }

    private static double root(double share) {
        return share > DARK ? Math.cbrt(share) : SLOPE * share + FOOT;
    }

    private static double power(double root) {
        double cube = root * root * root;
        return cube > DARK ? cube : (root - FOOT) / SLOPE;
    }
}
