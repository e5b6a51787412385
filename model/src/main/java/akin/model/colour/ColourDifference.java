package akin.model.colour;

/** Differences between colours as the eye weighs them. */
public final class ColourDifference {
    /** Rounding slack for hue angles, in degrees: a hue difference of exactly 180 must not tip over by one bit. */
    private static final double HUE_SLACK = 1e-9;

    private static final double POW25_7 = Math.pow(25, 7);

    private ColourDifference() {}

    /**
     * CIEDE2000 with all weights 1.
     *
     * <p>Source: G. Sharma, W. Wu, E. N. Dalal, "The CIEDE2000 Color-Difference Formula: Implementation Notes,
     * Supplementary Test Data, and Mathematical Observations", Color Research and Application 30 (2005); ISO/CIE
     * 11664-6.
     *
     * @return 0 for equal colours; about 1 is just visible side by side
     */
    public static double ciede2000(Lab first, Lab second) {
        double meanChroma = (Math.hypot(first.a(), first.b()) + Math.hypot(second.a(), second.b())) / 2;
        double g = 0.5 * (1 - chromaWeight(meanChroma));
        double a1 = (1 + g) * first.a();
        double a2 = (1 + g) * second.a();
        double c1 = Math.hypot(a1, first.b());
        double c2 = Math.hypot(a2, second.b());
        double h1 = hue(a1, first.b());
        double h2 = hue(a2, second.b());

        double dh = 0;
        double meanHue = h1 + h2;
        if (c1 * c2 != 0) {
            dh = h2 - h1;
            boolean acrossZero = Math.abs(dh) > 180 + HUE_SLACK;
            if (acrossZero) {
                dh -= Math.copySign(360, dh);
                meanHue = h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
            } else {
                meanHue = (h1 + h2) / 2;
            }
        }
        double deltaL = second.l() - first.l();
        double deltaC = c2 - c1;
        double deltaH = 2 * Math.sqrt(c1 * c2) * sin(dh / 2);

        double meanL = (first.l() + second.l()) / 2;
        double meanC = (c1 + c2) / 2;
        double t = 1
                - 0.17 * cos(meanHue - 30)
                + 0.24 * cos(2 * meanHue)
                + 0.32 * cos(3 * meanHue + 6)
                - 0.20 * cos(4 * meanHue - 63);
        double lSquare = (meanL - 50) * (meanL - 50);
        double sl = 1 + 0.015 * lSquare / Math.sqrt(20 + lSquare);
        double sc = 1 + 0.045 * meanC;
        double sh = 1 + 0.015 * meanC * t;
        double rotation = 30 * Math.exp(-Math.pow((meanHue - 275) / 25, 2));
        double rt = -2 * chromaWeight(meanC) * sin(2 * rotation);

        double l = deltaL / sl;
        double c = deltaC / sc;
        double h = deltaH / sh;
        return Math.sqrt(Math.max(0, l * l + c * c + h * h + rt * c * h));
    }

    private static double chromaWeight(double chroma) {
        double c7 = Math.pow(chroma, 7);
        return Math.sqrt(c7 / (c7 + POW25_7));
    }

    /** Hue angle in degrees, 0 to 360; 0 for a neutral colour. */
    private static double hue(double a, double b) {
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
