package akin.model.timing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Timecode as numbers: which label the n-th frame after midnight bears, and back.
 *
 * <p>Labels count hours, minutes, seconds and frames at the nominal rate (30 for 30000/1001). Drop-frame counting
 * leaves out the first two labels of each minute except every tenth at 30000/1001, and the first four at 60000/1001, so
 * that labels keep pace with the clock to 86.4 ms a day. No frame is lost by it. Non-drop labels end in {@code :FF},
 * drop-frame labels in {@code ;FF}.
 *
 * <p>Source of the rule: SMPTE ST 12-1, as stated in dilettantesdictionary.org ("drop-frame"); labels checked against
 * an independent implementation, smpte-timecode 1.3.6.
 */
public final class Timecode {
    private static final int HIGHEST_NOMINAL_RATE = 60;
    private static final int HOURS_PER_DAY = 24;
    private static final BigFraction SLOWED = BigFraction.of(1000, 1001);
    private static final Pattern LABEL = Pattern.compile("(\\d{2}):(\\d{2}):(\\d{2})([:;])(\\d{2})");

    private Timecode() {}

    /**
     * Label of the n-th frame after midnight.
     *
     * <p>Drop-frame counting adds the labels left out before the frame, then counts as non-drop does. Check values:
     * 1800 at 30000/1001 drop-frame → {@code 00:01:00;02}; 107892 non-drop → {@code 00:59:56:12}.
     *
     * @param frameNumber frames since label 00:00:00:00, 0 or above; labels start again after {@link #framesPerDay}
     * @param rate frame rate in frames per second: a whole number up to 60, or such a number times 1000/1001
     * @param dropFrame whether labels are dropped; only at 30000/1001 and 60000/1001
     * @return the label
     * @throws IllegalArgumentException if the rate has no timecode, cannot be counted drop-frame, or the frame number
     *     is negative
     */
    public static String label(long frameNumber, BigFraction rate, boolean dropFrame) {
        int nominal = nominalRate(rate);
        if (frameNumber < 0) {
            throw new IllegalArgumentException("frame number must be 0 or above, was " + frameNumber);
        }
        long ofDay = frameNumber % framesPerDay(rate, dropFrame);
        long count = ofDay;
        if (dropFrame) {
            int dropped = droppedPerMinute(nominal);
            long perTenMinutes = framesPerTenMinutes(nominal);
            long tens = ofDay / perTenMinutes;
            long within = ofDay % perTenMinutes;
            long firstMinute = nominal * 60L;
            long minutesWithDrop = within < firstMinute ? 0 : 1 + (within - firstMinute) / (firstMinute - dropped);
            count += dropped * (9 * tens + minutesWithDrop);
        }
        long seconds = count / nominal;
        return two(seconds / 3600)
                + ":" + two(seconds / 60 % 60)
                + ":" + two(seconds % 60)
                + (dropFrame ? ";" : ":") + two(count % nominal);
    }

    /**
     * Number of the frame that bears a label: the inverse of {@link #label}.
     *
     * <p>Check value: {@code 00:10:00;00} at 30000/1001 → 17982.
     *
     * @param label {@code HH:MM:SS:FF} counted non-drop, {@code HH:MM:SS;FF} counted drop-frame
     * @param rate frame rate in frames per second: a whole number up to 60, or such a number times 1000/1001
     * @return frames since label 00:00:00:00
     * @throws IllegalArgumentException if the label is not one that this rate and counting give
     */
    public static long frameNumber(String label, BigFraction rate) {
        int nominal = nominalRate(rate);
        Matcher parts = LABEL.matcher(label);
        if (!parts.matches()) {
            throw new IllegalArgumentException(
                    "timecode must read HH:MM:SS:FF, or HH:MM:SS;FF for drop-frame, was " + label);
        }
        boolean dropFrame = parts.group(4).equals(";");
        if (dropFrame) {
            requireDropFrame(rate, nominal);
        }
        long hours = part(label, parts.group(1), "hours", HOURS_PER_DAY);
        long minutes = part(label, parts.group(2), "minutes", 60);
        long seconds = part(label, parts.group(3), "seconds", 60);
        long frames = part(label, parts.group(5), "frames", nominal);
        long totalMinutes = hours * 60 + minutes;
        long count = (totalMinutes * 60 + seconds) * nominal + frames;
        if (!dropFrame) {
            return count;
        }
        int dropped = droppedPerMinute(nominal);
        if (minutes % 10 != 0 && seconds == 0 && frames < dropped) {
            throw new IllegalArgumentException(
                    "timecode " + label + " is one that drop-frame counting leaves out; the next is "
                            + label.substring(0, 9) + two(dropped));
        }
        return count - dropped * (totalMinutes - totalMinutes / 10);
    }

