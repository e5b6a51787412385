package akin.engine.assess;

import akin.model.finding.Target;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How numbers are written in sentences: as exact as one would say them on set, in the same way everywhere. */
public final class Numbers {

    /** What is left when doubles that should be equal are taken from each other; no number of the trade is so small. */
    private static final double NOISE = 1e-9;

    private Numbers() {}

    /** The number with its unit, rounded to what matters in that unit. */
    public static String spoken(double value, String unit) {
        if (Double.isInfinite(value)) {
            return value > 0 ? "infinity" : "minus infinity";
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal rounded = switch (unit) {
            case "K", "mired", "px", "%" ->
                exact.setScale(Math.abs(value) < 10 && !unit.equals("K") ? 1 : 0, RoundingMode.HALF_EVEN);
            case "stops", "ms", "m" -> exact.setScale(2, RoundingMode.HALF_EVEN);
            case "°", "mm", "s" -> exact.setScale(1, RoundingMode.HALF_EVEN);
            case "dE00" -> exact.setScale(2, RoundingMode.HALF_EVEN);
            case "duv" -> exact.setScale(4, RoundingMode.HALF_EVEN);
            default -> exact.round(new MathContext(4, RoundingMode.HALF_EVEN));
        };
        if (rounded.signum() == 0 && Math.abs(value) > NOISE) {
            rounded = exact.round(new MathContext(1, RoundingMode.HALF_EVEN));
        }
        String digits = plain(rounded);
        if (unit.isEmpty()) {
            return digits;
        }
        boolean single = digits.equals("1") && (unit.equals("stops") || unit.equals("frames"));
        String one = single ? unit.substring(0, unit.length() - 1) : unit;
        return unit.equals("°") ? digits + unit : digits + " " + one;
    }

    /** A level to aim at: where it is read, and how much it must be. */
    public static String spoken(Target target) {
        return spoken(target.value(), target.scale()) + " on the " + target.aid();
    }

    /** The number for machines: six significant digits, never in exponents. */
    public static BigDecimal exact(double value) {
        BigDecimal rounded = BigDecimal.valueOf(Math.abs(value) > NOISE ? value : 0)
                .round(new MathContext(6, RoundingMode.HALF_EVEN));
        return new BigDecimal(plain(rounded));
    }

    private static String plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
