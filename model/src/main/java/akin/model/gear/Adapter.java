package akin.model.gear;

import akin.model.quantity.Length;
import akin.model.quantity.Stops;
import org.jspecify.annotations.Nullable;

/**
 * What stands between a lens and a body of another mount, with or without optics that change the focal length.
 *
 * @param id the word a rig file uses for it
 * @param lensMount id of the mount on its lens side
 * @param bodyMount id of the mount on its body side
 * @param factor what it multiplies the focal length by; 1 without optics, under 1 for a reducer
 * @param light stops of light it takes beside the change of focal length; 0 when unknown to be any
 * @param circle largest image circle it passes on its body side
 * @param electronics true when iris and lens data pass through
 */
public record Adapter(
        String id,
        @Nullable String name,
        @Nullable String lensMount,
        @Nullable String bodyMount,
        @Nullable Double factor,
        @Nullable Stops light,
        @Nullable Length circle,
        @Nullable Boolean electronics,
        @Nullable String source) {

    /** The dotted path of one of its facts. */
    public String path(String key) {
        return "gear.adapters." + id + "." + key;
    }
}
