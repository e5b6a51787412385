package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.footage.Clip;
import akin.model.rig.Production;
import akin.model.rig.Unit;
import akin.model.timing.FrameDrift;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The frame rate of a clip beside the planned one. A body that runs off speed on purpose may write either the rate at which it
 * recorded or the one at which it is played.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param planned frames per second planned
 * @param played frames per second at which it is to be played
 * @param found frames per second that its frames are stamped for
 * @param path dotted path of the setting that plans it: the unit's own rate, or the production's
 */
public record ClipRate(
        String unitName, String clip, BigFraction planned, BigFraction played, BigFraction found, String path)
        implements ClipFact {

    /** The rate, or what is missing for it. */
    public static List<Object> derive(Production production, Unit unit, Clip clip) {
        BigFraction planned = unit.rate().fraction();
        BigFraction played =
                RatePlan.offSpeed(production, unit) ? production.rate().fraction() : planned;
        String path = unit.rate().equals(production.rate()) ? "production.rate" : unit.path("rate");
        return Inputs.of(ClipRate.class, unit, clip)
                .clip("rate", clip.rate())
                .derive(() ->
                        new ClipRate(unit.name(), clip.name(), planned, played, requireNonNull(clip.rate()), path));
    }

    /** True when it is another rate, compared as exact fractions: 24 is not 24000/1001. */
    public boolean differs() {
        return !found.equals(planned) && !found.equals(played);
    }

    /** Seconds until it is a frame apart from the plan, played beside it. */
    public double slip() {
        return FrameDrift.secondsPerFrameSlip(found, planned);
    }

    /** Frames that it is apart from the plan after an hour. */
    public double anHour() {
        return FrameDrift.framesPerHour(found, planned);
    }
}
