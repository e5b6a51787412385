package akin.model.quantity;

import java.util.Set;

/**
 * A neutral filter by its optical density, from 0 (clear) to 6.
 *
 * <p>Density is the base-ten logarithm of the light loss, so one stop is a density of log10(2) = 0.30103. The densities
 * printed on filters are rounded: ND 0.6 is 1.993 stops, sold as two.
 *
 * @param density base-ten logarithm of light in over light out
 */
public record NeutralDensity(double density) {
    /** How a neutral filter may be written. */
    public static final String ALLOWED =
            "a density with its decimal point (ND 0.6), a customary filter factor (ND4, ND1000), stops (2 stops) or"
                    + " clear";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(?:(clear)|[nN][dD]" + Notation.GAP + "(?:([0-9]+\\.[0-9]+)|([0-9]{1,7}))|"
            + StopCount.COUNT + Notation.GAP + "stops?)$";

    private static final double ONE_STOP = Math.log10(2);

    /** Factors by which filters are sold besides the powers of two and ten (common practice, no source). */
    private static final Set<Integer> OTHER_FACTORS = Set.of(400, 500);

    /** The largest density that may be written: a millionth of the light. */
    public static final double DENSEST = 6;

    private static final Notation NOTATION = new Notation("neutral filter", ALLOWED, PATTERN, "a density from 0 to 6")
            .hint("([0-9]+)", "density ND $1.0 or $1 stops?")
            .hint("(" + Notation.NUMBER + ")", "density ND $1 or $1 stops?")
            .hint("(?i)nd *-.*", "it must be a density from 0 to 6");

    public NeutralDensity {
        NOTATION.check(density >= 0 && density <= DENSEST, density);
        density += 0.0;
    }

    /** A filter that takes so many stops, 0 to 19.93. */
    public static NeutralDensity ofStops(double stops) {
        return new NeutralDensity(stops * ONE_STOP);
    }

    /**
     * Reads {@code ND 0.6} (density), {@code ND4} (filter factor), {@code 2 stops}, {@code 1/3 stop}, {@code clear}.
     *
     * @throws QuantityException if the text is none of these; a whole number that is not a customary factor (ND 3) could be
     *     a density or a factor and is refused
     */
    public static NeutralDensity parse(String text) {
        return NOTATION.read(text, m -> {
            if (m.group(1) != null) {
                return new NeutralDensity(0);
            }
            if (m.group(2) != null) {
                return new NeutralDensity(Double.parseDouble(m.group(2)));
            }
            return m.group(3) != null ? ofFactor(Integer.parseInt(m.group(3))) : ofStops(StopCount.of(m, 4));
        });
    }

    private static NeutralDensity ofFactor(int factor) {
        if (factor > 1 && Integer.bitCount(factor) == 1) {
            return ofStops(Integer.numberOfTrailingZeros(factor));
        }
        if (factor >= 10 && Integer.toString(factor).matches("10+") || OTHER_FACTORS.contains(factor)) {
            return new NeutralDensity(Math.log10(factor));
        }
        if (factor <= 6) {
            throw NOTATION.wrong("ND " + factor, "a density ND " + factor + ".0 or " + factor + " stops?");
        }
        throw NOTATION.wrong(
                "ND " + factor,
                factor + " is not a customary filter factor: write the density with its decimal point, or the stops");
    }

    /** The light loss in stops: density / log10(2). */
    public double stops() {
        return density / ONE_STOP;
    }

    /** "ND 0.6", "ND 3.0", "clear"; a whole number or thirds of stops as "2 stops" where no short density is exact. */
    @Override
    public String toString() {
        if (density == 0) {
            return "clear";
        }
        String plain = Notation.plain(density);
        if (plain.length() > 5) {
            double thirds = Math.round(stops() * 3) / 3.0;
            if (thirds * ONE_STOP == density) {
                return StopCount.write(thirds);
            }
        }
        return "ND " + (plain.indexOf('.') < 0 ? plain + ".0" : plain);
    }
}
