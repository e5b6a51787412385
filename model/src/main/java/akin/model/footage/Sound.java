package akin.model.footage;

import akin.model.quantity.Frequency;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * The sound in a clip.
 *
 * @param recorded false when the clip is known to have none
 * @param rate its sampling rate; null when not known or none
 * @param seconds how long it is; null when not known or none
 */
public record Sound(
        boolean recorded,
        @Nullable Frequency rate,
        @Nullable BigFraction seconds) {}
