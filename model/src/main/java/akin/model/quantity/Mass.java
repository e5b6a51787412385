package akin.model.quantity;

/**
 * A mass, from 0 to 10 tonnes.
 *
 * @param grams grams
 */
public record Mass(double grams) {
    /** How a mass may be written. */
    public static final String ALLOWED = "a number with its unit (800 g, 1.2 kg, 2 lb, 6 oz)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.NUMBER + ")" + Notation.GAP + "(g|kg|oz|lb)$";

    private static final Notation NOTATION =
            new Notation("mass", ALLOWED, PATTERN, "from 0 g to 10000 kg").bare("write $1 g or $1 kg");

    public Mass {
        NOTATION.check(grams >= 0 && grams <= 1e7, grams);
        grams += 0.0;
    }

    /**
     * Reads {@code 800 g}, {@code 1.2 kg}, {@code 2 lb}, {@code 6 oz}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static Mass parse(String text) {
        return NOTATION.read(text, m -> {
            String factor = switch (m.group(2)) {
                case "g" -> "1";
                case "kg" -> "1000";
                case "oz" -> "28.349523125";
                default -> "453.59237";
            };
            return new Mass(Notation.scaled(m.group(1), factor));
        });
    }

    /** "800 g"; from a kilogram up "1.2 kg". */
    @Override
    public String toString() {
        if (grams >= 1000) {
            return Notation.plain(grams, 3) + " kg";
        }
        return Notation.plain(grams) + " g";
    }
}
