package akin.model.colour;

import akin.model.quantity.ColourTemperature;
import java.util.Collection;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A filter that shifts the colour temperature of light.
 *
 * @param id lower-case words joined by hyphens
 * @param name published designation
 * @param miredShift shift in mired: negative towards blue, positive towards amber
 * @param lossStops light lost in stops, as published; null when not known
 * @param source the document the shift comes from
 */
public record ColourFilter(
        String id, String name, double miredShift, @Nullable Double lossStops, String source) {

    public ColourFilter {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(source, "source");
        if (!Double.isFinite(miredShift)) {
            throw new IllegalArgumentException("the shift of a filter must be a finite number of mired");
        }
        if (lossStops != null && !(lossStops >= 0)) {
            throw new IllegalArgumentException("the loss of a filter must not be negative, was " + lossStops);
        }
    }

    /** Shift in mired that turns light of one colour temperature into another: negative towards blue. */
    public static double shift(ColourTemperature from, ColourTemperature to) {
        return to.mired() - from.mired();
    }

    /**
     * The filter that comes nearest to a wanted shift; empty when none is nearer than no filter at all.
     *
     * <p>Mired shifts add, so what remains is {@code wanted - miredShift}. Common practice, no source.
     *
     * @param wanted shift in mired, see {@link #shift}
     */
    public static Optional<ColourFilter> nearest(Collection<ColourFilter> filters, double wanted) {
        return filters.stream()
                .filter(filter -> filter.remains(wanted) < Math.abs(wanted))
                .min(Comparator.<ColourFilter>comparingDouble(filter -> filter.remains(wanted))
                        .thenComparing(ColourFilter::id));
    }

    private double remains(double wanted) {
        return Math.abs(wanted - miredShift);
    }
}
