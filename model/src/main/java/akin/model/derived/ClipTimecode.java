package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.footage.Clip;
import akin.model.footage.Label;
import akin.model.gear.TimecodeSource;
import akin.model.rig.SyncPlan.Counting;
import akin.model.rig.Unit;
import java.math.BigInteger;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * How the timecode of a clip counts. Only of units whose timecode is planned to be written into the file and common with
 * others.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param label timecode of the first frame
 * @param rate frames per second that it counts; null when the clip does not say
 * @param planned the counting planned; null when the plan does not say and there is but one way at its rate
 * @param picture frames per second of the picture
 */
public record ClipTimecode(
        String unitName,
        String clip,
        Label label,
        @Nullable BigFraction rate,
        @Nullable Counting planned,
        BigFraction picture)
        implements ClipFact {

    /** The timecode, or what is missing for it. */
    public static List<Object> derive(Unit unit, Clip clip) {
        TimecodeSource source = unit.sync().source();
        if (source == null || !source.common() || source == TimecodeSource.TRACK) {
            return List.of();
        }
        Inputs inputs = Inputs.of(ClipTimecode.class, unit, clip)
                .clip("timecode", clip.timecode())
                .clip("rate", clip.rate());
        for (Object fact : TimecodeCount.derive(unit)) {
            if (fact instanceof akin.model.finding.Missing missing) {
                inputs.missing(missing);
            }
        }
        return inputs.derive(() -> new ClipTimecode(
                unit.name(),
                clip.name(),
                requireNonNull(clip.timecode()),
                clip.timecodeRate(),
                unit.sync().counting(),
                requireNonNull(clip.rate())));
    }

    /** How it counts. */
    public Counting counting() {
        return label.drop() ? Counting.DROP : Counting.NON_DROP;
    }

    /** True when it is counted in the other way than planned. */
    public boolean countsOtherwise() {
        return planned != null && planned != counting();
    }

    /**
     * True when it counts another rate than the picture has: it says so, or its label is none of the picture's rate. Labels
     * count 24 for 24000/1001, so rates of one family are one; and pairs of pictures may be counted at 48, 50 and 60.
     */
    public boolean countsAnotherRate() {
        return rate == null
                ? BigInteger.valueOf(label.frame()).compareTo(nominal(picture)) >= 0
                : !nominal(rate.multiply(pictures(picture, rate))).equals(nominal(picture));
    }

    /**
     * Pictures to a label: two where timecode counts half of a picture rate of 48, 50 or 60, else one. Labels have no number over
     * 29, so at those rates they count pairs (SMPTE ST 12-1, from memory).
     *
     * @param counted frames per second that the timecode counts; null when the clip does not say
     */
    static int pictures(BigFraction picture, @Nullable BigFraction counted) {
        int whole = nominal(picture).intValue();
        return counted != null
                        && (whole == 48 || whole == 50 || whole == 60)
                        && nominal(counted).intValue() * 2 == whole
                ? 2
                : 1;
    }

    /** What it counts, in words. */
    public String counted() {
        return rate == null ? "a frame numbered " + label.frame() : Clip.spoken(rate) + " frames a second";
    }

    /** The next whole rate at or over this one: 24 for 24000/1001. */
    private static BigInteger nominal(BigFraction rate) {
        BigInteger[] parts = rate.getNumerator().divideAndRemainder(rate.getDenominator());
        return parts[1].signum() == 0 ? parts[0] : parts[0].add(BigInteger.ONE);
    }
}
