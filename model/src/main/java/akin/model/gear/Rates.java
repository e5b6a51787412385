package akin.model.gear;

import akin.model.quantity.FrameRate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The frame rates a mode offers: a list, and for a body whose rate can be dialled also a span of whole rates.
 *
 * @param listed the rates its menu lists
 * @param slowest lowest rate of the span that can be dialled in whole frames a second, or null
 * @param fastest highest rate of that span, or null
 */
public record Rates(
        List<FrameRate> listed,
        @Nullable FrameRate slowest,
        @Nullable FrameRate fastest) {

    /** Copies the list. */
    public Rates {
        listed = List.copyOf(listed);
        if ((slowest == null) != (fastest == null)) {
            throw new IllegalArgumentException("a span of rates needs both its ends");
        }
    }

    /** True when this exact rate can be set. */
    public boolean offers(FrameRate rate) {
        return listed.contains(rate)
                || (slowest != null
                        && fastest != null
                        && rate.denominator() == 1
                        && rate.compareTo(slowest) >= 0
                        && rate.compareTo(fastest) <= 0);
    }

    /** The offered rate that is nearest in frames a second; the slower of two equally near; empty when none is offered. */
    public Optional<FrameRate> nearest(FrameRate wanted) {
        List<FrameRate> candidates = new java.util.ArrayList<>(listed);
        if (slowest != null && fastest != null) {
            long whole = Math.round(wanted.perSecond());
            long inside = Math.max(
                    (long) Math.ceil(slowest.perSecond()), Math.min((long) Math.floor(fastest.perSecond()), whole));
            candidates.add(FrameRate.of(inside, 1));
        }
        return candidates.stream()
                .min(Comparator.<FrameRate>comparingDouble(r -> Math.abs(r.perSecond() - wanted.perSecond()))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** The rates that both offer by name, in rising order. */
    public List<FrameRate> shared(Rates other) {
        return java.util.stream.Stream.concat(listed.stream(), other.listed.stream())
                .filter(rate -> offers(rate) && other.offers(rate))
                .distinct()
                .sorted()
                .toList();
    }
}
