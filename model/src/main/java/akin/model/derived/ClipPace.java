package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.footage.Clip;
import akin.model.rig.Unit;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How evenly the frames of a clip come: the rate that they are stamped for beside their number over the time they take.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param stamped frames per second that they are stamped for
 * @param average frames over duration
 */
public record ClipPace(String unitName, String clip, BigFraction stamped, BigFraction average) implements ClipFact {

    /** The pace, or what is missing for it. */
    public static List<Object> derive(Unit unit, Clip clip) {
        return Inputs.of(ClipPace.class, unit, clip)
                .clip("rate", clip.rate())
                .clip("average-rate", clip.averageRate())
                .derive(() -> new ClipPace(
                        unit.name(), clip.name(), requireNonNull(clip.rate()), requireNonNull(clip.averageRate())));
    }

    /** How far the average is off, in per cent of what is stamped. Arithmetic. */
    public double wander() {
        return average.subtract(stamped).abs().divide(stamped).multiply(100).doubleValue();
    }
}
