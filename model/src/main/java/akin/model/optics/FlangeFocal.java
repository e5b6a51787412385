package akin.model.optics;

/**
 * Whether a lens made for one mount can be adapted to a body with another: by depth alone. Throat width, protruding
 * rear elements, load on the mount and electronics are questions of their own.
 */
public final class FlangeFocal {
    /** Flange distances are stated to 0.01 mm; this absorbs the rounding of doubles and nothing else. */
    private static final double ROUNDING_MM = 1e-6;

    private FlangeFocal() {}

    /**
     * Depth that is left for an adapter.
     *
     * <p>lens flange focal distance − body flange focal distance. Geometry: the lens must stand where it would stand on
     * its own body. Check value: lens for 52.00 mm, body with 18.00 mm → 34.00 mm.
     *
     * @param lensFlangeMm flange focal distance that the lens is made for in mm, above 0
     * @param bodyFlangeMm flange focal distance of the body in mm, above 0
     * @return mm; negative where the lens would have to sit inside the body
     * @throws IllegalArgumentException if an argument is 0 or below, infinite or not a number
     */
    public static double adapterRoom(double lensFlangeMm, double bodyFlangeMm) {
        return Require.positive("flange distance of the lens", lensFlangeMm, "mm")
                - Require.positive("flange distance of the body", bodyFlangeMm, "mm");
    }

    /**
     * Whether an adapter without glass has the depth it needs.
     *
     * <p>{@link #adapterRoom} ≥ least depth. Check value: 52.00 mm on 50.00 mm has no room for an adapter of 3 mm.
     *
     * @param lensFlangeMm flange focal distance that the lens is made for in mm, above 0
     * @param bodyFlangeMm flange focal distance of the body in mm, above 0
     * @param leastDepthMm least depth at which an adapter can be made in mm, 0 or above
     * @return true if it fits
     * @throws IllegalArgumentException if an argument is out of its range, infinite or not a number
     */
    public static boolean adapterPossible(double lensFlangeMm, double bodyFlangeMm, double leastDepthMm) {
        double room = adapterRoom(lensFlangeMm, bodyFlangeMm);
        return room + ROUNDING_MM >= Require.notNegative("least depth of the adapter", leastDepthMm, "mm");
    }
}
