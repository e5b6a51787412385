package akin.model.quantity;

/**
 * A frequency of mains, light or scanning, more than 0 and at most 1 GHz.
 *
 * @param hertz cycles per second
 */
public record Frequency(double hertz) {
    /** How a frequency may be written. */
    public static final String ALLOWED = "a number with its unit (50 Hz, 2 kHz)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.NUMBER + ")" + Notation.GAP + "(Hz|kHz|MHz)$";

    private static final Notation NOTATION =
            new Notation("frequency", ALLOWED, PATTERN, "more than 0 Hz and at most 1000 MHz").bare("write $1 Hz");

    public Frequency {
        NOTATION.check(hertz > 0 && hertz <= 1e9, hertz);
    }

    /**
     * Reads {@code 50 Hz}, {@code 2 kHz}, {@code 1 MHz}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static Frequency parse(String text) {
        return NOTATION.read(text, m -> {
            String factor = switch (m.group(2)) {
                case "Hz" -> "1";
                case "kHz" -> "1000";
                default -> "1000000";
            };
            return new Frequency(Notation.scaled(m.group(1), factor));
        });
    }

    /** "50 Hz", "2 kHz". */
    @Override
    public String toString() {
        if (hertz >= 1e6) {
            return Notation.plain(hertz, 6) + " MHz";
        }
        if (hertz >= 1000) {
            return Notation.plain(hertz, 3) + " kHz";
        }
        return Notation.plain(hertz) + " Hz";
    }
}
