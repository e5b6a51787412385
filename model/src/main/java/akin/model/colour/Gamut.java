package akin.model.colour;

import java.util.Objects;

/**
 * The primaries and the white that an RGB signal is relative to.
 *
 * @param id lower-case words joined by hyphens
 * @param name published name
 * @param source the document the chromaticities come from
 */
public record Gamut(
        String id,
        String name,
        Chromaticity red,
        Chromaticity green,
        Chromaticity blue,
        Chromaticity white,
        String source) {

    /** Standards give three to five decimals; nearer than this, two gamuts are one. */
    public static final double SAME_WITHIN = 0.00005;

    /** @throws IllegalArgumentException when the primaries lie on a line */
    public Gamut {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(source, "source");
        double area = (green.x() - red.x()) * (blue.y() - red.y()) - (blue.x() - red.x()) * (green.y() - red.y());
        if (Math.abs(area) < 1e-6) {
            throw new IllegalArgumentException("the primaries of gamut '" + id + "' lie on a line");
        }
        Objects.requireNonNull(white, "white");
    }

    /** Whether RGB values mean the same colours in both, whatever the gamuts are called. */
    public boolean isSameAs(Gamut other) {
        return red.isNear(other.red, SAME_WITHIN)
                && green.isNear(other.green, SAME_WITHIN)
                && blue.isNear(other.blue, SAME_WITHIN)
                && white.isNear(other.white, SAME_WITHIN);
    }
}
