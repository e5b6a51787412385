package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.exposure.Light;
import akin.model.finding.WhereFound;
import akin.model.rig.Levels;
import akin.model.rig.Reading;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How many stops under middle grey a unit holds: down to where light is as strong as its noise, beside what is planned.
 *
 * <p>Source: CIE e-ILV, dynamic range (ISO 15739): the darkest luminance is the one at which the temporal signal-to-noise
 * ratio is 1. The noise is taken from the capped lens, as light of one standard deviation either way.
 *
 * @param unitName name of the unit
 * @param stops stops under middle grey, read
 * @param planned stops under middle grey that its facts promise
 * @param give stops by which the reading may be off
 */
public record MeasuredFloor(String unitName, double stops, double planned, double give) implements Derived {

    /** The floor, or what is missing for it; nothing where no unit's noise was read. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (!ReadLight.asked(rig, one -> one.black() != null)) {
            return List.of();
        }
        Reading reading = rig.reading(unit);
        Levels black = reading == null ? null : reading.black();
        Levels noise = reading == null ? null : reading.noise();
        Inputs inputs = ReadLight.encoding(Inputs.of(MeasuredFloor.class, unit), unit);
        ReadLight.reading(inputs, unit, "black", black);
        ToneRange.require(inputs, unit);
        ToneRange range = ToneRange.known(unit);
        Double planned = range == null ? null : range.footroom();
        if (range != null && unit.profile() != null) {
            inputs.body("profiles." + unit.profile().id() + ".footroom", WhereFound.TEST, planned);
        }
        return inputs.derive(() -> of(unit, requireNonNull(black), requireNonNull(noise), planned));
    }

    private static MeasuredFloor of(Unit unit, Levels black, Levels noise, @Nullable Double planned) {
        double at = stops(unit, black, noise.green());
        double give = at - stops(unit, black, noise.green() + noise.give());
        return new MeasuredFloor(unit.name(), at, requireNonNull(planned), give);
    }

    private static double stops(Unit unit, Levels black, double noise) {
        Encoding encoding = requireNonNull(unit.encoding());
        double light = (encoding.decode(black.green() + noise) - encoding.decode(black.green() - noise)) / 2;
        return Light.stops(Encoding.MIDDLE_GREY / ReadLight.some(light));
    }

    /** Stops that it holds less than planned, for certain. */
    public double surelyShort() {
        return Math.max(0, planned - stops - give);
    }
}
