package akin.model.rig;

import akin.model.quantity.Energy;
import akin.model.quantity.Power;
import akin.model.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * What a unit runs on.
 *
 * @param voltage its nominal voltage
 * @param energy what it holds, full
 * @param gives the most that it, its plate and its cable may give without a break
 * @param spares how many more of it come along
 * @param byAir true when they travel on a passenger aircraft
 */
public record Battery(
        @Nullable Voltage voltage,
        @Nullable Energy energy,
        @Nullable Power gives,
        @Nullable Integer spares,
        @Nullable Boolean byAir) {

    /** Checks the number of spares. */
    public Battery {
        if (spares != null && spares < 0) {
            throw new IllegalArgumentException("read " + spares + "; spares are 0 or more");
        }
    }
}
