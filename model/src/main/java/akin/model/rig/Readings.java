package akin.model.rig;

import akin.model.colour.Chart;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What the crew read of test shots on the day, to prove that the units match as planned.
 *
 * @param chart the chart whose patches were read; null when none was
 * @param units what was read, by name of the unit
 */
public record Readings(@Nullable Chart chart, Map<String, Reading> units) {

    /** Copies the map; patches need a chart. */
    public Readings {
        units = Map.copyOf(units);
        if (chart == null
                && units.values().stream().anyMatch(one -> !one.patches().isEmpty())) {
            throw new IllegalArgumentException("patches were read, but of which chart is not said");
        }
    }

    /** True when this was read of any unit, so that it is asked of all. */
    public boolean any(Predicate<Reading> what) {
        return units.values().stream().anyMatch(what);
    }
}
