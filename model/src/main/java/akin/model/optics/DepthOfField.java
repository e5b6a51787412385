package akin.model.optics;

/**
 * What is acceptably sharp around a subject, in mm from the lens (strictly: from the front principal plane of a thin
 * lens; a tape measures from the film plane, which is one focal length or so further back).
 *
 * @param nearMm nearest sharp distance in mm, above 0 and at most the subject distance
 * @param farMm farthest sharp distance in mm; {@link Double#POSITIVE_INFINITY} where sharpness reaches to the horizon
 * @param hyperfocalMm hyperfocal distance in mm, by the convention asked for
 * @param confusionMm circle of confusion in mm that this was computed with
 */
public record DepthOfField(double nearMm, double farMm, double hyperfocalMm, double confusionMm) {
    /** Divisor of the diagonal that ExifTool takes for the circle of confusion. */
    public static final double CONFUSION_DIVISOR_1440 = 1440;

    /** Divisor of the diagonal that many tables take for the circle of confusion: common practice, no source. */
    public static final double CONFUSION_DIVISOR_1500 = 1500;

    /**
     * Checks the order of the limits.
     *
     * @throws IllegalArgumentException if a length is 0 or below or not a number, or far is nearer than near
     */
    public DepthOfField {
        Require.positive("near limit", nearMm, "mm");
        Require.positive("hyperfocal distance", hyperfocalMm, "mm");
        Require.positive("circle of confusion", confusionMm, "mm");
        if (!(farMm >= nearMm)) {
            throw new IllegalArgumentException(
                    "far limit must be at or beyond the near one, was " + farMm + " mm after " + nearMm + " mm");
        }
    }

    /**
     * Depth of field around a subject.
     *
     * <p>t = N c (d − f) / f²; near = d / (1 + t), far = d / (1 − t), infinite from t = 1 on. This is the thin-lens
     * result, d f² / (f² ± N c (d − f)), whichever hyperfocal convention is named. N is the geometric stop (f number),
     * never the T number.
     *
     * <p>Source: ExifTool, composite tags DOF and HyperfocalDistance (Image/ExifTool/Exif.pm, 12.57). Check value:
     * 50 mm, f/2.8, c 0.0300463 mm, 3 m → 2.729077 m to 3.330642 m.
     *
     * @param focalMm focal length in mm, above 0
     * @param fNumber geometric stop, above 0
     * @param confusionMm circle of confusion in mm, above 0; see {@link #circleOfConfusion}
     * @param distanceMm distance of the subject from the lens in mm, above the focal length
     * @param convention which hyperfocal distance to report
     * @return depth of field
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public static DepthOfField of(
            double focalMm, double fNumber, double confusionMm, double distanceMm, HyperfocalConvention convention) {
        double hyperfocal = hyperfocal(focalMm, fNumber, confusionMm, convention);
        Require.positive("subject distance", distanceMm, "mm");
        if (distanceMm <= focalMm) {
            throw new IllegalArgumentException(
                    "subject distance must be above the focal length of " + focalMm + " mm, was " + distanceMm + " mm");
        }
        double t = fNumber * confusionMm * (distanceMm - focalMm) / (focalMm * focalMm);
        double far = t < 1 ? distanceMm / (1 - t) : Double.POSITIVE_INFINITY;
        return new DepthOfField(distanceMm / (1 + t), far, hyperfocal, confusionMm);
    }

    /**
     * Distance to focus at so that everything from about half of it to the horizon is sharp.
     *
     * <p>f² / (N c), and + f by {@link HyperfocalConvention#THIN_LENS}. Sources: see {@link HyperfocalConvention}.
     * Check values: 6 in, f/8, c 1/100 in → 450 in simplified; 50 mm, f/4, c 0.018 mm → 34 772 mm thin lens.
     *
     * @param focalMm focal length in mm, above 0
     * @param fNumber geometric stop, above 0
     * @param confusionMm circle of confusion in mm, above 0
     * @param convention which formula to use
     * @return distance in mm
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double hyperfocal(
            double focalMm, double fNumber, double confusionMm, HyperfocalConvention convention) {
        Require.positive("focal length", focalMm, "mm");
        Require.positive("stop", fNumber, "");
        Require.positive("circle of confusion", confusionMm, "mm");
        double simplified = focalMm * focalMm / (fNumber * confusionMm);
        return switch (convention) {
            case SIMPLIFIED -> simplified;
            case THIN_LENS -> simplified + focalMm;
        };
    }

    /**
     * Circle of confusion from the picture area.
     *
     * <p>diagonal / divisor. Sources: ExifTool divides by 1440; 1500 is common practice, no source. Check value:
     * 43.2666 mm / 1440 → 0.0300463 mm.
     *
     * @param diagonalMm diagonal of the picture area in mm, above 0
     * @param divisor how many circles span the diagonal, above 0; {@link #CONFUSION_DIVISOR_1440} or
     *     {@link #CONFUSION_DIVISOR_1500}
     * @return circle of confusion in mm
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double circleOfConfusion(double diagonalMm, double divisor) {
        return Require.positive("diagonal", diagonalMm, "mm") / Require.positive("divisor", divisor, "");
    }

    /**
     * Circle of confusion from the picture area, by the divisor 1440.
     *
     * <p>diagonal / 1440. Source: ExifTool. Check value: 43.2666 mm → 0.0300463 mm.
     *
     * @param diagonalMm diagonal of the picture area in mm, above 0
     * @return circle of confusion in mm
     * @throws IllegalArgumentException if the diagonal is 0 or below, infinite or not a number
     */
    public static double circleOfConfusion(double diagonalMm) {
        return circleOfConfusion(diagonalMm, CONFUSION_DIVISOR_1440);
    }

