package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.footage.Clip;
import akin.model.gear.Codec;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The bit depth of a clip beside that of the planned codec. Not of raw recordings, whose files pack photosite values in ways of
 * their own.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param planned bits a sample planned
 * @param found bits a sample stored
 */
public record ClipBits(String unitName, String clip, int planned, int found) implements ClipFact {

    /** The depth, or what is missing for it; nothing for raw. */
    public static List<Object> derive(Unit unit, Clip clip) {
        Codec codec = unit.recording().codec();
        if (codec != null && codec.kind() == Codec.Kind.RAW) {
            return List.of();
        }
        Inputs inputs = Inputs.of(ClipBits.class, unit, clip).setting(ChromaDetail.key(unit), codec);
        if (codec != null) {
            inputs.input(GradingRoom.path(unit, codec, "bits"), WhereFound.SPEC_SHEET, codec.bits());
        }
        return inputs.clip("bits", clip.bits())
                .derive(() -> new ClipBits(
                        unit.name(),
                        clip.name(),
                        requireNonNull(requireNonNull(codec).bits()),
                        requireNonNull(clip.bits())));
    }
}
