package akin.model.timing;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Displays and light-emitting walls in the picture: an exposure that holds a whole number of refreshes shows no bar.
 *
 * <p>Common practice, no published source. A wall that scans its rows in groups may show bands even so; a test of the
 * very wall at the very settings is the proof.
 */
public final class ScreenRefresh {
    private ScreenRefresh() {}

    /**
     * Exposure time of a number of whole refreshes.
     *
     * <p>n / refresh. Check value: 1 refresh at 60 Hz → 1/60 s.
     *
     * @param refreshes number of refreshes, 1 or above
     * @param refreshHz refresh rate in Hz, above 0
     * @return exposure time in seconds
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static BigFraction exposureSeconds(int refreshes, BigFraction refreshHz) {
        if (refreshes < 1) {
            throw new IllegalArgumentException("number of refreshes must be 1 or above, was " + refreshes);
        }
        return BigFraction.of(refreshes).divide(Require.positive("refresh rate", refreshHz, "Hz"));
    }

    /**
     * Refreshes in one exposure, as a number that need not be whole.
     *
     * <p>t · refresh. Check value: 1/48 s at 60 Hz → 1.25.
     *
     * @param exposureSeconds exposure time in seconds, above 0
     * @param refreshHz refresh rate in Hz, above 0
     * @return number of refreshes, above 0
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static double refreshes(BigFraction exposureSeconds, BigFraction refreshHz) {
        return exact(exposureSeconds, refreshHz).doubleValue();
    }

    /**
     * Whether an exposure holds a whole number of refreshes, one at least: exactly.
     *
     * <p>Check value: 1/50 s is clean at 50 Hz and at 100 Hz, not at 60 Hz.
     *
     * @param exposureSeconds exposure time in seconds, above 0
     * @param refreshHz refresh rate in Hz, above 0
     * @return true if no bar shows
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static boolean clean(BigFraction exposureSeconds, BigFraction refreshHz) {
        return Whole.is(exact(exposureSeconds, refreshHz));
    }

    /**
     * How far an exposure is from a whole number of refreshes, one at least: what part of the screen, in percent, is
     * shown once too often or too seldom. A rule holds it against a tolerance, since menus round.
     *
     * <p>100 |t · refresh − n| for the nearest whole n, n being 1 or above. Arithmetic. Check values: 1/60 s at 60 Hz →
     * 0; 1/60 s at 60000/1001 Hz → 0.0999 %; 1/48 s at 60 Hz → 25 %.
     *
     * @param exposureSeconds exposure time in seconds, above 0
     * @param refreshHz refresh rate in Hz, above 0
     * @return percent of one refresh, 0 to 50, or up to 100 for exposures shorter than half a refresh
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static double percentOff(BigFraction exposureSeconds, BigFraction refreshHz) {
        BigFraction held = exact(exposureSeconds, refreshHz);
        return held.subtract(Whole.nearestFromOne(held)).abs().multiply(100).doubleValue();
    }

    /**
     * The clean exposure time nearest to one that is wanted.
     *
     * <p>n / refresh with n the whole number nearest to t · refresh, 1 at least; half-way goes to the longer time.
     * Check value: 1/48 s at 60 Hz → 1/60 s.
     *
     * @param exposureSeconds wanted exposure time in seconds, above 0
     * @param refreshHz refresh rate in Hz, above 0
     * @return a clean exposure time in seconds
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static BigFraction nearestCleanTime(BigFraction exposureSeconds, BigFraction refreshHz) {
        return Whole.nearestFromOne(exact(exposureSeconds, refreshHz)).divide(refreshHz);
    }

    private static BigFraction exact(BigFraction exposureSeconds, BigFraction refreshHz) {
        Require.positive("exposure time", exposureSeconds, "s");
        return exposureSeconds.multiply(Require.positive("refresh rate", refreshHz, "Hz"));
    }
}
