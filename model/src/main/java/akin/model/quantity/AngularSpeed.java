package akin.model.quantity;

/**
 * How fast a camera turns or pans, from 0 to 3600 °/s.
 *
 * @param degreesPerSecond degrees per second
 */
public record AngularSpeed(double degreesPerSecond) {
    /** How a turning speed may be written. */
    public static final String ALLOWED = "degrees per second (40 °/s, 40 deg/s)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.NUMBER + ")" + Notation.GAP + "(?:°/s|deg/s)$";

    private static final Notation NOTATION =
            new Notation("turning speed", ALLOWED, PATTERN, "from 0 °/s to 3600 °/s").bare("write $1 °/s");

    public AngularSpeed {
        NOTATION.check(degreesPerSecond >= 0 && degreesPerSecond <= 3600, degreesPerSecond);
        degreesPerSecond += 0.0;
    }

    /**
     * Reads {@code 40 °/s}, {@code 40 deg/s}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static AngularSpeed parse(String text) {
        return NOTATION.read(text, m -> new AngularSpeed(Double.parseDouble(m.group(1))));
    }

    /** "40 °/s". */
    @Override
    public String toString() {
        return Notation.plain(degreesPerSecond) + " °/s";
    }
}
