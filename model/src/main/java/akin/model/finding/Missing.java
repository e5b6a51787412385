package akin.model.finding;

import org.jspecify.annotations.Nullable;

/**
 * A fact that could not be derived for a unit, since one input is not known.
 *
 * @param fact name of the derived fact, such as {@code exposure-time}
 * @param unit name of the unit
 * @param clip name of the clip that the fact is of; null when it is of the unit itself
 * @param path dotted path of the input that is not known, in the rig file, in the gear catalogue or in a clip
 * @param where where such an input is usually found
 */
public record Missing(String fact, String unit, @Nullable String clip, String path, WhereFound where) {

    /** A fact of the unit itself. */
    public Missing(String fact, String unit, String path, WhereFound where) {
        this(fact, unit, null, path, where);
    }
}
