package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.colour.Chart;
import akin.model.exposure.Light;
import akin.model.rig.Levels;
import akin.model.rig.Reading;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far the white that was shot stays under the level at which a unit's highlights clip.
 *
 * @param unitName name of the unit
 * @param stops stops left; 0 or less at clip
 * @param give stops by which that may be off
 * @param measured true when the clip was read too; false when it is the planned one
 */
public record MeasuredRoom(String unitName, double stops, double give, boolean measured) implements Derived {

    /** The room, or what is missing for it; nothing where no unit's white was read. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (!ReadLight.asked(rig, one -> white(one) != null)) {
            return List.of();
        }
        Reading reading = rig.reading(unit);
        Levels white = reading == null ? null : white(reading);
        Levels clip = reading == null ? null : reading.clip();
        Inputs inputs = ReadLight.encoding(Inputs.of(MeasuredRoom.class, unit), unit);
        ReadLight.reading(inputs, unit, "white", white);
        if (clip == null) {
            ToneRange.require(inputs, unit);
        }
        return inputs.derive(() -> of(unit, requireNonNull(white), clip));
    }

    private static @Nullable Levels white(Reading reading) {
        if (reading.white() != null) {
            return reading.white();
        }
        return reading.patches().isEmpty() ? null : reading.patches().get(Chart.FIRST_GREY);
    }

    private static MeasuredRoom of(Unit unit, Levels white, @Nullable Levels clip) {
        Encoding encoding = requireNonNull(unit.encoding());
        double top = clip == null
                ? Encoding.MIDDLE_GREY
                        * Light.ratio(requireNonNull(ToneRange.known(unit)).headroom())
                : encoding.decode(clip.highest());
        double light = ReadLight.some(encoding.decode(white.highest()));
        double brighter = ReadLight.some(encoding.decode(white.highest() + white.give()));
        double give = Light.stops(brighter / light);
        if (clip != null) {
            give += Light.stops(encoding.decode(clip.highest() + clip.give()) / ReadLight.some(top));
        }
        return new MeasuredRoom(unit.name(), Light.stops(ReadLight.some(top) / light), give, clip != null);
    }

    /** The most stops that can be left, as the levels were read. */
    public double atMost() {
        return stops + give;
    }

    /** Stops that are wanted for the room that must be left, at least. */
    public double missing(Tolerances limits) {
        return limits.of(Tolerance.PROOF_ROOM) - atMost();
    }
}
