package akin.model.colour;

import java.util.List;
import java.util.Objects;

/**
 * A chart of 24 patches of known colour, in the order of its rows: six to a row, the last row from white to black.
 *
 * @param id lower-case words joined by hyphens
 * @param name what it is called in reports
 * @param patches its patches; 24
 * @param source where the colours come from
 */
public record Chart(String id, String name, List<Patch> patches, String source) {

    /** How many patches it has. */
    public static final int PATCHES = 24;

    /** Index of the first grey, the white one; the last five are behind it, each darker. */
    public static final int FIRST_GREY = 18;

    /** Index of the grey that is nearest to a grey card. */
    public static final int CARD = 21;

    /** Copies the list; needs 24 patches. */
    public Chart {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(source, "source");
        patches = List.copyOf(patches);
        if (patches.size() != PATCHES) {
            throw new IllegalArgumentException("a chart has " + PATCHES + " patches, not " + patches.size());
        }
    }

    /** XYZ of the white that the colours are given under: D50 as the ICC profile connection space has it (ICC.1). */
    public static double[] white() {
        return new double[] {0.9642, 1, 0.8249};
    }

    /**
     * A patch.
     *
     * @param name what it is called
     * @param lab its colour under {@link #white}
     */
    public record Patch(String name, Lab lab) {

        /** XYZ under {@link #white}, 1 being the luminance of a perfect white reflector. */
        public double[] xyz() {
            return lab.toXyz(white());
        }
    }
}
