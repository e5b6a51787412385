package akin.model.timing;

import org.apache.commons.numbers.fraction.BigFraction;

/** How fast two recordings slip against each other: through different frame rates, or through clocks that drift. */
public final class FrameDrift {
    private static final double SECONDS_PER_HOUR = 3600;

    private FrameDrift() {}

    /**
     * Time until two frame rates are one frame apart.
     *
     * <p>1 / |a − b|. Arithmetic. Check value: 24 and 24000/1001 → 41.708 s.
     *
     * @param rateA one frame rate in frames per second, above 0
     * @param rateB the other frame rate in frames per second, above 0
     * @return seconds; {@link Double#POSITIVE_INFINITY} when the rates are equal
     * @throws IllegalArgumentException if a rate is 0 or below
     */
    public static double secondsPerFrameSlip(BigFraction rateA, BigFraction rateB) {
        BigFraction difference = difference(rateA, rateB);
        return difference.signum() == 0
                ? Double.POSITIVE_INFINITY
                : difference.reciprocal().doubleValue();
    }

    /**
     * Frames that two frame rates are apart after an hour of shooting.
     *
     * <p>3600 |a − b|. Arithmetic. Check value: 24 and 24000/1001 → 86.3137 frames.
     *
     * @param rateA one frame rate in frames per second, above 0
     * @param rateB the other frame rate in frames per second, above 0
     * @return frames in one hour, 0 or above
     * @throws IllegalArgumentException if a rate is 0 or below
     */
    public static double framesPerHour(BigFraction rateA, BigFraction rateB) {
        return difference(rateA, rateB).multiply((int) SECONDS_PER_HOUR).doubleValue();
    }

    /**
     * Seconds that two frame rates are apart after an hour of shooting, counted at the faster of them.
     *
     * <p>3600 |a − b| / max(a, b). Arithmetic. Check value: 24 and 24000/1001 → 3.5964 s.
     *
     * @param rateA one frame rate in frames per second, above 0
     * @param rateB the other frame rate in frames per second, above 0
     * @return seconds in one hour, 0 or above
     * @throws IllegalArgumentException if a rate is 0 or below
     */
    public static double secondsPerHour(BigFraction rateA, BigFraction rateB) {
        BigFraction faster = rateA.compareTo(rateB) >= 0 ? rateA : rateB;
        return difference(rateA, rateB)
                .multiply((int) SECONDS_PER_HOUR)
                .divide(faster)
                .doubleValue();
    }

    /**
     * The most that two clocks can be apart when each is only known to be within so many parts per million.
     *
     * <p>a + b: one fast, the other slow. Arithmetic. Check value: 1 ppm and 2.5 ppm → 3.5 ppm.
     *
     * @param ppmA how far clock A may be off, in parts per million, 0 or above
     * @param ppmB how far clock B may be off, in parts per million, 0 or above
     * @return parts per million, 0 or above
     * @throws IllegalArgumentException if an argument is negative, infinite or not a number
     */
    public static double worstPpm(double ppmA, double ppmB) {
        return Require.notNegative("accuracy of clock A", ppmA, "ppm")
                + Require.notNegative("accuracy of clock B", ppmB, "ppm");
    }

    /**
     * Frames that two clocks drift apart in a time.
     *
     * <p>ppm · 10⁻⁶ · 3600 · hours · fps. Arithmetic. Check value: 1 ppm, 24 h, 24 → 2.0736 frames.
     *
     * @param ppm how far the clocks are apart, in parts per million, 0 or above
     * @param hours time since the clocks were last set to each other, in hours, 0 or above
     * @param framesPerSecond frame rate in frames per second, above 0
     * @return frames, 0 or above
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public static double frames(double ppm, double hours, double framesPerSecond) {
        Require.notNegative("drift", ppm, "ppm");
        Require.notNegative("time", hours, "h");
        Require.positive("frame rate", framesPerSecond, "frames per second");
        return ppm * 1e-6 * SECONDS_PER_HOUR * hours * framesPerSecond;
    }

    /**
     * Time after which two clocks have drifted so many frames apart: the time to the next jam sync.
     *
     * <p>frames / (ppm · 10⁻⁶ · 3600 · fps), the inverse of {@link #frames}. Arithmetic. Check value: half a frame,
     * 1 ppm, 24 → 5.787 h.
     *
     * @param frames tolerated drift in frames, above 0
     * @param ppm how far the clocks are apart, in parts per million, 0 or above
     * @param framesPerSecond frame rate in frames per second, above 0
     * @return hours; {@link Double#POSITIVE_INFINITY} when the clocks do not drift
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public static double hoursUntil(double frames, double ppm, double framesPerSecond) {
        Require.positive("tolerated drift", frames, "frames");
        return frames / frames(ppm, 1, framesPerSecond);
    }

    private static BigFraction difference(BigFraction rateA, BigFraction rateB) {
        Require.positive("frame rate A", rateA, "frames per second");
        Require.positive("frame rate B", rateB, "frames per second");
        return rateA.subtract(rateB).abs();
    }
}
