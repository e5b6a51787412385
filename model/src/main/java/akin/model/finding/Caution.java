package akin.model.finding;

import org.jspecify.annotations.Nullable;

/**
 * Something in the plan that can hurt people or gear. It is no fault and has no severity: the sentence, from the page of its
 * rule, is said once in a report however often it applies, with every reason.
 *
 * @param rule id of the rule, such as {@code caution/mains}
 * @param unit name of the unit (the camera) that calls for it; null when a scene does
 * @param scene name of the scene that calls for it; null when a unit does
 * @param path dotted path of what calls for it
 * @param what what calls for it, in words
 */
public record Caution(
        String rule, @Nullable String unit, @Nullable String scene, String path, String what) {

    /** A caution that a unit calls for. */
    public static Caution ofUnit(String rule, String unit, String path, Object what) {
        return new Caution(rule, unit, null, path, what.toString());
    }

    /** A caution that a scene calls for. */
    public static Caution ofScene(String rule, String scene, String path, Object what) {
        return new Caution(rule, null, scene, path, what.toString());
    }

    /** The unit or the scene that calls for it, by its name. */
    public String where() {
        return unit != null ? unit : String.valueOf(scene);
    }
}
