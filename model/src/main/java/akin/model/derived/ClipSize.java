package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.footage.Clip;
import akin.model.quantity.PictureSize;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The picture size of a clip beside the planned one: that of the mode, or of the output that feeds the recorder.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param planned pixels planned
 * @param found pixels stored
 */
public record ClipSize(String unitName, String clip, PictureSize planned, PictureSize found) implements ClipFact {

    /** The size, or what is missing for it. */
    public static List<Object> derive(Unit unit, Clip clip) {
        PictureSize planned = unit.recordedPicture();
        return Inputs.of(ClipSize.class, unit, clip)
                .mode("picture", WhereFound.SPEC_SHEET, planned)
                .clip("picture", clip.picture())
                .derive(() -> new ClipSize(
                        unit.name(), clip.name(), requireNonNull(planned), requireNonNull(clip.picture())));
    }

    /** True when it is another size. */
    public boolean differs() {
        return !planned.equals(found);
    }

    /** True when pixels that were planned are not there. */
    public boolean smaller() {
        return found.width() < planned.width() || found.height() < planned.height();
    }
}
