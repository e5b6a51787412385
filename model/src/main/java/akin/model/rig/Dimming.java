package akin.model.rig;

import akin.model.quantity.Frequency;
import akin.model.quantity.Percent;
import org.jspecify.annotations.Nullable;

/**
 * Light that is dimmed by switching it on and off fast, as drivers of light-emitting diodes do.
 *
 * @param frequency how often a second it is switched on; null when nobody has asked yet
 * @param duty the part of each cycle that it is on, over 0 to 100 per cent; null when nobody has asked yet
 */
public record Dimming(
        @Nullable Frequency frequency, @Nullable Percent duty) {

    /** Checks the part. */
    public Dimming {
        if (duty != null && !(duty.value() > 0 && duty.value() <= 100)) {
            throw new IllegalArgumentException(
                    "read " + duty + "; light is on for over 0 % and up to 100 % of a cycle");
        }
    }
}
