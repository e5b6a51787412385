package akin.model.colour;

/**
 * A chromaticity of the CIE 1931 2-degree observer.
 *
 * @param x may lie outside the visible range, as primaries of wide gamuts do
 * @param y not 0
 */
public record Chromaticity(double x, double y) {

    public Chromaticity {
        if (!Double.isFinite(x) || !Double.isFinite(y) || y == 0) {
            throw new IllegalArgumentException(
                    "a chromaticity needs a finite x and a finite y other than 0, was " + x + ", " + y);
        }
    }

    /** XYZ of luminance 1. */
    public double[] toXyz() {
        return new double[] {x / y, 1, (1 - x - y) / y};
    }

    /** Whether both coordinates agree within a tolerance. */
    public boolean isNear(Chromaticity other, double tolerance) {
        return Math.abs(x - other.x) <= tolerance && Math.abs(y - other.y) <= tolerance;
    }
}
