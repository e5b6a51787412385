package akin.model.optics;

/**
 * A lens as the camera sees it, behind a focal reducer or extender or without one.
 *
 * @param focalMm focal length in mm, above 0
 * @param fNumber geometric stop, above 0
 * @param tNumber photometric stop, above 0
 * @param circleMm diameter of the image circle in mm, above 0
 */
public record ConvertedLens(double focalMm, double fNumber, double tNumber, double circleMm) {

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a value is 0 or below, infinite or not a number
     */
    public ConvertedLens {
        Require.positive("focal length", focalMm, "mm");
        Require.positive("geometric stop", fNumber, "");
        Require.positive("photometric stop", tNumber, "");
        Require.positive("image circle", circleMm, "mm");
    }

    /**
     * This lens behind a converter.
     *
     * <p>Focal length, stop and image circle all times k; the T number also over √transmittance, for the light that the
     * converter's own glass keeps. Source: geometric optics, the entrance pupil being unchanged. Check value: 50 mm,
     * f/2.8, T3, 43.3 mm behind a loss-free 0.71 → 35.5 mm, f/1.988, T2.13, 30.743 mm.
     *
     * <p>The circle is what the lens delivers; a converter with a clear opening of its own may cut it further.
     *
     * @param factor k: below 1 for a reducer, above 1 for an extender; above 0
     * @param transmittance share of the light that the converter passes, above 0 and up to 1; 1 where not known
     * @return the converted lens
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public ConvertedLens through(double factor, double transmittance) {
        Require.positive("factor of the converter", factor, "");
        if (!(transmittance > 0 && transmittance <= 1)) {
            throw new IllegalArgumentException(
                    "transmittance of the converter must be above 0 and up to 1, was " + transmittance);
        }
        return new ConvertedLens(
                focalMm * factor, fNumber * factor, tNumber * factor / Math.sqrt(transmittance), circleMm * factor);
    }
}
