package akin.model.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How long a frame is exposed, set as an angle of the frame period or as a time.
 *
 * <p>Exposure time = angle / 360 x frame duration (the geometry of a rotating disc shutter; common practice).
 */
public sealed interface Shutter permits Shutter.Angle, Shutter.Time {
    /** How a shutter may be written. */
    String ALLOWED = "an angle (180°, 180 deg) or a time (1/50, 1/50 s, 20 ms)";

    /** The shape of {@link #ALLOWED}. */
    String PATTERN =
            "^(?:(" + Notation.NUMBER + ")" + Notation.GAP + "(?:°|deg)|(" + Notation.NUMBER + ")/(" + Notation.NUMBER
                    + ")(?:" + Notation.GAP + "s)?|(" + Notation.NUMBER + ")" + Notation.GAP + "(s|ms|us|µs|μs))$";

    /**
     * Reads {@code 180°}, {@code 180 deg}, {@code 1/50}, {@code 1/50 s}, {@code 0.02 s}, {@code 20 ms}, {@code 500 µs}.
     *
     * @throws QuantityException if the text is none of these; a number that stands alone could be an angle or a time and
     *     is refused
     */
    static Shutter parse(String text) {
        return ShutterNotation.SHUTTER.read(text, m -> {
            if (m.group(1) != null) {
                return new Angle(new BigDecimal(m.group(1)));
            }
            if (m.group(2) != null) {
                return new Time(ShutterNotation.exact(m.group(2)).divide(ShutterNotation.divisor(m.group(3), text)));
            }
            long perSecond = switch (m.group(5)) {
                case "s" -> 1;
                case "ms" -> 1_000;
                default -> 1_000_000;
            };
            return new Time(ShutterNotation.exact(m.group(4)).divide(perSecond));
        });
    }

    /** The exposure time of one frame in seconds, exactly. */
    BigFraction seconds(FrameRate rate);

    /** The angle this shutter has at a rate, in degrees; a time longer than the frame gives more than 360. */
    default double degrees(FrameRate rate) {
        return seconds(rate).multiply(rate.fraction()).multiply(360).doubleValue();
    }

    /** Whether both expose exactly as long at this rate. */
    default boolean sameTime(Shutter other, FrameRate rate) {
        return seconds(rate).compareTo(other.seconds(rate)) == 0;
    }

    /**
     * A shutter set as an angle.
     *
     * @param degrees more than 0, up to 360
     */
    record Angle(BigDecimal degrees) implements Shutter {
        public Angle {
            boolean inRange = degrees.signum() > 0 && degrees.compareTo(BigDecimal.valueOf(360)) <= 0;
            ShutterNotation.ANGLE.check(inRange, degrees.doubleValue());
            degrees = degrees.stripTrailingZeros();
            if (degrees.scale() < 0) {
                degrees = degrees.setScale(0);
            }
            ShutterNotation.ANGLE.check(degrees.scale() <= ShutterNotation.MOST_DECIMALS, degrees.doubleValue());
        }

        @Override
        public BigFraction seconds(FrameRate rate) {
            return ShutterNotation.exact(degrees).divide(360).multiply(rate.frameSeconds());
        }

        /** "180°". */
        @Override
        public String toString() {
            return degrees.toPlainString() + "°";
        }
    }

    /**
     * A shutter set as a time.
     *
     * @param seconds more than 0, up to 10
     */
    record Time(BigFraction seconds) implements Shutter {
        public Time {
            boolean inRange = seconds.signum() > 0
                    && seconds.compareTo(BigFraction.of(10)) <= 0
                    && seconds.getDenominator().bitLength() <= ShutterNotation.MOST_BITS;
            ShutterNotation.TIME.check(inRange, seconds.doubleValue());
            seconds = BigFraction.of(
                    seconds.getNumerator().abs(), seconds.getDenominator().abs());
        }

        @Override
        public BigFraction seconds(FrameRate rate) {
            return seconds;
        }

        /** "1/50", "1/59.94", "0.4 s", "2 s", or the exact fraction "1001/48000 s" when no decimal is exact. */
        @Override
        public String toString() {
            BigInteger numerator = seconds.getNumerator();
            BigInteger denominator = seconds.getDenominator();
            if (denominator.equals(BigInteger.ONE)) {
                return numerator + " s";
            }
            if (numerator.equals(BigInteger.ONE)) {
                return "1/" + denominator;
            }
            String decimal = ShutterNotation.decimal(numerator, denominator);
            // From about a third of a second up, cameras show seconds; below, they show one over something.
            if (!decimal.isEmpty() && seconds.doubleValue() >= 0.3) {
                return decimal + " s";
            }
            String reciprocal = ShutterNotation.decimal(denominator, numerator);
            if (!reciprocal.isEmpty()) {
                return "1/" + reciprocal;
            }
            return decimal.isEmpty() ? numerator + "/" + denominator + " s" : decimal + " s";
        }
    }
}
