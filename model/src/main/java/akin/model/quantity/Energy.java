package akin.model.quantity;

/**
 * What a battery holds, from 0 to 1 MWh.
 *
 * @param wattHours watt-hours
 */
public record Energy(double wattHours) {
    /** How an energy may be written. */
    public static final String ALLOWED = "watt-hours (98 Wh, 1.2 kWh)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.NUMBER + ")" + Notation.GAP + "(Wh|kWh)$";

    private static final Notation NOTATION =
            new Notation("energy", ALLOWED, PATTERN, "from 0 Wh to 1000 kWh").bare("write $1 Wh");

    public Energy {
        NOTATION.check(wattHours >= 0 && wattHours <= 1e6, wattHours);
        wattHours += 0.0;
    }

    /**
     * Reads {@code 98 Wh}, {@code 1.2 kWh}.
     *
     * @throws QuantityException if the text is not that; a number without its unit is refused
     */
    public static Energy parse(String text) {
        return NOTATION.read(text, m -> {
            String factor = switch (m.group(2)) {
                case "Wh" -> "1";
                default -> "1000";
            };
            return new Energy(Notation.scaled(m.group(1), factor));
        });
    }

    /** "98 Wh", "1.2 kWh". */
    @Override
    public String toString() {
        if (wattHours >= 1000) {
            return Notation.plain(wattHours, 3) + " kWh";
        }
        return Notation.plain(wattHours) + " Wh";
    }
}