    /**
     * Frames between midnight labels.
     *
     * <p>86400 nominal frames, less the labels left out. Check values: 30000/1001 drop-frame → 2 589 408; non-drop
     * → 2 592 000.
     *
     * @param rate frame rate in frames per second: a whole number up to 60, or such a number times 1000/1001
     * @param dropFrame whether labels are dropped; only at 30000/1001 and 60000/1001
     * @return number of labels in a day
     * @throws IllegalArgumentException if the rate has no timecode or cannot be counted drop-frame
     */
    public static long framesPerDay(BigFraction rate, boolean dropFrame) {
        int nominal = nominalRate(rate);
        if (!dropFrame) {
            return nominal * 3600L * HOURS_PER_DAY;
        }
        requireDropFrame(rate, nominal);
        return framesPerTenMinutes(nominal) * 6 * HOURS_PER_DAY;
    }

    /**
     * Whether a rate can be counted drop-frame.
     *
     * @param rate frame rate in frames per second
     * @return true for 30000/1001 and 60000/1001
     */
    public static boolean canDropFrame(BigFraction rate) {
        return rate.equals(SLOWED.multiply(30)) || rate.equals(SLOWED.multiply(60));
    }

    /**
     * How far labels run behind the clock after an hour of shooting.
     *
     * <p>3600 s less the time that the labels show after 3600 s: 3600 (1 − rate / nominal) counted non-drop, less what
     * dropped labels make good. Arithmetic. Check values: 30000/1001 non-drop → 3.5964 s; drop-frame → −0.0036 s.
     *
     * @param rate frame rate in frames per second: a whole number up to 60, or such a number times 1000/1001
     * @param dropFrame whether labels are dropped; only at 30000/1001 and 60000/1001
     * @return seconds in an hour; negative where labels run ahead of the clock
     * @throws IllegalArgumentException if the rate has no timecode or cannot be counted drop-frame
     */
    public static double secondsBehindPerHour(BigFraction rate, boolean dropFrame) {
        // a day of labels lasts framesPerDay / rate seconds; labels show 86400
        BigFraction dayOfLabels = BigFraction.of(framesPerDay(rate, dropFrame)).divide(rate);
        BigFraction shown = BigFraction.of(3600L * HOURS_PER_DAY).divide(dayOfLabels);
        return BigFraction.ONE.subtract(shown).multiply(3600).doubleValue();
    }

    private static int nominalRate(BigFraction rate) {
        Require.positive("frame rate", rate, "frames per second");
        BigFraction whole = Whole.is(rate) ? rate : rate.divide(SLOWED);
        if (!Whole.is(whole) || whole.compareTo(BigFraction.of(HIGHEST_NOMINAL_RATE)) > 0) {
            throw new IllegalArgumentException("timecode counts whole rates up to " + HIGHEST_NOMINAL_RATE
                    + " frames per second, or those times 1000/1001; was " + rate);
        }
        return whole.intValue();
    }

    private static void requireDropFrame(BigFraction rate, int nominal) {
        if (!canDropFrame(rate)) {
            throw new IllegalArgumentException(
                    "drop-frame counting exists at 30000/1001 and 60000/1001 frames per second only, was " + rate
                            + " (nominal " + nominal + ")");
        }
    }

    private static int droppedPerMinute(int nominal) {
        return nominal / 15;
    }

    private static long framesPerTenMinutes(int nominal) {
        return nominal * 600L - 9L * droppedPerMinute(nominal);
    }

    private static long part(String label, String digits, String name, int limit) {
        int value = Integer.parseInt(digits);
        if (value >= limit) {
            throw new IllegalArgumentException(
                    name + " of timecode " + label + " must be from 0 to " + (limit - 1) + ", was " + value);
        }
        return value;
    }

    private static String two(long value) {
        return value < 10 ? "0" + value : Long.toString(value);
    }
}
