package akin.model.optics;

/** Softness that comes from a small stop, against the size of a photosite. */
public final class Diffraction {
    /** Wavelength of green light that the eye sees best, in nm, as this calculation is customarily done. */
    public static final double GREEN_NANOMETRES = 550;

    private Diffraction() {}

    /**
     * Diameter of the Airy disk on the sensor, out to its first dark ring.
     *
     * <p>2.44 λ N. Source: coonaskies.com (formula). Check value: f/8, 550 nm → 10.736 µm.
     *
     * @param fNumber geometric stop, above 0
     * @param nanometres wavelength in nm, above 0
     * @return diameter in µm
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double airyDiameterMicrometres(double fNumber, double nanometres) {
        return 2.44 * Require.positive("wavelength", nanometres, "nm") / 1000 * Require.positive("stop", fNumber, "");
    }

    /**
     * Diameter of the Airy disk in green light of 550 nm.
     *
     * <p>See {@link #airyDiameterMicrometres(double, double)}. Check value: f/8 → 10.736 µm.
     *
     * @param fNumber geometric stop, above 0
     * @return diameter in µm
     * @throws IllegalArgumentException if the stop is 0 or below, infinite or not a number
     */
    public static double airyDiameterMicrometres(double fNumber) {
        return airyDiameterMicrometres(fNumber, GREEN_NANOMETRES);
    }

    /**
     * Distance from one photosite to the next.
     *
     * <p>1000 width / pixels. Only true where the mode reads every photosite of that width; a mode that is scaled down
     * from more of them has smaller ones. Arithmetic. Check value: 24 mm, 6000 → 4 µm.
     *
     * @param widthMm width of the picture area in mm, above 0
     * @param photosites photosites across that width, 1 or above
     * @return pitch in µm
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double photositePitchMicrometres(double widthMm, int photosites) {
        return 1000
                * Require.positive("width", widthMm, "mm")
                / Require.positive("number of photosites", photosites, "");
    }

    /**
     * Stop at which the Airy disk in green light is so many photosites wide: closing further softens.
     *
     * <p>N = sites · pitch / (2.44 λ). The measure of two photosites is common practice, no source. Check value: 2
     * sites of 4 µm → f/5.961.
     *
     * @param photosites how many photosites the disk may span, above 0
     * @param pitchMicrometres distance from one photosite to the next in µm, above 0
     * @return geometric stop
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double stopSpanning(double photosites, double pitchMicrometres) {
        return Require.positive("number of photosites", photosites, "")
                * Require.positive("photosite pitch", pitchMicrometres, "µm")
                / airyDiameterMicrometres(1);
    }
}
