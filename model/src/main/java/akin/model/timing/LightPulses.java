package akin.model.timing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Light that pulses: lamps that follow the mains, and dimmed light-emitting diodes.
 *
 * <p>A lamp on mains of frequency m gives two pulses a cycle. An exposure that holds a whole number of pulses collects
 * the same light wherever it starts, so neither frames nor rows of a rolling shutter differ.
 *
 * <p>Menus round. A menu's 172.8° on 24000/1001 frames per second is 20.02 ms, 2.002 half-periods of 50 Hz: not safe to
 * the letter, yet the ripple it leaves is 0.2 % of the light, which nobody sees. So {@link #safe} is exact, and
 * {@link #safeWithin} and {@link #bandingPercent} give a rule something to hold against a tolerance.
 */
public final class LightPulses {
    /** {@link #safeTimes} refuses to list more than this; a longer list is a slip in the caller's arguments. */
    private static final long MOST_TIMES = 100_000;

    private LightPulses() {}

    /**
     * How often a lamp pulses that follows the mains.
     *
     * <p>2 m. Source: common practice (light output follows the power, which peaks twice a cycle). Check value:
     * 50 Hz → 100.
     *
     * @param mainsHz mains frequency in Hz, above 0
     * @return pulses per second
     * @throws IllegalArgumentException if the frequency is 0 or below
     */
    public static BigFraction pulseHz(BigFraction mainsHz) {
        return Require.positive("mains frequency", mainsHz, "Hz").multiply(2);
    }

    /**
     * Pulses of a mains-fed lamp in one exposure, as a number that need not be whole.
     *
     * <p>2 m t. Arithmetic. Check value: 1/48 s, 50 Hz → 2.0833.
     *
     * @param exposureSeconds exposure time in seconds, above 0
     * @param mainsHz mains frequency in Hz, above 0
     * @return number of pulses, above 0
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static double pulses(BigFraction exposureSeconds, BigFraction mainsHz) {
        return exactPulses(exposureSeconds, mainsHz).doubleValue();
    }

    /**
     * Whether an exposure holds a whole number of pulses, one at least: exactly.
     *
     * <p>2 m t is whole and 1 or above. Source: "Flicker free equation" (tumgag.com, setlights). Check value: 1/50 s is
     * safe on 50 Hz and not on 60 Hz.
     *
     * @param exposureSeconds exposure time in seconds, above 0
     * @param mainsHz mains frequency in Hz, above 0
     * @return true if every exposure collects the same light wherever it starts
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static boolean safe(BigFraction exposureSeconds, BigFraction mainsHz) {
        return Whole.is(exactPulses(exposureSeconds, mainsHz));
    }

    /**
     * Whether an exposure holds a whole number of pulses to within a share of one pulse.
     *
     * <p>|2 m t − n| ≤ tolerance / 100 for the nearest whole n, n being 1 or above. Check value: 172.8° on 24000/1001
     * is 2.002 pulses of 50 Hz and passes at 0.5 % of a pulse; 180° on 24 is 2.083 and does not.
     *
     * @param exposureSeconds exposure time in seconds, above 0
     * @param mainsHz mains frequency in Hz, above 0
     * @param tolerancePercentOfPulse tolerance in percent of one pulse, 0 or above and below 50
     * @return true if the exposure is a whole number of pulses or near enough
     * @throws IllegalArgumentException if an argument is out of its range or not a number
     */
    public static boolean safeWithin(BigFraction exposureSeconds, BigFraction mainsHz, double tolerancePercentOfPulse) {
        Require.notNegative("tolerance", tolerancePercentOfPulse, "% of a pulse");
        if (tolerancePercentOfPulse >= 50) {
            throw new IllegalArgumentException(
                    "tolerance must be below 50 % of a pulse, where every exposure passes, was "
                            + tolerancePercentOfPulse);
        }
        BigFraction pulses = exactPulses(exposureSeconds, mainsHz);
        BigFraction off = pulses.subtract(Whole.nearestFromOne(pulses)).abs();
        return off.multiply(100).compareTo(BigFraction.from(tolerancePercentOfPulse)) <= 0;
    }

    /**
     * All safe exposure times up to a longest, shortest first.
     *
     * <p>n / (2 m) for n = 1, 2, 3 … Check value: 50 Hz up to 1/24 s → 1/100, 1/50, 3/100, 1/25 s.
     *
     * @param mainsHz mains frequency in Hz, above 0
     * @param longestSeconds longest time wanted in seconds, above 0; usually 1 / frame rate
     * @return times in seconds, ascending; empty if one pulse lasts longer than the longest time; not modifiable
     * @throws IllegalArgumentException if an argument is 0 or below, or if more than 100 000 times would be listed
     */
    public static List<BigFraction> safeTimes(BigFraction mainsHz, BigFraction longestSeconds) {
        BigFraction most = exactPulses(Require.positive("longest time", longestSeconds, "s"), mainsHz);
        if (most.compareTo(BigFraction.of(MOST_TIMES)) > 0) {
            throw new IllegalArgumentException("longest time must hold at most " + MOST_TIMES + " pulses, was "
                    + longestSeconds + " s at " + mainsHz + " Hz mains");
        }
        List<BigFraction> times = new ArrayList<>();
        BigFraction pulse = pulseHz(mainsHz).reciprocal();
        for (int n = 1; n <= most.intValue(); n++) {
            times.add(pulse.multiply(n));
        }
        return List.copyOf(times);
    }

    /**
     * The safe exposure time nearest to one that is wanted.
     *
     * <p>n / (2 m) with n the whole number nearest to 2 m t, 1 at least; half-way goes to the longer time. Check value:
     * 1/48 s, 50 Hz → 1/50 s.
     *
     * @param exposureSeconds wanted exposure time in seconds, above 0
     * @param mainsHz mains frequency in Hz, above 0
     * @return a safe exposure time in seconds
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static BigFraction nearestSafeTime(BigFraction exposureSeconds, BigFraction mainsHz) {
        BigFraction n = Whole.nearestFromOne(exactPulses(exposureSeconds, mainsHz));
        return n.divide(pulseHz(mainsHz));
    }

    /**
     * Shutter angle that holds a number of whole pulses.
     *
     * <p>360 fps n / (2 m). Source: "Flicker free equation" (tumgag.com, setlights), which prints 75 n degrees for
     * 25 fps on 60 Hz. Check values: 2, 24, 50 Hz → 172.8°; 2, 24000/1001, 60 Hz → 143.856°.
     *
     * @param n number of pulses, 1 or above
     * @param framesPerSecond frame rate in frames per second, above 0
     * @param mainsHz mains frequency in Hz, above 0
     * @return shutter angle in degrees; above 360 when so many pulses do not fit into a frame
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double safeAngle(int n, BigFraction framesPerSecond, BigFraction mainsHz) {
        if (n < 1) {
            throw new IllegalArgumentException("number of pulses must be 1 or above, was " + n);
        }
        return ExposureTiming.degrees(BigFraction.of(n).divide(pulseHz(mainsHz)), framesPerSecond);
    }

    /**
     * How frames meet the light: always in the same phase, or sliding along it.
     *
     * <p>k is the whole number nearest to 2 m / fps, half-way going up; the beat is |2 m − k fps|. Where it is 0 and k
     * is 1 or above, every frame collects the same light at any shutter, but rows of a rolling shutter still meet
     * different phases: bands then stand still rather than vanish. k is 0 where more than two frames fall on one pulse
     * (fps above 4 m): the pulses themselves are then seen.
     *
     * <p>Source: frame rates safe at any shutter, 120 / k under 60 Hz (cinematography.com, topic 13437); the beat is
     * the alias of a sampled periodic signal. Check values: 24, 60 Hz → k 5, beat 0; 24000/1001, 60 Hz → k 5, beat
     * 0.1199 Hz; 24, 50 Hz → k 4, beat 4 Hz.
     *
     * @param framesPerSecond frame rate in frames per second, above 0
     * @param mainsHz mains frequency in Hz, above 0
     * @return the phase relation
     * @throws IllegalArgumentException if an argument is 0 or below
     */
    public static Phase phase(BigFraction framesPerSecond, BigFraction mainsHz) {
        Require.positive("frame rate", framesPerSecond, "frames per second");
        BigFraction light = pulseHz(mainsHz);
        BigFraction nearest = Whole.nearest(light.divide(framesPerSecond));
        BigFraction beat = light.subtract(nearest.multiply(framesPerSecond)).abs();
        return new Phase(nearest.getNumerator(), beat);
    }

    /**
     * How much exposures differ under light that pulses as a raised cosine: peak to peak, in percent of the mean.
     *
     * <p>The light is L (1 + d cos 2πFτ) with F the pulses per second and d the modulation depth,
     * (max − min) / (max + min). Collected over a time t from any start, it is L t (1 + d sinc(F t) cos φ), where
     * sinc x = sin πx / πx and φ depends on the start. From the lowest to the highest that is 200 d |sinc(F t)|
     * percent. It is exactly 0 where F t is whole.
     *
     * <p>Source: derived as shown. Check value: 172.8° on 24000/1001 (20.02 ms) at 100 pulses a second, depth 1 →
     * 0.1998 %.
     *
     * @param exposureSeconds exposure time in seconds, above 0
     * @param pulseHz pulses per second, above 0; {@link #pulseHz(BigFraction)} for light on the mains
     * @param modulationDepth (max − min) / (max + min) of the light, 0 to 1; 1 goes dark between pulses
     * @return percent of the mean exposure, 0 to 200
     * @throws IllegalArgumentException if an argument is out of its range or not a number
     */
    public static double bandingPercent(BigFraction exposureSeconds, BigFraction pulseHz, double modulationDepth) {
        Require.share("modulation depth", modulationDepth);
        BigFraction pulses = pulsesAt(exposureSeconds, pulseHz);
        double rest = pulses.subtract(Whole.nearest(pulses)).doubleValue();
        // |sin| has period 1 in x = F t: reducing the argument first makes whole pulses give exactly 0
        double sine = Math.abs(Math.sin(Math.PI * rest));
        return 200 * modulationDepth * sine / (Math.PI * pulses.doubleValue());
    }

    /**
     * How much exposures differ under light that is switched on and off, as a dimmed light-emitting diode is: peak to
     * peak, in percent of the mean.
     *
     * <p>With F t = n + r pulses in the exposure (n whole, 0 ≤ r &lt; 1) and the light on for a share d of each, the
     * rest r collects from max(0, r + d − 1) to min(r, d) on-times, over a mean of d F t. So
     * 100 (min(r, d) − max(0, r + d − 1)) / (d F t).
     *
     * <p>Source: derived as shown. Check values: 1/48 s, 1000 pulses a second, half on → 20.83 pulses, 1.6 %; any whole
     * number of pulses → 0.
     *
     * @param exposureSeconds exposure time in seconds, above 0
     * @param pulseHz pulses per second, above 0
     * @param onShare share of the time that the light is on, above 0 and up to 1
     * @return percent of the mean exposure, 0 or above
     * @throws IllegalArgumentException if an argument is out of its range or not a number
     */
    public static double switchedBandingPercent(BigFraction exposureSeconds, BigFraction pulseHz, double onShare) {
        Require.share("share of on-time", Require.positive("share of on-time", onShare, "of the time"));
        BigFraction pulses = pulsesAt(exposureSeconds, pulseHz);
        double rest = pulses.subtract(Whole.below(pulses)).doubleValue();
        double swing = Math.min(rest, onShare) - Math.max(0, rest + onShare - 1);
        return 100 * Math.max(0, swing) / (onShare * pulses.doubleValue());
    }

    /**
     * The pulses a second from which light that is switched on and off changes exposures by no more than a share, however
     * they fall.
     *
     * <p>The swing is greatest, min(d, 1 − d) on-times, where r of {@link #switchedBandingPercent} lies between d and
     * 1 − d; so F = 100 min(d, 1 − d) / (d t p). Source: derived as shown. Check value: 1/48 s, half on, 1 % → 4800.
     *
     * @param exposureSeconds exposure time in seconds, above 0
     * @param onShare share of the time that the light is on, above 0 and up to 1
     * @param percent change allowed in percent of the mean, above 0
     * @return pulses per second, 0 or above
     * @throws IllegalArgumentException if an argument is out of its range or not a number
     */
    public static double pulseHzFor(BigFraction exposureSeconds, double onShare, double percent) {
        Require.share("share of on-time", Require.positive("share of on-time", onShare, "of the time"));
        Require.positive("change allowed", percent, "%");
        double seconds = Require.positive("exposure time", exposureSeconds, "s").doubleValue();
        return 100 * Math.min(onShare, 1 - onShare) / (onShare * seconds * percent);
    }

    /**
     * How frames meet pulsing light.
     *
     * @param pulsesPerFrame the whole number of pulses nearest to those in one frame interval, 0 or above
     * @param beat how often a second frames slide through a whole pulse, in Hz, exactly; 0 when they do not
     */
    public record Phase(BigInteger pulsesPerFrame, BigFraction beat) {

        /**
         * Whether every frame meets the light in the same phase, so that bands, where there are any, stand still.
         *
         * @return true if the frame rate is 2 m / k for a whole k
         */
        public boolean standsStill() {
            return beat.signum() == 0;
        }

        /**
         * How often a second the picture pulses or the bands roll through, when the exposure is not a safe one.
         *
         * @return beat frequency in Hz, 0 or above
         */
        public double beatHz() {
            return beat.doubleValue();
        }
    }

    private static BigFraction exactPulses(BigFraction exposureSeconds, BigFraction mainsHz) {
        return pulsesAt(exposureSeconds, pulseHz(mainsHz));
    }

    private static BigFraction pulsesAt(BigFraction exposureSeconds, BigFraction pulseHz) {
        Require.positive("exposure time", exposureSeconds, "s");
        return exposureSeconds.multiply(Require.positive("pulse frequency", pulseHz, "Hz"));
    }
}
