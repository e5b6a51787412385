package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.exposure.Light;
import akin.model.rig.Levels;
import akin.model.rig.Reading;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.List;

/**
 * How many stops over middle grey a unit holds, by the level at which its highlights stopped rising, beside what is
 * planned.
 *
 * @param unitName name of the unit
 * @param stops stops over middle grey, read
 * @param planned stops over middle grey that its facts promise
 * @param give stops by which the reading may be off
 */
public record MeasuredHeadroom(String unitName, double stops, double planned, double give) implements Derived {

    /** The headroom, or what is missing for it; nothing where no unit's clip was read. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (!ReadLight.asked(rig, one -> one.clip() != null)) {
            return List.of();
        }
        Reading reading = rig.reading(unit);
        Levels clip = reading == null ? null : reading.clip();
        Inputs inputs = ReadLight.encoding(Inputs.of(MeasuredHeadroom.class, unit), unit);
        ReadLight.reading(inputs, unit, "clip", clip);
        return ToneRange.require(inputs, unit).derive(() -> of(unit, requireNonNull(clip)));
    }

    private static MeasuredHeadroom of(Unit unit, Levels clip) {
        Encoding encoding = requireNonNull(unit.encoding());
        double light = ReadLight.some(encoding.decode(clip.highest()));
        double brighter = ReadLight.some(encoding.decode(clip.highest() + clip.give()));
        return new MeasuredHeadroom(
                unit.name(),
                Light.stops(light / Encoding.MIDDLE_GREY),
                requireNonNull(ToneRange.known(unit)).headroom(),
                Light.stops(brighter / light));
    }

    /** Stops that it holds less than planned, for certain. */
    public double surelyShort() {
        return Math.max(0, planned - stops - give);
    }
}
