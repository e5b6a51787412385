package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.footage.Clip;
import akin.model.footage.Label;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.timing.Timecode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * From which timecode to which a clip runs.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param reel reel it says it is from; the unit's own name where it says none
 * @param take what was being shot; null when not said
 * @param rate frames per second
 * @param first frames from midnight to its first frame
 * @param frames how many it has
 * @param day frames from one midnight to the next
 */
public record ClipSpan(
        String unitName,
        String clip,
        String reel,
        @Nullable String take,
        BigFraction rate,
        long first,
        long frames,
        long day)
        implements ClipFact {

    /** The span, or what is missing for it. */
    public static List<Object> derive(Unit unit, Clip clip) {
        Label label = clip.timecode();
        BigFraction rate = clip.rate();
        int pictures = rate == null ? 1 : ClipTimecode.pictures(rate, clip.timecodeRate());
        BigFraction counted = rate == null ? null : rate.divide(pictures);
        OptionalLong first = label == null || counted == null ? OptionalLong.empty() : label.frameNumber(counted);
        Inputs inputs = Inputs.of(ClipSpan.class, unit, clip)
                .clip("timecode", label)
                .clip("rate", rate)
                .clip("frames", clip.frames());
        if (label != null && rate != null && first.isEmpty()) {
            // A label of another rate names no frame of this one.
            inputs.input(clip.path("timecode"), WhereFound.CLIP, null);
        }
        return inputs.derive(() -> new ClipSpan(
                unit.name(),
                clip.name(),
                clip.reel() == null ? unit.name() : requireNonNull(clip.reel()).toUpperCase(Locale.ROOT),
                clip.take(),
                requireNonNull(rate),
                pictures * first.orElseThrow(),
                requireNonNull(clip.frames()),
                pictures
                        * Timecode.framesPerDay(
                                requireNonNull(counted), requireNonNull(label).drop())));
    }

    /** How long it is, in seconds. */
    public double seconds() {
        return BigFraction.of(frames).divide(rate).doubleValue();
    }

    /** True when another begins on the very frame on which this one ends. */
    public boolean followedBy(ClipSpan next) {
        return rate.equals(next.rate) && (first + frames) % day == next.first;
    }

    /** Frames that two clips of one rate share. */
    long shared(ClipSpan other) {
        if (!rate.equals(other.rate)) {
            return 0;
        }
        long apart = Math.floorMod(other.first - first, day);
        long back = Math.floorMod(first - other.first, day);
        return Math.max(0, Math.max(Math.min(frames - apart, other.frames), Math.min(other.frames - back, frames)));
    }

    /** True when two units shot one take: both clips say so, or, where neither says, their timecodes meet. */
    boolean sameTake(ClipSpan other) {
        return take == null && other.take == null ? shared(other) > 0 : Objects.equals(take, other.take);
    }

    /** The spans of a rig, those that a body wrote one after the other of one take as one. */
    static List<ClipSpan> takes(Rig rig) {
        List<ClipSpan> takes = new ArrayList<>();
        for (ClipSpan span : of(rig)) {
            ClipSpan before = takes.isEmpty() ? null : takes.get(takes.size() - 1);
            if (before != null && before.continuedBy(span)) {
                takes.set(
                        takes.size() - 1,
                        new ClipSpan(
                                before.unitName,
                                before.clip,
                                before.reel,
                                before.take,
                                before.rate,
                                before.first,
                                before.frames + span.frames,
                                before.day));
            } else {
                takes.add(span);
            }
        }
        return takes;
    }

    private boolean continuedBy(ClipSpan next) {
        return unitName.equals(next.unitName)
                && reel.equals(next.reel)
                && Objects.equals(take, next.take)
                && followedBy(next);
    }

    /** The spans of all clips of a rig that are known, by unit, reel and time. */
    static List<ClipSpan> of(Rig rig) {
        List<ClipSpan> spans = new ArrayList<>();
        for (Unit unit : rig.units()) {
            rig.footage().stream()
                    .filter(clip -> clip.unitName().equals(unit.name()))
                    .flatMap(clip -> derive(unit, clip).stream())
                    .filter(ClipSpan.class::isInstance)
                    .map(ClipSpan.class::cast)
                    .sorted(Comparator.comparing(ClipSpan::reel)
                            .thenComparingLong(ClipSpan::first)
                            .thenComparing(ClipSpan::clip))
                    .forEach(spans::add);
        }
        return spans;
    }
}
