package akin.model.exposure;

/** What it costs in light to match depth of field on a picture area of another size. */
public final class DepthCost {
    private DepthCost() {}

    /**
     * Stops of light that matched depth adds on the smaller area, to be paid back with neutral density or ISO.
     *
     * <p>2 log₂ ratio: with matched views the focal lengths, and so the stops for equal entrance pupils, stand in the
     * ratio of the widths, and light goes with the square of the stop. Source: common practice, no source. Check value:
     * 36.0 mm against 24.0 mm, 1.5 → 1.170.
     *
     * @param ratio larger over smaller picture width (or focal length, or f number), above 0; below 1 gives the light
     *     that is lost the other way round
     * @return stops
     * @throws IllegalArgumentException if the ratio is 0 or below, infinite or not a number
     */
    public static double stops(double ratio) {
        return 2 * Light.stops(ratio);
    }
}
