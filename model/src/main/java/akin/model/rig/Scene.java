package akin.model.rig;

import akin.model.quantity.AngularSpeed;
import akin.model.quantity.Frequency;
import akin.model.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A scene as far as it bears on matching.
 *
 * @param index its place in the rig file, from 0
 * @param name its name
 * @param subjectDistance from the image plane to the subject
 * @param lights the kinds of light in it; null when not said
 * @param pan speed of the fastest planned pan
 * @param mains mains frequency where this scene is shot, if not the production's
 * @param units names of the units that shoot it; empty: all
 */
public record Scene(
        int index,
        String name,
        @Nullable Length subjectDistance,
        @Nullable List<LightKind> lights,
        @Nullable AngularSpeed pan,
        @Nullable Frequency mains,
        List<String> units) {

    /** The dotted path of one of its keys. */
    public String path(String key) {
        return "scenes." + index + "." + key;
    }

    /** True when this unit shoots it. */
    public boolean shotBy(String unit) {
        return units.isEmpty() || units.contains(unit);
    }
}
