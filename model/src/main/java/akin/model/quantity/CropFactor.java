package akin.model.quantity;

import akin.model.optics.CropReference;
import akin.model.optics.FieldOfView;

/**
 * How much smaller a picture area is than the 36 mm x 24 mm frame, from 0.1 to 20, and by which side that is counted: a
 * number alone means different areas by the width and by the diagonal.
 *
 * @param factor side of the 36 mm x 24 mm frame over that of the picture area
 * @param reference which side
 */
public record CropFactor(double factor, CropReference reference) {
    /** How a crop factor may be written. */
    public static final String ALLOWED = "a factor and the side it is counted by (1.5 by width, 1.6 by diagonal)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN =
            "^(" + Notation.NUMBER + ")" + Notation.GAP + "by" + Notation.SPACE + "(width|diagonal)$";

    private static final Notation NOTATION = new Notation("crop factor", ALLOWED, PATTERN, "from 0.1 to 20")
            .bare("$1 by width (of 36 mm) or $1 by diagonal (of 43.27 mm)?")
            .hint("(" + Notation.NUMBER + ")" + Notation.GAP + "[xX×]", "$1 by width or $1 by diagonal?");

    public CropFactor {
        NOTATION.check(factor >= 0.1 && factor <= 20, factor);
    }

    /**
     * Reads {@code 1.5 by width}, {@code 1.6 by diagonal}.
     *
     * @throws QuantityException if the text is neither; a number that stands alone is refused
     */
    public static CropFactor parse(String text) {
        return NOTATION.read(
                text,
                m -> new CropFactor(
                        Double.parseDouble(m.group(1)),
                        m.group(2).equals("width") ? CropReference.WIDTH : CropReference.DIAGONAL));
    }

    /**
     * The picture area that it stands for: see {@link FieldOfView#activeWidthFromCrop}.
     *
     * @param ratio width over height of the picture, over 0
     */
    public Area area(double ratio) {
        double width = FieldOfView.activeWidthFromCrop(factor, reference, ratio);
        return new Area(width, width / ratio);
    }

    /** "1.5 by width". */
    @Override
    public String toString() {
        return Notation.plain(factor) + (reference == CropReference.WIDTH ? " by width" : " by diagonal");
    }
}
