package akin.model.quantity;

/**
 * An electrical power, from 0 to 1 MW.
 *
 * @param watts watts
 */
public record Power(double watts) {
    /** How a power may be written. */
    public static final String ALLOWED = "watts (14 W, 1.2 kW)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.NUMBER + ")" + Notation.GAP + "(W|kW)$";

    private static final Notation NOTATION =
            new Notation("power", ALLOWED, PATTERN, "from 0 W to 1000 kW").bare("write $1 W");

    public Power {
        NOTATION.check(watts >= 0 && watts <= 1e6, watts);
        watts += 0.0;
    }

    /**
     * Reads {@code 14 W}, {@code 1.2 kW}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static Power parse(String text) {
        return NOTATION.read(text, m -> {
            String factor = switch (m.group(2)) {
                case "W" -> "1";
                default -> "1000";
            };
            return new Power(Notation.scaled(m.group(1), factor));
        });
    }

    /** "14 W", "1.2 kW". */
    @Override
    public String toString() {
        if (watts >= 1000) {
            return Notation.plain(watts, 3) + " kW";
        }
        return Notation.plain(watts) + " W";
    }
}
