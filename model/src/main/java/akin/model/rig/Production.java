package akin.model.rig;

import akin.model.quantity.FrameRate;
import akin.model.quantity.Frequency;
import akin.model.quantity.Timespan;
import org.jspecify.annotations.Nullable;

/**
 * What the whole production has agreed.
 *
 * @param name its name
 * @param rate the frame rate that units record at unless they say otherwise
 * @param mains frequency of the mains where it is shot
 * @param jamEvery time from one setting of the clocks to the next
 * @param delivery what it is delivered as
 */
public record Production(
        String name,
        FrameRate rate,
        @Nullable Frequency mains,
        @Nullable Timespan jamEvery,
        @Nullable Delivery delivery) {}
