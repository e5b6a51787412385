package akin.model.quantity;

/**
 * A temperature of air or gear, from -90 °C to 1000 °C.
 *
 * @param celsius degrees Celsius
 */
public record Temperature(double celsius) {
    /** How a temperature may be written. */
    public static final String ALLOWED = "degrees Celsius (35 °C)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.SIGNED + ")" + Notation.GAP + "°C$";

    private static final Notation NOTATION = new Notation("temperature", ALLOWED, PATTERN, "from -90 °C to 1000 °C")
            .bare("write $1 °C")
            .hint("(" + Notation.SIGNED + ") *C", "write $1 °C");

    public Temperature {
        NOTATION.check(celsius >= -90 && celsius <= 1000, celsius);
        celsius += 0.0;
    }

    /**
     * Reads {@code 35 °C}, {@code -10 °C}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static Temperature parse(String text) {
        return NOTATION.read(text, m -> new Temperature(Double.parseDouble(m.group(1))));
    }

    /** "35 °C". */
    @Override
    public String toString() {
        return Notation.plain(celsius) + " °C";
    }
}
