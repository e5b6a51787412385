package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.colour.Chart;
import akin.model.exposure.Light;
import akin.model.rig.Levels;
import akin.model.rig.Reading;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a unit exposed the grey that was shot: log2 of its light over what an 18 % card, or the grey patch of the chart, gives
 * at the right exposure.
 *
 * @param unitName name of the unit
 * @param stops stops over; negative when under
 * @param give stops by which that may be off, as the levels were read
 */
public record MeasuredGrey(String unitName, double stops, double give) implements Derived {

    /** The exposure, or what is missing for it; nothing where no unit's grey was read. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (!ReadLight.asked(rig, one -> levels(one) != null)) {
            return List.of();
        }
        Reading reading = rig.reading(unit);
        Levels levels = reading == null ? null : levels(reading);
        Inputs inputs = ReadLight.encoding(Inputs.of(MeasuredGrey.class, unit), unit);
        return ReadLight.reading(inputs, unit, "grey", levels).derive(() -> of(rig, unit, requireNonNull(levels)));
    }

    private static @Nullable Levels levels(Reading reading) {
        if (reading.grey() != null) {
            return reading.grey();
        }
        return reading.patches().isEmpty() ? null : reading.patches().get(Chart.CARD);
    }

    private static MeasuredGrey of(Rig rig, Unit unit, Levels levels) {
        boolean card = requireNonNull(rig.reading(unit)).grey() != null;
        double should = card
                ? Encoding.MIDDLE_GREY
                : requireNonNull(requireNonNull(rig.readings()).chart())
                        .patches()
                        .get(Chart.CARD)
                        .xyz()[1];
        double at = stops(unit, levels, 0, should);
        double up = stops(unit, levels, levels.give(), should) - at;
        double down = at - stops(unit, levels, -levels.give(), should);
        return new MeasuredGrey(unit.name(), at, Math.max(up, down));
    }

    private static double stops(Unit unit, Levels levels, double moved, double should) {
        Levels all = levels.moved(0, moved).moved(1, moved).moved(2, moved);
        return Light.stops(ReadLight.some(ReadLight.luminance(unit, all)) / should);
    }

    /** Stops brighter than another; negative when darker. */
    public double stopsFrom(MeasuredGrey other) {
        return stops - other.stops;
    }

    /** Stops by which {@link #stopsFrom} may be off, both readings being off the worst way. */
    public double giveFrom(MeasuredGrey other) {
        return give + other.give;
    }

    /** Stops apart for certain: nothing within the give is claimed. */
    public double surely(MeasuredGrey other) {
        return Math.max(0, Math.abs(stopsFrom(other)) - giveFrom(other));
    }
}
