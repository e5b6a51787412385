package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.footage.Clip;
import akin.model.footage.Sound;
import akin.model.rig.Unit;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How long the picture of a clip is beside its sound.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param frames how many frames it has
 * @param rate frames per second
 * @param soundSeconds how long its sound is; 0 when it has none
 */
public record ClipLength(String unitName, String clip, long frames, BigFraction rate, BigFraction soundSeconds)
        implements ClipFact {

    /** The length, or what is missing for it. */
    public static List<Object> derive(Unit unit, Clip clip) {
        Sound sound = clip.sound();
        BigFraction seconds =
                sound == null || sound.recorded() ? (sound == null ? null : sound.seconds()) : BigFraction.ZERO;
        return Inputs.of(ClipLength.class, unit, clip)
                .clip("frames", clip.frames())
                .clip("rate", clip.rate())
                .clip("audio-seconds", seconds)
                .derive(() -> new ClipLength(
                        unit.name(),
                        clip.name(),
                        requireNonNull(clip.frames()),
                        requireNonNull(clip.rate()),
                        requireNonNull(seconds)));
    }

    /** True when there is no picture. */
    public boolean empty() {
        return frames == 0;
    }

    /** Frames that the picture ends before the sound; negative when it ends later. Arithmetic. */
    public double framesShort() {
        return soundSeconds.multiply(rate).subtract(BigFraction.of(frames)).doubleValue();
    }
}
