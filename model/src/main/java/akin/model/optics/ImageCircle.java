package akin.model.optics;

/** Whether the circle that a lens lights covers the picture area, with what shifts or stabilises it. */
public final class ImageCircle {
    private ImageCircle() {}

    /**
     * Diameter of the circle that a picture area needs when it may be displaced in any direction.
     *
     * <p>diagonal + 2 travel: the worst direction is along the diagonal. Geometry. Check value: 30 mm, 1.5 mm → 33 mm.
     *
     * @param diagonalMm diagonal of the picture area in mm, above 0
     * @param travelMm travel from the centre, of a shifting lens or a stabilised sensor, in mm, 0 or above
     * @return diameter in mm
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public static double needed(double diagonalMm, double travelMm) {
        return Require.positive("diagonal", diagonalMm, "mm") + 2 * Require.notNegative("travel", travelMm, "mm");
    }

    /**
     * Diameter of the circle that a picture area needs when it may be displaced so far sideways and so far up.
     *
     * <p>2 √((w/2 + x)² + (h/2 + y)²). Geometry. Check value: 36 mm × 24 mm, 0, 5 mm → 49.518 mm.
     *
     * @param widthMm width of the picture area in mm, above 0
     * @param heightMm height of the picture area in mm, above 0
     * @param sidewaysMm travel from the centre along the width in mm, 0 or above
     * @param upMm travel from the centre along the height in mm, 0 or above
     * @return diameter in mm
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public static double needed(double widthMm, double heightMm, double sidewaysMm, double upMm) {
        double x = Require.positive("width", widthMm, "mm") / 2 + Require.notNegative("shift", sidewaysMm, "mm");
        double y = Require.positive("height", heightMm, "mm") / 2 + Require.notNegative("rise", upMm, "mm");
        return 2 * Math.hypot(x, y);
    }

    /**
     * How far the corners reach out of the circle, measured along the diagonal at one corner.
     *
     * <p>max(0, (needed − circle) / 2). Geometry. Check value: needs 43.2666 mm, has 31 mm → 6.133 mm.
     *
     * @param circleMm diameter of the image circle of the lens in mm, above 0
     * @param neededMm diameter that is needed in mm, above 0; see {@link #needed(double, double)}
     * @return mm of dark corner; 0 where the circle covers
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double cornersShortBy(double circleMm, double neededMm) {
        double missing =
                Require.positive("needed circle", neededMm, "mm") - Require.positive("image circle", circleMm, "mm");
        return Math.max(0, missing / 2);
    }
}
