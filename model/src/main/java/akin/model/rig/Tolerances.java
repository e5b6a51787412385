package akin.model.rig;

import java.util.EnumMap;
import java.util.Map;

/**
 * A tolerance profile: how far apart two units may be before it is worth a word.
 *
 * @param profile its name, such as {@code intercut}
 * @param limits a limit over 0 for each {@link Tolerance}, in its unit
 */
public record Tolerances(String profile, Map<Tolerance, Double> limits) {

    /** Copies the map; each tolerance must have a limit over 0. */
    public Tolerances {
        EnumMap<Tolerance, Double> copy = new EnumMap<>(limits);
        for (Tolerance tolerance : Tolerance.values()) {
            Double limit = copy.get(tolerance);
            if (limit == null || !(limit > 0)) {
                throw new IllegalArgumentException(profile + " gives no limit over 0 for " + tolerance.key());
            }
        }
        limits = java.util.Collections.unmodifiableMap(copy);
    }

    /** The limit, in the tolerance's unit. */
    public double of(Tolerance tolerance) {
        return java.util.Objects.requireNonNull(limits.get(tolerance));
    }
}
