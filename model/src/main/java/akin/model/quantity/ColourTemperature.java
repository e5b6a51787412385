package akin.model.quantity;

/**
 * A correlated colour temperature or a camera's white balance, from 1000 K to 40000 K.
 *
 * @param kelvin kelvins
 */
public record ColourTemperature(int kelvin) {
    /** How a colour temperature may be written. */
    public static final String ALLOWED = "kelvins with their unit (4300 K)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^([0-9]{1,5})" + Notation.GAP + "K$";

    private static final Notation NOTATION = new Notation(
                    "colour temperature", ALLOWED, PATTERN, "a whole number from 1000 K to 40000 K")
            .bare("write $1 K if kelvins are meant")
            .hint("(" + Notation.NUMBER + ")" + Notation.GAP + "°K", "write $1 K")
            .hint("[0-9.]+" + Notation.GAP + "K", "it must be a whole number from 1000 K to 40000 K");

    public ColourTemperature {
        NOTATION.check(kelvin >= 1000 && kelvin <= 40_000, kelvin);
    }

    /**
     * Reads {@code 4300 K} or {@code 4300K}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static ColourTemperature parse(String text) {
        return NOTATION.read(text, m -> new ColourTemperature(Integer.parseInt(m.group(1))));
    }

    /** The temperature nearest to a mired value, to the kelvin; 25 to 1000 mired. */
    public static ColourTemperature ofMired(double mired) {
        double kelvin = 1e6 / mired;
        NOTATION.check(kelvin >= 999.5 && kelvin < 40_000.5, kelvin);
        return new ColourTemperature((int) Math.round(kelvin));
    }

    /** Micro reciprocal degrees, 1,000,000 / kelvin: equal steps look about equally large. */
    public double mired() {
        return 1e6 / kelvin;
    }

    /** "4300 K". */
    @Override
    public String toString() {
        return kelvin + " K";
    }
}
