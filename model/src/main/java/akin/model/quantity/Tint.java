package akin.model.quantity;

/**
 * A camera's green-magenta correction in that camera's own steps, from -100 to 100. Which way is green differs between
 * cameras.
 *
 * @param value steps
 */
public record Tint(double value) {
    /** How a tint may be written. */
    public static final String ALLOWED = "a number with or without a sign (+4, -2, 0)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.SIGNED + ")$";

    private static final Notation NOTATION = new Notation("tint", ALLOWED, PATTERN, "from -100 to +100");

    public Tint {
        NOTATION.check(Math.abs(value) <= 100, value);
        value += 0.0;
    }

    /**
     * Reads {@code +4}, {@code -2}, {@code 0}, {@code 4}.
     *
     * @throws QuantityException if the text is none of these
     */
    public static Tint parse(String text) {
        return NOTATION.read(text, m -> new Tint(Double.parseDouble(m.group(1))));
    }

    /** "+4", "-2", "0". */
    @Override
    public String toString() {
        return (value > 0 ? "+" : "") + Notation.plain(value);
    }
}
