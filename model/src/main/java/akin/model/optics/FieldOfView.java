package akin.model.optics;

/**
 * What a lens on a picture area takes in. The side is that of the picture area in the chosen mode, not of the whole
 * sensor; the squeeze is 1 for spherical lenses and 2, 1.8, 1.5, 1.33 … for the horizontal side behind anamorphic ones.
 */
public final class FieldOfView {
    /** Width of the 36 mm × 24 mm frame that crop factors refer to, in mm (ISO 1007, from memory). */
    public static final double REFERENCE_WIDTH_MM = 36;

    /** Height of the 36 mm × 24 mm frame that crop factors refer to, in mm (ISO 1007, from memory). */
    public static final double REFERENCE_HEIGHT_MM = 24;

    private FieldOfView() {}

    /**
     * Angle of view of a rectilinear lens focused far away.
     *
     * <p>2 atan(side · squeeze / (2 f)). Source: ayton.id.au "photo:fov"; ExifTool, composite tag FOV. Check value:
     * 36 mm, 50 mm, 1 → 39.598°.
     *
     * @param sideMm width, height or diagonal of the picture area in mm, above 0
     * @param focalMm focal length in mm, above 0
     * @param squeeze anamorphic squeeze of the lens along this side, above 0; 1 for none
     * @return angle in degrees, above 0 and below 180
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double degrees(double sideMm, double focalMm, double squeeze) {
        return Math.toDegrees(2 * Math.atan(sidePerFocal(sideMm, focalMm, squeeze) / 2));
    }

    /**
     * How much of the scene the picture spans at a distance.
     *
     * <p>distance · side · squeeze / f, from similar triangles with the apex in the entrance pupil. Check value: 2 m,
     * 36 mm, 50 mm, 1 → 1440 mm.
     *
     * @param distanceMm distance from the entrance pupil of the lens in mm, above 0
     * @param sideMm width or height of the picture area in mm, above 0
     * @param focalMm focal length in mm, above 0
     * @param squeeze anamorphic squeeze of the lens along this side, above 0; 1 for none
     * @return span in mm
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double widthAt(double distanceMm, double sideMm, double focalMm, double squeeze) {
        return Require.positive("distance", distanceMm, "mm") * sidePerFocal(sideMm, focalMm, squeeze);
    }

    /**
     * Focal length with which B takes in the width that A does, from the same place.
     *
     * <p>f_B = f_A (w_B s_B) / (w_A s_A), from equal side · squeeze / f. Source: common practice, no source. Check
     * value: 40 mm on 36.0 mm is matched by 26.667 mm on 24.0 mm.
     *
     * @param focalAMm focal length on A in mm, above 0
     * @param widthAMm width of the picture area of A in mm, above 0
     * @param squeezeA anamorphic squeeze of the lens on A, above 0; 1 for none
     * @param widthBMm width of the picture area of B in mm, above 0
     * @param squeezeB anamorphic squeeze of the lens on B, above 0; 1 for none
     * @return focal length for B in mm
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double matchedFocal(
            double focalAMm, double widthAMm, double squeezeA, double widthBMm, double squeezeB) {
        double perMm = sidePerFocal(widthAMm, focalAMm, squeezeA);
        return Require.positive("width of B", widthBMm, "mm") * Require.positive("squeeze of B", squeezeB, "") / perMm;
    }

    /**
     * How much more the wider of two views takes in at the subject, in percent of the narrower.
     *
     * <p>100 (larger / smaller − 1) of w s / f; the order does not matter. Arithmetic. Check value: 40 mm on 36.0 mm
     * against 25 mm on 24.0 mm → 6.667 %.
     *
     * @param focalAMm focal length on A in mm, above 0
     * @param widthAMm width of the picture area of A in mm, above 0
     * @param squeezeA anamorphic squeeze of the lens on A, above 0; 1 for none
     * @param focalBMm focal length on B in mm, above 0
     * @param widthBMm width of the picture area of B in mm, above 0
     * @param squeezeB anamorphic squeeze of the lens on B, above 0; 1 for none
     * @return percent, 0 or above
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double percentApart(
            double focalAMm, double widthAMm, double squeezeA, double focalBMm, double widthBMm, double squeezeB) {
        double a = sidePerFocal(widthAMm, focalAMm, squeezeA);
        double b = sidePerFocal(widthBMm, focalBMm, squeezeB);
        return 100 * (Math.max(a, b) / Math.min(a, b) - 1);
    }

    /**
     * Diagonal of a picture area.
     *
     * <p>√(w² + h²). Check value: 36 mm × 24 mm → 43.2666 mm.
     *
     * @param widthMm width in mm, above 0
     * @param heightMm height in mm, above 0
     * @return diagonal in mm
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double diagonal(double widthMm, double heightMm) {
        return Math.hypot(Require.positive("width", widthMm, "mm"), Require.positive("height", heightMm, "mm"));
    }

    /**
     * Crop factor of a picture area.
     *
     * <p>43.2666 / diagonal or 36 / width, as the reference says. Source: the lensfun database counts by the diagonal;
     * by the width is common practice, no source. Check value: 24.892 mm × 18.669 mm → 1.3905 by the diagonal,
     * 1.4462 by the width.
     *
     * @param widthMm width of the picture area in mm, above 0
     * @param heightMm height of the picture area in mm, above 0
     * @param reference what to count against
     * @return crop factor; above 1 for areas smaller than 36 mm × 24 mm
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double cropFactor(double widthMm, double heightMm, CropReference reference) {
        double diagonal = diagonal(widthMm, heightMm);
        return switch (reference) {
            case DIAGONAL -> referenceDiagonal() / diagonal;
            case WIDTH -> REFERENCE_WIDTH_MM / widthMm;
        };
    }

    /**
     * Diagonal of the picture area that a crop factor counted by the diagonal stands for.
     *
     * <p>43.2666 / crop. Source: the lensfun database. Check value: 1.534 → 28.2051 mm.
     *
     * @param cropFactor crop factor counted by the diagonal, above 0
     * @return diagonal in mm
     * @throws IllegalArgumentException if the crop factor is 0 or below, infinite or not a number
     */
    public static double diagonalFromCrop(double cropFactor) {
        return referenceDiagonal() / Require.positive("crop factor", cropFactor, "");
    }

