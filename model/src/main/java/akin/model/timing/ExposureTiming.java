package akin.model.timing;

import org.apache.commons.numbers.fraction.BigFraction;

/** Exposure time of one frame from the shutter angle and back, and how far two exposure times are apart. */
public final class ExposureTiming {
    private static final BigFraction FULL_TURN = BigFraction.of(360);

    private ExposureTiming() {}

    /**
     * Exposure time of one frame, exactly.
     *
     * <p>t = angle / (360 fps), with the angle in degrees and fps in frames per second. An angle above 360 is accepted
     * and gives a time longer than the frame lasts; no camera can hold it, and saying so is the caller's work.
     *
     * <p>Source: common practice, definition of the shutter angle; exposures printed in "Effect of shutter angle"
     * (gregssandbox.com). Check value: 180°, 24 → 1/48 s.
     *
     * @param angleDegrees shutter angle in degrees, above 0
     * @param framesPerSecond frame rate in frames per second, above 0
     * @return exposure time in seconds
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static BigFraction seconds(BigFraction angleDegrees, BigFraction framesPerSecond) {
        Require.positive("shutter angle", angleDegrees, "degrees");
        Require.positive("frame rate", framesPerSecond, "frames per second");
        return angleDegrees.divide(FULL_TURN.multiply(framesPerSecond));
    }

    /**
     * Shutter angle of an exposure time, exactly.
     *
     * <p>angle = 360 fps t. The inverse of {@link #seconds}. Check value: 1/50 s, 24 → 172.8° (864/5).
     *
     * @param seconds exposure time in seconds, above 0
     * @param framesPerSecond frame rate in frames per second, above 0
     * @return shutter angle in degrees; above 360 when the exposure is longer than the frame
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static BigFraction exactDegrees(BigFraction seconds, BigFraction framesPerSecond) {
        Require.positive("exposure time", seconds, "s");
        Require.positive("frame rate", framesPerSecond, "frames per second");
        return FULL_TURN.multiply(framesPerSecond).multiply(seconds);
    }

    /**
     * Shutter angle of an exposure time, to the nearest double: {@link #exactDegrees} for showing.
     *
     * <p>Check value: 1/50 s at 24000/1001 → 172.627°.
     *
     * @param seconds exposure time in seconds, above 0
     * @param framesPerSecond frame rate in frames per second, above 0
     * @return shutter angle in degrees
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static double degrees(BigFraction seconds, BigFraction framesPerSecond) {
        return exactDegrees(seconds, framesPerSecond).doubleValue();
    }

    /**
     * How much longer the longer of two exposure times is, in percent of the shorter: the difference in motion blur.
     *
     * <p>100 (longer / shorter − 1); the order of the arguments does not matter. Arithmetic. Check value: 1/48 s and
     * 1/60 s → 25 %.
     *
     * @param secondsA one exposure time in seconds, above 0
     * @param secondsB the other exposure time in seconds, above 0
     * @return percent, 0 or above; 0 exactly when the times are equal
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static double percentApart(BigFraction secondsA, BigFraction secondsB) {
        Require.positive("exposure time A", secondsA, "s");
        Require.positive("exposure time B", secondsB, "s");
        boolean aIsLonger = secondsA.compareTo(secondsB) >= 0;
        BigFraction ratio = aIsLonger ? secondsA.divide(secondsB) : secondsB.divide(secondsA);
        return ratio.subtract(1).multiply(100).doubleValue();
    }
}
