package akin.model.finding;

import org.jspecify.annotations.Nullable;

/**
 * One piece of evidence in a finding. {@code unitOf} names the unit (the camera) it belongs to; it is null for a value
 * that belongs to the comparison itself, such as a ratio or a tolerance.
 */
public sealed interface Value {

    /** Kebab-case name, such as {@code exposure-time}. */
    String name();

    /** The unit (camera) that the value belongs to, or null when it belongs to no single one. */
    @Nullable
    String unitOf();

    /**
     * A number with its physical unit.
     *
     * @param unit symbol of the physical unit ({@code ms}, {@code %}, {@code stops}); empty for a plain number
     */
    record Quantity(String name, @Nullable String unitOf, double value, String unit) implements Value {
        /** Rejects NaN; infinity is allowed (a far limit of focus). */
        public Quantity {
            if (Double.isNaN(value)) {
                throw new IllegalArgumentException(name + " is not a number");
            }
        }
    }

    /** A word: a setting as its menu writes it, the name of an encoding. */
    record Word(String name, @Nullable String unitOf, String text) implements Value {}
}
