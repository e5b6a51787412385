package akin.model.gear;

import akin.model.quantity.Timespan;
import org.jspecify.annotations.Nullable;

/**
 * How long something may run, where it may be known to have no end.
 *
 * @param after the span after which it ends; null when it never does
 */
public record TimeLimit(@Nullable Timespan after) {

    /** The word for no limit. */
    public static final String NONE = "none";

    /**
     * Reads {@code none} or a span such as {@code 30 min}.
     *
     * @throws akin.model.quantity.QuantityException if the text is neither
     */
    public static TimeLimit parse(String text) {
        return text.equals(NONE) ? new TimeLimit(null) : new TimeLimit(Timespan.parse(text));
    }

    /** True when something of this length does not end before its time. */
    public boolean holds(Timespan length) {
        return after == null || length.milliseconds() <= after.milliseconds();
    }

    @Override
    public String toString() {
        return after == null ? NONE : after.toString();
    }
}