    /**
     * How deep the sharp range is.
     *
     * <p>far − near. Check value: 50 mm, f/2.8, c 0.0300463 mm, 3 m → 601.6 mm.
     *
     * @return depth in mm; {@link Double#POSITIVE_INFINITY} where it reaches to the horizon
     */
    public double totalMm() {
        return farMm - nearMm;
    }

    /**
     * Whether sharpness reaches to the horizon.
     *
     * @return true if {@link #farMm} is infinite
     */
    public boolean reachesInfinity() {
        return Double.isInfinite(farMm);
    }

    /**
     * Diameter of the entrance pupil, which sets how blurred a far background is for the same view from the same place.
     *
     * <p>f / N, the definition of the f number. Check value: 50 mm at f/2 → 25 mm.
     *
     * @param focalMm focal length in mm, above 0
     * @param fNumber geometric stop, above 0
     * @return diameter in mm
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double entrancePupil(double focalMm, double fNumber) {
        return Require.positive("focal length", focalMm, "mm") / Require.positive("stop", fNumber, "");
    }

    /**
     * Stop with which B has the depth of A, at the same subject distance and with matched views.
     *
     * <p>N_B = N_A f_B / f_A, from equal entrance pupils. Source: common practice, no source. Check value: f/4 on 40 mm
     * is matched by f/2.667 on 26.667 mm.
     *
     * @param fNumberA geometric stop on A, above 0
     * @param focalAMm focal length on A in mm, above 0
     * @param focalBMm focal length on B in mm, above 0
     * @return geometric stop for B
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double equalDepthStop(double fNumberA, double focalAMm, double focalBMm) {
        return Require.positive("focal length of B", focalBMm, "mm") / entrancePupil(focalAMm, fNumberA);
    }

    /**
     * How far two entrance pupils are apart, in stops.
     *
     * <p>2 log₂((f_A / N_A) / (f_B / N_B)): positive where A has the larger pupil and so the shallower depth. Swapping
     * A and B turns the sign. Arithmetic. Check value: 50 mm f/2 against 50 mm f/4 → +2.
     *
     * @param focalAMm focal length on A in mm, above 0
     * @param fNumberA geometric stop on A, above 0
     * @param focalBMm focal length on B in mm, above 0
     * @param fNumberB geometric stop on B, above 0
     * @return stops
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double pupilStopsApart(double focalAMm, double fNumberA, double focalBMm, double fNumberB) {
        return 2 * Math.log(entrancePupil(focalAMm, fNumberA) / entrancePupil(focalBMm, fNumberB)) / Math.log(2);
    }
}
