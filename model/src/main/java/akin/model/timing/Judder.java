package akin.model.timing;

/**
 * How fast a camera may pan before the picture visibly jumps from frame to frame.
 *
 * <p>The guideline, seven seconds for an object to cross the picture at 24 frames per second, is common practice with
 * no published source. Scaling it to other rates keeps the step from one frame to the next, in parts of the picture
 * width, the same; that scaling is ours.
 */
public final class Judder {
    /** Seconds an object should take to cross the picture at 24 frames per second: common practice, no source. */
    public static final double GUIDELINE_SECONDS_AT_24 = 7;

    private static final double GUIDELINE_RATE = 24;

    private Judder() {}

    /**
     * Time that an object takes to cross the picture in a steady pan.
     *
     * <p>hFOV / speed. Arithmetic. Check value: 40° at 10 °/s → 4 s.
     *
     * @param horizontalViewDegrees horizontal angle of view in degrees, above 0
     * @param degreesPerSecond speed of the pan in degrees per second, above 0
     * @return seconds
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double secondsToCross(double horizontalViewDegrees, double degreesPerSecond) {
        return Require.positive("horizontal view", horizontalViewDegrees, "degrees")
                / Require.positive("speed of the pan", degreesPerSecond, "degrees per second");
    }

    /**
     * Time that an object should take to cross the picture, at the least.
     *
     * <p>7 · 24 / fps. Common practice at 24, no published source; see the class comment for other rates. Check value:
     * 48 → 3.5 s.
     *
     * @param framesPerSecond frame rate of projection in frames per second, above 0
     * @return seconds
     * @throws IllegalArgumentException if the rate is 0 or below, infinite or not a number
     */
    public static double guidelineSeconds(double framesPerSecond) {
        return guidelineSeconds(GUIDELINE_SECONDS_AT_24, framesPerSecond);
    }

    /**
     * Time that an object should take to cross the picture, at the least, for a guideline of one's own.
     *
     * <p>s · 24 / fps. Check value: 5 s and 48 → 2.5 s.
     *
     * @param secondsAt24 the guideline in seconds at 24 frames per second, above 0
     * @param framesPerSecond frame rate of projection in frames per second, above 0
     * @return seconds
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double guidelineSeconds(double secondsAt24, double framesPerSecond) {
        Require.positive("frame rate", framesPerSecond, "frames per second");
        return Require.positive("guideline", secondsAt24, "seconds") * GUIDELINE_RATE / framesPerSecond;
    }

    /**
     * The fastest pan that keeps to the guideline.
     *
     * <p>hFOV / {@link #guidelineSeconds}. Check value: 42°, 24 → 6 °/s.
     *
     * @param horizontalViewDegrees horizontal angle of view in degrees, above 0
     * @param framesPerSecond frame rate of projection in frames per second, above 0
     * @return degrees per second
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double fastestPan(double horizontalViewDegrees, double framesPerSecond) {
        return Require.positive("horizontal view", horizontalViewDegrees, "degrees")
                / guidelineSeconds(framesPerSecond);
    }

    /**
     * How far an object jumps from one frame to the next in a steady pan, in percent of the picture width.
     *
     * <p>100 speed / (hFOV fps). Arithmetic. Check value: the guideline itself, 42° at 6 °/s and 24 → 0.595 %.
     *
     * @param horizontalViewDegrees horizontal angle of view in degrees, above 0
     * @param degreesPerSecond speed of the pan in degrees per second, above 0
     * @param framesPerSecond frame rate of projection in frames per second, above 0
     * @return percent of the picture width
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double percentPerFrame(
            double horizontalViewDegrees, double degreesPerSecond, double framesPerSecond) {
        Require.positive("frame rate", framesPerSecond, "frames per second");
        return 100 / (secondsToCross(horizontalViewDegrees, degreesPerSecond) * framesPerSecond);
    }
}
