package akin.model.quantity;

/**
 * A share or a difference in per cent, from -1000 to 1000.
 *
 * @param value per cent
 */
public record Percent(double value) {
    /** How a percentage may be written. */
    public static final String ALLOWED = "per cent (5 %)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.SIGNED + ")" + Notation.GAP + "%$";

    private static final Notation NOTATION =
            new Notation("percentage", ALLOWED, PATTERN, "from -1000 % to 1000 %").bare("write $1 %");

    public Percent {
        NOTATION.check(Math.abs(value) <= 1000, value);
        value += 0.0;
    }

    /**
     * Reads {@code 5 %}, {@code -2.5 %}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static Percent parse(String text) {
        return NOTATION.read(text, m -> new Percent(Double.parseDouble(m.group(1))));
    }

    /** "5 %". */
    @Override
    public String toString() {
        return Notation.plain(value) + " %";
    }
}
