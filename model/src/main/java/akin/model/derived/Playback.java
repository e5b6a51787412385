package akin.model.derived;

import akin.model.quantity.FrameRate;
import akin.model.rig.Production;
import akin.model.rig.Unit;
import java.util.List;

/**
 * A unit that runs off speed on purpose: slower or faster than life when it is played at the production's rate.
 *
 * @param unitName name of the unit
 * @param recorded the rate it records at
 * @param played the rate it is played at
 */
public record Playback(String unitName, FrameRate recorded, FrameRate played) implements Derived {

    /** The playback of a unit that is off speed on purpose; nothing for any other. */
    public static List<Object> derive(Production production, Unit unit) {
        return RatePlan.offSpeed(production, unit)
                ? List.of(new Playback(unit.name(), unit.rate(), production.rate()))
                : List.of();
    }

    /** Speed of movement on screen, in per cent of life: 100 x played / recorded. Arithmetic. */
    public double percentOfLife() {
        return played.fraction().divide(recorded.fraction()).multiply(100).doubleValue();
    }

    /**
     * Light that the same shutter angle loses against the production's rate, in stops: log2(recorded / played), negative for
     * an under-crank. Arithmetic.
     */
    public double stopsLost() {
        return Math.log(recorded.fraction().divide(played.fraction()).doubleValue()) / Math.log(2);
    }
}
