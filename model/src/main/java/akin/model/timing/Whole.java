package akin.model.timing;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Whole parts of fractions that are not negative: pulses and refreshes are counted from 0 up. */
final class Whole {
    private static final BigFraction HALF = BigFraction.of(1, 2);

    private Whole() {}

    static boolean is(BigFraction value) {
        return value.getDenominator().equals(BigInteger.ONE);
    }

    /** Cutting off is rounding down, the value not being negative. */
    static BigFraction below(BigFraction value) {
        return BigFraction.of(value.getNumerator().divide(value.getDenominator()));
    }

    /** Half-way goes up. */
    static BigFraction nearest(BigFraction value) {
        return below(value.add(HALF));
    }

    /** The nearest that an exposure can hold and be free of pulsing: one at least. */
    static BigFraction nearestFromOne(BigFraction value) {
        BigFraction nearest = nearest(value);
        return nearest.signum() == 0 ? BigFraction.ONE : nearest;
    }
}
