package akin.model.quantity;

import java.math.BigDecimal;

/**
 * A length or a distance, more than 0 and at most 1000 km. Infinity is not a length.
 *
 * @param millimetres millimetres
 */
public record Length(double millimetres) {
    /** How a length may be written. */
    public static final String ALLOWED = "a number with its unit (50 mm, 12 cm, 2.4 m, 1.5 in, 8 ft, 8 ft 2 in)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN =
            "^(?:(" + Notation.NUMBER + ")" + Notation.GAP + "ft" + Notation.SPACE + "(" + Notation.NUMBER + ")"
                    + Notation.GAP + "in|(" + Notation.NUMBER + ")" + Notation.GAP + "(mm|cm|m|km|in|ft))$";

    private static final String FOOT = "304.8"; // exact: international yard and pound agreement, 1959
    private static final String INCH = "25.4";
    private static final Notation NOTATION = new Notation(
                    "length", ALLOWED, PATTERN, "more than 0 mm and at most 1000 km")
            .bare("write $1 mm or $1 m")
            .hint("(" + Notation.NUMBER + ") *['′’]", "write $1 ft")
            .hint("(" + Notation.NUMBER + ") *[\"″”]", "write $1 in")
            .hint("(" + Notation.NUMBER + ") *['′’] *(" + Notation.NUMBER + ") *[\"″”]", "write $1 ft $2 in");

    public Length {
        NOTATION.check(millimetres > 0 && millimetres <= 1e9, millimetres);
    }

    /** A length in metres. */
    public static Length ofMetres(double metres) {
        // By moving the point, so that 1.001 m is 1001 mm and is printed as it was written.
        return new Length(
                Double.isFinite(metres)
                        ? new BigDecimal(Double.toString(metres))
                                .movePointRight(3)
                                .doubleValue()
                        : metres);
    }

    /**
     * Reads {@code 50 mm}, {@code 12 cm}, {@code 2.4 m}, {@code 1.5 in}, {@code 8 ft}, {@code 8 ft 2 in}.
     *
     * @throws QuantityException if the text is none of these; a number without its unit is refused
     */
    public static Length parse(String text) {
        return NOTATION.read(text, m -> {
            if (m.group(1) != null) {
                BigDecimal feet = new BigDecimal(m.group(1)).multiply(new BigDecimal(FOOT));
                BigDecimal inches = new BigDecimal(m.group(2)).multiply(new BigDecimal(INCH));
                return new Length(feet.add(inches).doubleValue());
            }
            String factor = switch (m.group(4)) {
                case "mm" -> "1";
                case "cm" -> "10";
                case "m" -> "1000";
                case "km" -> "1000000";
                case "in" -> INCH;
                default -> FOOT;
            };
            return new Length(Notation.scaled(m.group(3), factor));
        });
    }

    /** Metres. */
    public double metres() {
        return millimetres / 1000;
    }

    /** "50 mm"; from a metre up "2.4 m". */
    @Override
    public String toString() {
        return millimetres >= 1000 ? Notation.plain(millimetres, 3) + " m" : Notation.plain(millimetres) + " mm";
    }
}
