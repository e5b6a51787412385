package akin.model.quantity;

/**
 * An electrical voltage, from 0 to 1000 V.
 *
 * @param volts volts
 */
public record Voltage(double volts) {
    /** How a voltage may be written. */
    public static final String ALLOWED = "volts (14.4 V)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.NUMBER + ")" + Notation.GAP + "V$";

    private static final Notation NOTATION =
            new Notation("voltage", ALLOWED, PATTERN, "from 0 V to 1000 V").bare("write $1 V");

    public Voltage {
        NOTATION.check(volts >= 0 && volts <= 1000, volts);
        volts += 0.0;
    }

    /**
     * Reads {@code 14.4 V}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static Voltage parse(String text) {
        return NOTATION.read(text, m -> new Voltage(Double.parseDouble(m.group(1))));
    }

    /** "14.4 V". */
    @Override
    public String toString() {
        return Notation.plain(volts) + " V";
    }
}
