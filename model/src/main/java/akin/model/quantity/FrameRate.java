package akin.model.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Frames per second as an exact fraction in lowest terms, from 1 to 2000.
 *
 * <p>The decimals people say for the rates of the 1000/1001 family ("23.976", "23.98", "29.97") stand for the fraction, never
 * for themselves: SMPTE ST 12-1 and ITU-R BT.709 define the rates as 24000/1001, 30000/1001 and 60000/1001.
 *
 * @param numerator frames, up to nine digits in lowest terms
 * @param denominator seconds, up to nine digits in lowest terms
 */
public record FrameRate(long numerator, long denominator) implements Comparable<FrameRate> {
    /** How a frame rate may be written. */
    public static final String ALLOWED =
            "a fraction (24000/1001), a whole number (25) or a well-known decimal (23.976)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN =
            "^(?:([0-9]{1,9})/([0-9]{1,9})|(" + Notation.NUMBER + "))(?:" + Notation.GAP + "[fF][pP][sS])?$";

    private static final Notation NOTATION =
            new Notation("frame rate", ALLOWED, PATTERN, "from 1 to 2000 frames per second");
    private static final long MOST_DIGITS = 999_999_999L;

    /** What is said for a rate, best first. */
    private record Spoken(FrameRate rate, List<String> names) {}

    // A holder of its own, so that its rates are made when the constants of FrameRate are all in place.
    private static final class WellKnown {
        static final List<Spoken> DECIMALS = List.of(
                new Spoken(of(15000, 1001), List.of("14.985")),
                new Spoken(of(24000, 1001), List.of("23.976", "23.98")),
                new Spoken(of(30000, 1001), List.of("29.97")),
                new Spoken(of(48000, 1001), List.of("47.95", "47.952")),
                new Spoken(of(60000, 1001), List.of("59.94")),
                new Spoken(of(72000, 1001), List.of("71.93", "71.928")),
                new Spoken(of(96000, 1001), List.of("95.9", "95.904")),
                new Spoken(of(120000, 1001), List.of("119.88")),
                new Spoken(of(240000, 1001), List.of("239.76")));
        static final List<Integer> WHOLE = List.of(15, 24, 25, 30, 48, 50, 60, 72, 96, 100, 120, 200, 240);
    }

    public FrameRate {
        NOTATION.check(
                numerator > 0 && denominator > 0, denominator == 0 ? Double.NaN : (double) numerator / denominator);
        long common = BigInteger.valueOf(numerator)
                .gcd(BigInteger.valueOf(denominator))
                .longValueExact();
        numerator /= common;
        denominator /= common;
        if (numerator > MOST_DIGITS || denominator > MOST_DIGITS) {
            throw NOTATION.wrong(numerator + "/" + denominator, "both parts must have at most nine digits");
        }
        boolean inRange = numerator >= denominator && numerator <= 2000 * denominator;
        NOTATION.check(inRange, (double) numerator / denominator);
    }

    /** The rate numerator/denominator, brought to lowest terms. */
    public static FrameRate of(long numerator, long denominator) {
        return new FrameRate(numerator, denominator);
    }

    /**
     * Reads {@code 24000/1001}, {@code 23.976}, {@code 25}, {@code 24 fps}.
     *
     * @throws QuantityException if the text is none of these, or a decimal that no well-known rate goes by
     */
    public static FrameRate parse(String text) {
        return NOTATION.read(
                text,
                m -> m.group(3) == null
                        ? of(Long.parseLong(m.group(1)), Long.parseLong(m.group(2)))
                        : ofDecimal(m.group(3)));
    }

    private static FrameRate ofDecimal(String number) {
        BigDecimal value = new BigDecimal(number).stripTrailingZeros();
        NOTATION.check(
                value.compareTo(BigDecimal.ONE) >= 0 && value.compareTo(BigDecimal.valueOf(2000)) <= 0,
                value.doubleValue());
        if (value.scale() <= 0) {
            return of(value.longValueExact(), 1);
        }
        for (Spoken spoken : WellKnown.DECIMALS) {
            if (spoken.names.contains(value.toPlainString())) {
                return spoken.rate;
            }
        }
        throw NOTATION.wrong(
                number,
                "the nearest well-known rates are " + nearest(value.doubleValue()) + "; write any other as a fraction");
    }

    private static String nearest(double wanted) {
        List<FrameRate> known = WellKnown.DECIMALS.stream().map(Spoken::rate).collect(Collectors.toList());
        WellKnown.WHOLE.forEach(whole -> known.add(of(whole, 1)));
        return known.stream()
                .sorted(Comparator.comparingDouble((FrameRate rate) -> Math.abs(rate.perSecond() - wanted)))
                .limit(2)
                .sorted()
                .map(rate -> rate.denominator == 1 ? rate.toString() : rate.spoken() + " (" + rate + ")")
                .collect(Collectors.joining(" and "));
    }

    /** Frames per second, exactly. */
    public BigFraction fraction() {
        return BigFraction.of(numerator, denominator);
    }

    /** Frames per second, rounded to a double. */
    public double perSecond() {
        return (double) numerator / denominator;
    }

    /** The duration of one frame in seconds, exactly. */
    public BigFraction frameSeconds() {
        return BigFraction.of(denominator, numerator);
    }

    /** The rate as people say it: "23.976", "24", "59.94"; other fractions to three decimals. */
    public String spoken() {
        for (Spoken spoken : WellKnown.DECIMALS) {
            if (spoken.rate.equals(this)) {
                return spoken.names.get(0);
            }
        }
        return Notation.plain(fraction().bigDecimalValue(3, RoundingMode.HALF_UP));
    }

    @Override
    public int compareTo(FrameRate other) {
        return Long.compare(numerator * other.denominator, other.numerator * denominator);
    }

    /** The exact rate: "24000/1001" or "24". */
    @Override
    public String toString() {
        return denominator == 1 ? Long.toString(numerator) : numerator + "/" + denominator;
    }
}
