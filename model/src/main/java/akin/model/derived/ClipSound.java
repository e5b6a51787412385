package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.footage.Clip;
import akin.model.footage.Sound;
import akin.model.quantity.Frequency;
import akin.model.rig.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The sound of a clip beside the planned one. Only of units of which the plan says something of sound.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param recorded true when the clip has sound
 * @param wanted true when the plan says that it has
 * @param rate its sampling rate; null when it has none
 * @param planned the sampling rate planned; null when none is
 */
public record ClipSound(
        String unitName,
        String clip,
        boolean recorded,
        boolean wanted,
        @Nullable Frequency rate,
        @Nullable Frequency planned)
        implements ClipFact {

    /** The sound, or what is missing for it. */
    public static List<Object> derive(Unit unit, Clip clip) {
        Frequency planned = unit.sync().soundRate();
        boolean wanted = Boolean.TRUE.equals(unit.sync().scratch());
        if (planned == null && !wanted) {
            return List.of();
        }
        Sound sound = clip.sound();
        Inputs inputs = Inputs.of(ClipSound.class, unit, clip).clip("audio-rate", sound);
        if (sound != null && sound.recorded()) {
            inputs.clip("audio-rate", sound.rate());
        }
        return inputs.derive(() -> new ClipSound(
                unit.name(),
                clip.name(),
                requireNonNull(sound).recorded(),
                wanted,
                requireNonNull(sound).rate(),
                planned));
    }

    /** True when sound was planned and there is none. */
    public boolean silent() {
        return wanted && !recorded;
    }

    /** True when it is sampled at another rate than planned. */
    public boolean sampledOtherwise() {
        return rate != null && planned != null && !rate.equals(planned);
    }
}
