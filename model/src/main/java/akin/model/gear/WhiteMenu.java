package akin.model.gear;

import akin.model.quantity.ColourTemperature;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The white balances a body offers in kelvin: a list of presets, or a span in even steps.
 *
 * @param listed the presets; empty when a span is given
 * @param from lowest of the span
 * @param to highest of the span
 * @param step distance in kelvin
 */
public record WhiteMenu(
        List<ColourTemperature> listed,
        @Nullable ColourTemperature from,
        @Nullable ColourTemperature to,
        @Nullable Integer step) {

    /** Copies the list; needs a list, or both ends of a span and its step. */
    public WhiteMenu {
        listed = List.copyOf(listed);
        if (listed.isEmpty() && (from == null || to == null || step == null)) {
            throw new IllegalArgumentException("a white menu is a list of presets, or a span with from, to and step");
        }
        if (from != null && to != null && from.kelvin() > to.kelvin()) {
            throw new IllegalArgumentException("the white span goes from " + from + " to " + to + ", which is lower");
        }
        if (step != null && step < 1) {
            throw new IllegalArgumentException("the step of a white span is over 0 K, not " + step + " K");
        }
    }

    /** Everything the menu offers, in rising order. */
    public List<ColourTemperature> offered() {
        if (!listed.isEmpty() || from == null || to == null || step == null) {
            return listed.stream()
                    .sorted(Comparator.comparingInt(ColourTemperature::kelvin))
                    .toList();
        }
        int high = to.kelvin();
        int by = step;
        return IntStream.iterate(from.kelvin(), k -> k <= high, k -> k + by)
                .mapToObj(ColourTemperature::new)
                .toList();
    }

    /** True when this value can be set. */
    public boolean offers(ColourTemperature white) {
        return offered().contains(white);
    }

    /** The offered value nearest in mired. */
    public Optional<ColourTemperature> nearest(ColourTemperature white) {
        return offered().stream().min(Comparator.comparingDouble(v -> Math.abs(v.mired() - white.mired())));
    }
}
