package akin.model.quantity;

/**
 * The shape of a picture, width over height, from 0.1 to 10.
 *
 * @param ratio width / height
 */
public record Aspect(double ratio) {
    /** How a picture shape may be written. */
    public static final String ALLOWED = "a ratio (16:9, 2.39:1) or a number (2.39)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN =
            "^(" + Notation.NUMBER + ")(?:" + Notation.GAP + ":" + Notation.GAP + "(" + Notation.NUMBER + "))?$";

    private static final int LARGEST_TERM = 100;
    private static final Notation NOTATION = new Notation("picture shape", ALLOWED, PATTERN, "from 0.1:1 to 10:1")
            .hint("(" + Notation.NUMBER + ") *[/x×] *(" + Notation.NUMBER + ")", "write $1:$2");

    public Aspect {
        NOTATION.check(ratio >= 0.1 && ratio <= 10, ratio);
    }

    /**
     * Reads {@code 16:9}, {@code 2.39:1}, {@code 2.39}.
     *
     * @throws QuantityException if the text is none of these
     */
    public static Aspect parse(String text) {
        return NOTATION.read(text, m -> {
            double width = Double.parseDouble(m.group(1));
            return new Aspect(m.group(2) == null ? width : width / Double.parseDouble(m.group(2)));
        });
    }

    /** "2.39:1"; a ratio that no short decimal is equal to as small whole numbers, "16:9". */
    @Override
    public String toString() {
        String plain = Notation.plain(ratio);
        if (plain.length() > 5) {
            for (int height = 2; height <= LARGEST_TERM; height++) {
                long width = Math.round(ratio * height);
                if ((double) width / height == ratio) {
                    return width + ":" + height;
                }
            }
        }
        return plain + ":1";
    }
}
