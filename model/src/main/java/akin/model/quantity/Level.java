package akin.model.quantity;

import java.math.BigDecimal;

/**
 * A level of a video signal.
 *
 * <p>FULL counts from code 0 to the highest code. LEGAL counts from nominal black to nominal white, codes 64 to 940 of 1023
 * at 10 bits (ITU-R BT.709, table of digital representation), as waveform monitors show it in per cent or IRE; it may go
 * below 0 and above 1 as far as the codes reach: -0.0731 to 1.0947.
 *
 * <p>The two convert by the 10-bit codes: legal = (1023 full - 64) / 876. At other depths the highest code is not an exact
 * multiple, so the same level may differ by less than one code.
 *
 * @param share 0 to 1 of the full range, or of the legal range
 * @param range which range the share is of
 */
public record Level(double share, Range range) {
    /** What a share of one stands for. */
    public enum Range {
        /** The highest code. */
        FULL,
        /** Nominal white. */
        LEGAL
    }

    /** How a level may be written; per cent without a word means the legal range. */
    public static final String ALLOWED =
            "per cent or IRE as on a waveform monitor (41 %, 41 IRE), per cent of all codes"
                    + " (41 % full) or a code (code 420 of 1023)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(?:(" + Notation.SIGNED + ")" + Notation.GAP + "(?:(%" + Notation.SPACE
            + "full)|%|IRE)|code" + Notation.SPACE + "([0-9]{1,5})" + Notation.SPACE + "of" + Notation.SPACE
            + "([0-9]{3,5}))$";

    private static final double BLACK = 64;
    private static final double SPAN = 876;
    private static final double TOP = 1023;
    private static final Notation NOTATION = new Notation(
                    "signal level", ALLOWED, PATTERN, "from -7.3 % to 109.47 %, or from 0 % to 100 % of all codes")
            .bare("write $1 % or $1 % full")
            .hint("code *([0-9]+)", "write code $1 of 1023 for a 10-bit code");

    public Level {
        NOTATION.check(share >= lowest(range) && share <= highest(range), 100 * share);
        share += 0.0;
    }

    private static double lowest(Range range) {
        return range == Range.FULL ? 0 : -BLACK / SPAN;
    }

    private static double highest(Range range) {
        return range == Range.FULL ? 1 : (TOP - BLACK) / SPAN;
    }

    /** The level nearest to a share that a signal can carry. */
    public static Level clipped(double share, Range range) {
        return new Level(Math.max(lowest(range), Math.min(highest(range), share)), range);
    }

    /**
     * Reads {@code 41 %} and {@code 41 IRE} (legal), {@code 41 % full}, {@code code 420 of 1023} (full; the last number is
     * the highest code: 255, 1023, 4095, 16383 or 65535).
     *
     * @throws QuantityException if the text is none of these
     */
    public static Level parse(String text) {
        return NOTATION.read(text, m -> {
            if (m.group(1) != null) {
                double share = new BigDecimal(m.group(1)).movePointLeft(2).doubleValue();
                return new Level(share, m.group(2) == null ? Range.LEGAL : Range.FULL);
            }
            int code = Integer.parseInt(m.group(3));
            int top = Integer.parseInt(m.group(4));
            boolean wholeBits = top == 255 || top == 1023 || top == 4095 || top == 16383 || top == 65535;
            if (!wholeBits || code > top) {
                throw NOTATION.wrong(
                        text, "the highest code is 255, 1023, 4095, 16383 or 65535, and the code is at most that");
            }
            return new Level((double) code / top, Range.FULL);
        });
    }

    /** The same level as a share of the legal range. */
    public Level toLegal() {
        return range == Range.LEGAL ? this : clipped((TOP * share - BLACK) / SPAN, Range.LEGAL);
    }

    /** The same level as a share of all codes. */
    public Level toFull() {
        return range == Range.FULL ? this : clipped((BLACK + SPAN * share) / TOP, Range.FULL);
    }

    /**
     * The nearest code, from 0 to 2^bits - 1. A legal level is placed by black and white at that depth, 64 and 940 times
     * 2^(bits - 10).
     *
     * @param bits 8 to 16
     * @throws IllegalArgumentException if the depth is not 8 to 16 bits
     */
    public int code(int bits) {
        if (bits < 8 || bits > 16) {
            throw new IllegalArgumentException("a code has from 8 to 16 bits, not " + bits);
        }
        int top = (1 << bits) - 1;
        double code = range == Range.FULL ? share * top : (BLACK + SPAN * share) * (1 << bits) / 1024;
        return (int) Math.max(0, Math.min(top, Math.round(code)));
    }

    /** "41 %" of the legal range, "41 % full", or "code 420 of 1023" where that is exact and no short per cent is. */
    @Override
    public String toString() {
        String percent = Notation.plain(share, -2) + " %";
        if (range == Range.LEGAL) {
            return percent;
        }
        int code = code(10);
        return percent.length() > 8 && code / TOP == share ? "code " + code + " of 1023" : percent + " full";
    }
}