    /**
     * Width of the picture area that a crop factor stands for.
     *
     * <p>36 / crop by the width. By the diagonal it depends on the picture ratio a = width / height:
     * 43.2666 / crop · a / √(1 + a²). Arithmetic. Check value: 1.5 by the width → 24 mm; 1.5 by the diagonal, 3:2 → 24
     * mm, and 16:9 → 25.140 mm.
     *
     * @param cropFactor crop factor, above 0
     * @param reference what it is counted against
     * @param ratio picture ratio width / height, above 0; does not matter for {@link CropReference#WIDTH}
     * @return width in mm
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double activeWidthFromCrop(double cropFactor, CropReference reference, double ratio) {
        Require.positive("crop factor", cropFactor, "");
        Require.positive("picture ratio", ratio, "");
        return switch (reference) {
            case DIAGONAL -> diagonalFromCrop(cropFactor) * ratio / Math.hypot(1, ratio);
            case WIDTH -> REFERENCE_WIDTH_MM / cropFactor;
        };
    }

    private static double referenceDiagonal() {
        return Math.hypot(REFERENCE_WIDTH_MM, REFERENCE_HEIGHT_MM);
    }

    private static double sidePerFocal(double sideMm, double focalMm, double squeeze) {
        return Require.positive("side of the picture area", sideMm, "mm")
                * Require.positive("squeeze", squeeze, "")
                / Require.positive("focal length", focalMm, "mm");
    }
}
