package akin.model.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import org.apache.commons.numbers.fraction.BigFraction;

/** What {@link Shutter} keeps to itself; an interface cannot hold private constants. */
final class ShutterNotation {
    static final int MOST_DECIMALS = 300;
    static final int MOST_BITS = 300;

    static final Notation SHUTTER = notation("more than 0° and at most 360°, or more than 0 s and at most 10 s")
            .bare("an angle $1° or a time 1/$1?");
    static final Notation ANGLE = notation("more than 0° and at most 360°");
    static final Notation TIME = notation("more than 0 s and at most 10 s");

    private ShutterNotation() {}

    private static Notation notation(String range) {
        return new Notation("shutter", Shutter.ALLOWED, Shutter.PATTERN, range);
    }

    static BigFraction exact(String number) {
        return exact(new BigDecimal(number));
    }

    static BigFraction exact(BigDecimal value) {
        return value.scale() > 0
                ? BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()))
                : BigFraction.of(value.toBigIntegerExact());
    }

    static BigFraction divisor(String number, String text) {
        BigFraction divisor = exact(number);
        if (divisor.signum() == 0) {
            throw TIME.wrong(text, "nothing can be divided by 0");
        }
        return divisor;
    }

    /** The quotient as a plain decimal of at most 12 digits, or an empty text when it is not exact in that many. */
    static String decimal(BigInteger numerator, BigInteger denominator) {
        BigDecimal over = new BigDecimal(denominator);
        BigDecimal quotient = new BigDecimal(numerator).divide(over, new MathContext(12));
        return quotient.multiply(over).compareTo(new BigDecimal(numerator)) == 0 ? Notation.plain(quotient) : "";
    }
}
