package akin.model.footage;

import akin.model.quantity.FrameRate;
import akin.model.quantity.PictureSize;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A shot clip, as its file describes itself. What it does not say is null, and is never taken for what was planned.
 *
 * @param unitName name of the unit that shot it
 * @param name name of its file as reports say it, without the way there; no two clips of a call have the same
 * @param file name of its file as the edit sees it
 * @param reel reel or card that it says it is from
 * @param take what was being shot, for clips of several units that belong together
 * @param rate frames per second that its frames are stamped for
 * @param averageRate frames over duration
 * @param picture pixels stored
 * @param pixelShape width over height of a pixel, 1 for square
 * @param bits bits a sample
 * @param tags what its code values mean
 * @param scan how its lines were scanned
 * @param timecode timecode of its first frame
 * @param timecodeRate frames per second that its timecode counts
 * @param frames how many frames it has, 0 or more
 * @param seconds how long its picture is
 * @param sound its sound; null when not known whether it has any
 */
public record Clip(
        String unitName,
        String name,
        String file,
        @Nullable String reel,
        @Nullable String take,
        @Nullable BigFraction rate,
        @Nullable BigFraction averageRate,
        @Nullable PictureSize picture,
        @Nullable BigFraction pixelShape,
        @Nullable Integer bits,
        ColourTags tags,
        @Nullable Scan scan,
        @Nullable Label timecode,
        @Nullable BigFraction timecodeRate,
        @Nullable Long frames,
        @Nullable BigFraction seconds,
        @Nullable Sound sound) {

    /** The dotted path by which reports name something that a clip says of itself. */
    public String path(String column) {
        return "footage." + name + "." + column;
    }

    /** A rate as people say it: "23.976", "24"; others to three decimals. */
    public static String spoken(BigFraction rate) {
        return rate.getDenominator().bitLength() < Integer.SIZE
                        && rate.getNumerator().bitLength() < Integer.SIZE
                        && inRange(rate)
                ? FrameRate.of(
                                rate.getNumerator().longValue(),
                                rate.getDenominator().longValue())
                        .spoken()
                : rate.bigDecimalValue(3, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private static boolean inRange(BigFraction rate) {
        return rate.compareTo(BigFraction.ONE) >= 0
                && rate.compareTo(BigFraction.of(2000)) <= 0
                && rate.getNumerator().longValue() <= 999_999_999L
                && rate.getDenominator().longValue() <= 999_999_999L;
    }
}
