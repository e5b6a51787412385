package akin.model.finding;

/**
 * A fact that could not be derived for a unit, since one input is not known.
 *
 * @param fact name of the derived fact, such as {@code exposure-time}
 * @param unit name of the unit
 * @param path dotted path of the input that is not known, in the rig file or in the gear catalogue
 * @param where where such an input is usually found
 */
public record Missing(String fact, String unit, String path, WhereFound where) {}
