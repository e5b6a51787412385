package akin.model.optics;

/**
 * Enlarging a picture in post so that a view that came out too wide fits the hero's.
 *
 * @param percent enlargement in percent, 0 or above; 20 means that 1 / 1.2 of each side is used
 */
public record PunchIn(double percent) {

    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the enlargement is negative, infinite or not a number
     */
    public PunchIn {
        Require.notNegative("enlargement", percent, "%");
    }

    /**
     * The enlargement that cures a view that is too wide.
     *
     * <p>100 (width / wanted − 1), widths being those of the scene at the subject ({@link FieldOfView#widthAt}), or
     * anything in proportion to them. Arithmetic. Check value: 1440 mm where 1200 mm is wanted → 20 %.
     *
     * @param width width of the scene that the picture spans, above 0
     * @param wanted width of the scene that it should span, in the same unit, above 0 and at most {@code width}
     * @return the enlargement
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number, or if the view is too
     *     narrow: no enlargement widens a picture
     */
    public static PunchIn curing(double width, double wanted) {
        Require.positive("width", width, "");
        Require.positive("wanted width", wanted, "");
        if (width < wanted) {
            throw new IllegalArgumentException(
                    "a view of " + width + " is narrower than the wanted " + wanted + "; enlarging cannot widen it");
        }
        return new PunchIn(100 * (width / wanted - 1));
    }

    /**
     * Recorded pixels that are left of one side.
     *
     * <p>pixels / (1 + percent / 100). Arithmetic. Check value: 3840 enlarged by 20 % → 3200.
     *
     * @param pixels pixels along the side, 1 or above
     * @return pixels, not rounded
     * @throws IllegalArgumentException if the number is below 1
     */
    public double pixelsLeft(int pixels) {
        return Require.positive("number of pixels", pixels, "") / (1 + percent / 100);
    }
}
