package akin.model.optics;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A recorded picture in square pixels. A squeezed picture is given with the width it has after stretching.
 *
 * @param widthPixels width in pixels, 1 or above
 * @param heightPixels height in pixels, 1 or above
 */
public record PictureShape(int widthPixels, int heightPixels) {

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a side is below 1
     */
    public PictureShape {
        if (widthPixels < 1 || heightPixels < 1) {
            throw new IllegalArgumentException(
                    "picture must be at least 1 pixel each way, was " + widthPixels + "x" + heightPixels);
        }
    }

    /**
     * Picture ratio, exactly.
     *
     * <p>width / height. Check value: 6144x3456 → 16/9.
     *
     * @return width over height
     */
    public BigFraction ratio() {
        return BigFraction.of(widthPixels, heightPixels);
    }

    /**
     * The largest part of this picture that has a given ratio.
     *
     * <p>A picture that is wider than the ratio loses at its sides, one that is narrower at top and bottom. Arithmetic.
     * Check value: 4096x2160 to 16:9 → 3840x2160, 6.25 % of the width lost.
     *
     * @param ratio width over height of the part, above 0
     * @return the part
     * @throws IllegalArgumentException if the ratio is 0 or below, or so far off that less than a pixel is left
     */
    public Extraction extract(BigFraction ratio) {
        if (ratio.signum() <= 0) {
            throw new IllegalArgumentException("picture ratio must be above 0, was " + ratio);
        }
        boolean cutsSides = ratio().compareTo(ratio) > 0;
        BigFraction width = cutsSides ? ratio.multiply(heightPixels) : BigFraction.of(widthPixels);
        BigFraction height = cutsSides
                ? BigFraction.of(heightPixels)
                : BigFraction.of(widthPixels).divide(ratio);
        return new Extraction(
                new PictureShape(width.intValue(), height.intValue()),
                percentLost(width, widthPixels),
                percentLost(height, heightPixels));
    }

    /**
     * The part that two pictures have in common when they are framed to the same height: the ratio of the narrower one.
     *
     * <p>Cutting both to the wider ratio instead costs the narrower one the same share, at top and bottom; take
     * {@link #extract} with the delivery ratio where that is known. Check value: 4096x2160 and 3840x2160 have 16:9 in
     * common; the first loses 6.25 % of its width.
     *
     * @param a one picture
     * @param b the other picture
     * @return the common ratio and what is left of each
     */
    public static Common common(PictureShape a, PictureShape b) {
        BigFraction ratio = a.ratio().compareTo(b.ratio()) <= 0 ? a.ratio() : b.ratio();
        return new Common(ratio, a.extract(ratio), b.extract(ratio));
    }

    private static double percentLost(BigFraction left, int whole) {
        return BigFraction.ONE.subtract(left.divide(whole)).multiply(100).doubleValue();
    }

    /**
     * Part of a picture.
     *
     * @param left whole pixels that are left, rounded down
     * @param widthPercentLost share of the width that is cut away in percent, before rounding; 0 where none
     * @param heightPercentLost share of the height that is cut away in percent, before rounding; 0 where none
     */
    public record Extraction(PictureShape left, double widthPercentLost, double heightPercentLost) {}

    /**
     * What two pictures have in common.
     *
     * @param ratio common width over height
     * @param ofA part of the first picture
     * @param ofB part of the second picture
     */
    public record Common(BigFraction ratio, Extraction ofA, Extraction ofB) {}
}
