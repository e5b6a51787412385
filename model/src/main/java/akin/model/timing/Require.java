package akin.model.timing;

import org.apache.commons.numbers.fraction.BigFraction;

/** Range checks of this room's arguments; the name given is the one that the message shows. */
final class Require {
    private Require() {}

    static BigFraction positive(String name, BigFraction value, String unit) {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException(name + " must be above 0 " + unit + ", was " + value);
        }
        return value;
    }

    static double positive(String name, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be above 0 " + unit + " and finite, was " + value);
        }
        return value;
    }

    static double notNegative(String name, double value, String unit) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be 0 " + unit + " or above and finite, was " + value);
        }
        return value;
    }

    static double share(String name, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " must be from 0 to 1, was " + value);
        }
        return value;
    }
}
