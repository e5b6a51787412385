package akin.model.quantity;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The size of a picture in pixels, each side from 16 to 65536.
 *
 * @param width pixels across
 * @param height pixels down
 */
public record PictureSize(int width, int height) {
    /** How a picture size may be written. */
    public static final String ALLOWED = "width x height in pixels (3840x2160)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN = "^([0-9]{1,6})" + Notation.GAP + "[x×]" + Notation.GAP + "([0-9]{1,6})$";

    private static final Notation NOTATION =
            new Notation("picture size", ALLOWED, PATTERN, "from 16 to 65536 pixels each way");

    public PictureSize {
        NOTATION.check(width >= 16 && width <= 65536, width);
        NOTATION.check(height >= 16 && height <= 65536, height);
    }

    /**
     * Reads {@code 3840x2160}, {@code 3840 x 2160}, {@code 3840×2160}.
     *
     * @throws QuantityException if the text is none of these
     */
    public static PictureSize parse(String text) {
        return NOTATION.read(text, m -> new PictureSize(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2))));
    }

    /** Width over height, exactly, of square pixels. */
    public BigFraction ratio() {
        return BigFraction.of(width, height);
    }

    /** Width over height of square pixels. */
    public double aspect() {
        return (double) width / height;
    }

    /** "3840x2160". */
    @Override
    public String toString() {
        return width + "x" + height;
    }
}
