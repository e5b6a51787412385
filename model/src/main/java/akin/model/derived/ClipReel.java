package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.footage.Clip;
import akin.model.rig.Unit;
import java.util.List;

/**
 * By what a clip is called: its reel, and the name of its file.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param reel reel it says it is from
 */
public record ClipReel(String unitName, String clip, String reel) implements ClipFact {

    /** The reel, or what is missing for it. */
    public static List<Object> derive(Unit unit, Clip clip) {
        return Inputs.of(ClipReel.class, unit, clip)
                .clip("reel", clip.reel())
                .derive(() -> new ClipReel(unit.name(), clip.name(), requireNonNull(clip.reel())));
    }
}
