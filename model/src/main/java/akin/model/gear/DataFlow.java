package akin.model.gear;

import akin.model.quantity.DataRate;
import akin.model.quantity.FrameRate;
import akin.model.quantity.PictureSize;
import org.jspecify.annotations.Nullable;

/**
 * How much data a codec writes.
 *
 * @param rate data rate, for the picture and frame rate given here
 * @param picture the picture it is stated for; null when it does not depend on the picture
 * @param at the frame rate it is stated for; null when it does not depend on the frame rate
 */
public record DataFlow(
        @Nullable DataRate rate,
        @Nullable PictureSize picture,
        @Nullable FrameRate at) {

    /**
     * Data rate for another picture and frame rate: in proportion to pixels and to frames, for each of the two that the
     * codec's own rate is stated for.
     *
     * <p>Arithmetic, for codecs with a fixed share of bits for each pixel. Check value: 220 Mbit/s at 1920x1080 and
     * 30000/1001 → 176 Mbit/s at 24000/1001.
     *
     * @param size the picture written
     * @param frames the frame rate written
     * @return bits per second; null when the rate is not known
     */
    public @Nullable Double bitsPerSecond(PictureSize size, FrameRate frames) {
        if (rate == null) {
            return null;
        }
        double bits = rate.bitsPerSecond();
        if (picture != null) {
            bits *= ((double) size.width() * size.height()) / ((double) picture.width() * picture.height());
        }
        return at == null ? (Double) bits : (Double) (bits * frames.perSecond() / at.perSecond());
    }
}
