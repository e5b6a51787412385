package akin.model.rig;

import akin.model.quantity.Frequency;
import org.jspecify.annotations.Nullable;

/**
 * A display or a wall of light-emitting diodes that is in the picture.
 *
 * @param name what people call it; null when it needs no name
 * @param refresh how often a second it is drawn anew; null when nobody has asked yet
 */
public record Screen(@Nullable String name, @Nullable Frequency refresh) {

    /** What to call it in a sentence. */
    public String called() {
        return name == null ? "screen" : name;
    }
}
