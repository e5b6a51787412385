package akin.model.quantity;

/**
 * The size of a sensor area or an image circle's box, each side more than 0 and at most 1000 mm.
 *
 * @param widthMm width in millimetres
 * @param heightMm height in millimetres
 */
public record Area(double widthMm, double heightMm) {
    /** How an area may be written. */
    public static final String ALLOWED = "width x height with the unit (36.0 x 24.0 mm)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^(" + Notation.NUMBER + ")" + Notation.GAP + "(?:mm" + Notation.GAP + ")?[x×]"
            + Notation.GAP + "(" + Notation.NUMBER + ")" + Notation.GAP + "mm$";

    private static final Notation NOTATION = new Notation(
                    "sensor area", ALLOWED, PATTERN, "more than 0 mm and at most 1000 mm each way")
            .hint("(" + Notation.NUMBER + " *[x×] *" + Notation.NUMBER + ")", "write $1 mm");

    public Area {
        NOTATION.check(widthMm > 0 && widthMm <= 1000, widthMm);
        NOTATION.check(heightMm > 0 && heightMm <= 1000, heightMm);
    }

    /**
     * Reads {@code 36.0 x 24.0 mm}, {@code 36x24 mm}, {@code 36 × 24 mm}.
     *
     * @throws QuantityException if the text is none of these
     */
    public static Area parse(String text) {
        return NOTATION.read(text, m -> new Area(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))));
    }

    /** The diagonal in millimetres. */
    public double diagonalMm() {
        return Math.hypot(widthMm, heightMm);
    }

    /** "36 x 24 mm". */
    @Override
    public String toString() {
        return Notation.plain(widthMm) + " x " + Notation.plain(heightMm) + " mm";
    }
}
