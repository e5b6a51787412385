package akin.model.optics;

/** How a read-out that goes row by row bends what moves sideways. */
public final class RollingShutter {
    private RollingShutter() {}

    /**
     * How far the last row of the picture lags behind the first in a steady pan.
     *
     * <p>speed · read-out / hFOV · width: the share of the picture that passes while it is read. This is the mean over
     * the width; a rectilinear lens shows somewhat less in the middle of a wide view and more at its edges. Arithmetic.
     * Check value: 40 °/s, 16 ms, 40°, 3840 → 61.44 pixels.
     *
     * @param degreesPerSecond speed of the pan in degrees per second, 0 or above
     * @param readoutMs read-out time from the first to the last row of the picture in ms, 0 or above
     * @param horizontalViewDegrees horizontal angle of view in degrees, above 0
     * @param widthPixels width of the picture in pixels, 1 or above
     * @return skew in pixels, 0 or above
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public static double skewPixels(
            double degreesPerSecond, double readoutMs, double horizontalViewDegrees, int widthPixels) {
        double turned = Require.notNegative("speed of the pan", degreesPerSecond, "degrees per second")
                * Require.notNegative("read-out time", readoutMs, "ms")
                / 1000;
        return turned
                / Require.positive("horizontal view", horizontalViewDegrees, "degrees")
                * Require.positive("width of the picture", widthPixels, "pixels");
    }

    /**
     * How far an upright edge leans through a skew.
     *
     * <p>atan(skew / height). Geometry. Check value: 61.44 pixels over 2160 → 1.629°.
     *
     * @param skewPixels skew from the first to the last row in pixels, 0 or above
     * @param heightPixels height of the picture in pixels, 1 or above
     * @return lean in degrees, 0 or above and below 90
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public static double leanDegrees(double skewPixels, int heightPixels) {
        Require.notNegative("skew", skewPixels, "pixels");
        return Math.toDegrees(
                Math.atan(skewPixels / Require.positive("height of the picture", heightPixels, "pixels")));
    }
}
