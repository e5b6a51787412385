package akin.model.quantity;

/**
 * A sensitivity or exposure index on the arithmetic ISO scale, from 1 to 10,000,000.
 *
 * @param value the index; doubling it is one stop
 */
public record Iso(int value) {
    /** How an ISO value may be written. */
    public static final String ALLOWED = "a whole number (800, ISO 800, EI 800)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(?:(?:[iI][sS][oO]|[eE][iI])" + Notation.GAP + ")?([0-9]{1,8})$";

    private static final Notation NOTATION = new Notation("ISO value", ALLOWED, PATTERN, "from 1 to 10000000");

    public Iso {
        NOTATION.check(value >= 1 && value <= 10_000_000, value);
    }

    /**
     * Reads {@code 800}, {@code ISO 800}, {@code EI 800}.
     *
     * @throws QuantityException if the text is none of these
     */
    public static Iso parse(String text) {
        return NOTATION.read(text, m -> new Iso(Integer.parseInt(m.group(1))));
    }

    /** Stops by which this index is more sensitive than another: log2(this / other). */
    public double stopsFrom(Iso other) {
        return Math.log((double) value / other.value) / Math.log(2);
    }

    /** "800". */
    @Override
    public String toString() {
        return Integer.toString(value);
    }
}
