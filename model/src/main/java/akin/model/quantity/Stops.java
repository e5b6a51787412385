package akin.model.quantity;

/**
 * A difference of exposure, from -100 to 100 stops.
 *
 * @param value stops; one stop is a factor of two
 */
public record Stops(double value) {
    /** How stops may be written. */
    public static final String ALLOWED = "stops (1 stop, 1/3 stop, 1 1/3 stops, -0.5 stop)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^([+-]?)" + StopCount.COUNT + Notation.GAP + "stops?$";

    private static final Notation NOTATION = new Notation(
                    "difference in stops", ALLOWED, PATTERN, "from -100 to 100 stops")
            .hint("(" + Notation.SIGNED + "|[+-]?[0-9]+/[0-9]+)", "write $1 stop");

    public Stops {
        NOTATION.check(Math.abs(value) <= 100, value);
        value += 0.0;
    }

    /**
     * Reads {@code 1/3 stop}, {@code 1/6 stops}, {@code 1 1/3 stops}, {@code -0.5 stop}.
     *
     * @throws QuantityException if the text is none of these
     */
    public static Stops parse(String text) {
        return NOTATION.read(text, m -> new Stops((m.group(1).equals("-") ? -1 : 1) * StopCount.of(m, 2)));
    }

    /** "1/3 stop", "2 stops", "-0.5 stop". */
    @Override
    public String toString() {
        return StopCount.write(value);
    }
}
