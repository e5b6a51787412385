package akin.model.quantity;

/**
 * A colour shift or a value on the reciprocal scale of colour temperature, from -1000 to 1000 mired.
 *
 * @param value micro reciprocal degrees; a positive shift is towards amber
 */
public record Mired(double value) {
    /** How a mired value may be written. */
    public static final String ALLOWED = "mireds (5 mired, -134 mired)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.SIGNED + ")" + Notation.GAP + "(?:mireds|mired)$";

    private static final Notation NOTATION =
            new Notation("mired value", ALLOWED, PATTERN, "from -1000 mired to 1000 mired").bare("write $1 mired");

    public Mired {
        NOTATION.check(Math.abs(value) <= 1000, value);
        value += 0.0;
    }

    /**
     * Reads {@code 5 mired}, {@code -134 mired}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static Mired parse(String text) {
        return NOTATION.read(text, m -> new Mired(Double.parseDouble(m.group(1))));
    }

    /** "5 mired". */
    @Override
    public String toString() {
        return Notation.plain(value) + " mired";
    }
}
