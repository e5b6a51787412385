package akin.model.derived;

import akin.model.colour.Gamut;
import akin.model.finding.Missing;
import akin.model.finding.Severity;
import akin.model.finding.WhereFound;
import akin.model.footage.Clip;
import akin.model.footage.TagPlan;
import akin.model.gear.Codec;
import akin.model.gear.Output;
import akin.model.gear.SignalRange;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One colour tag of a clip beside what the planned recording would carry. Not of raw recordings, which are developed later.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param what which tag it is, in words
 * @param planned the tag that goes with the plan; {@link TagPlan#NONE} where ITU-T H.273 has none for it
 * @param means what is planned, in words
 * @param found the tag in the clip
 * @param fits true when the tag goes with the plan
 */
public record ClipTag(
        String unitName, String clip, String what, String planned, String means, String found, boolean fits)
        implements ClipFact {

    /** The tags; for each that cannot be compared, what is missing for it. */
    public static List<Object> derive(Unit unit, Clip clip) {
        Codec codec = unit.recording().codec();
        if (codec != null && codec.kind() == Codec.Kind.RAW) {
            return List.of();
        }
        List<Object> facts = new ArrayList<>();
        for (Object fact : RecordedEncoding.derive(unit)) {
            facts.add(
                    fact instanceof RecordedEncoding recorded
                            ? transfer(unit, clip, recorded.encoding())
                            : of(fact, clip));
        }
        for (Object fact : RecordedGamut.derive(unit)) {
            if (fact instanceof RecordedGamut recorded) {
                facts.add(primaries(unit, clip, recorded.gamut()));
                facts.add(matrix(unit, clip, recorded.gamut()));
            } else {
                facts.add(of(fact, clip));
            }
        }
        SignalRange range = range(unit);
        if (range != null) {
            SignalRange found = clip.tags().range();
            facts.add(tag(
                    unit,
                    clip,
                    "range",
                    range.word(),
                    "codes in " + range.word() + " range",
                    found == null ? null : found.word(),
                    found == range));
        }
        return List.copyOf(facts);
    }

    private static Object transfer(Unit unit, Clip clip, Encoding encoding) {
        String planned = TagPlan.transfer(encoding.id());
        String found = clip.tags().transfer();
        return tag(
                unit,
                clip,
                "transfer",
                planned,
                encoding.name(),
                found,
                found != null && TagPlan.sameTransfer(planned, found));
    }

    private static Object primaries(Unit unit, Clip clip, Gamut gamut) {
        String planned = TagPlan.primaries(gamut.id());
        String found = clip.tags().primaries();
        return tag(unit, clip, "primaries", planned, gamut.name(), found, planned.equals(found));
    }

    private static Object matrix(Unit unit, Clip clip, Gamut gamut) {
        String primaries = TagPlan.primaries(gamut.id());
        String planned = TagPlan.matrix(primaries);
        String found = clip.tags().matrix();
        boolean named = !primaries.equals(TagPlan.NONE);
        return tag(
                unit,
                clip,
                "matrix",
                planned,
                "the matrix of large pictures",
                found,
                found != null && TagPlan.sameMatrix(planned, named, found));
    }

    /** What the file is planned to hold; only where the plan says it: of a signal to a recorder. */
    private static @Nullable SignalRange range(Unit unit) {
        Output output = unit.recording().output();
        return unit.recording().external() && output != null ? output.range() : null;
    }

    private static Object tag(
            Unit unit, Clip clip, String what, String planned, String means, @Nullable String found, boolean fits) {
        return found == null
                ? new Missing(Derived.nameOf(ClipTag.class), unit.name(), clip.name(), clip.path(what), WhereFound.CLIP)
                : new ClipTag(unit.name(), clip.name(), what, planned, means, found, fits);
    }

    private static Object of(Object missing, Clip clip) {
        Missing other = (Missing) missing;
        return new Missing(Derived.nameOf(ClipTag.class), other.unit(), clip.name(), other.path(), other.where());
    }

    /**
     * When it can still be put right. A tag of ordinary pictures on a camera log or gamut, for which there is none, is what most
     * cameras write and misleads nobody who knows it; any other may mean that another profile was recorded.
     */
    public Severity severity() {
        return planned.equals(TagPlan.NONE) && !TagPlan.highRange(found) ? Severity.ADVICE : Severity.FIXABLE;
    }

    /** The key under the unit that plans it. */
    public String key(Unit unit) {
        return what.equals("range") ? "recorder.output" : unit.profile() == null ? "recorder.output" : "profile";
    }

    /** The tag that goes with the plan, in words. */
    public String rightly() {
        return planned.equals(TagPlan.NONE) ? "no tag, since ITU-T H.273 has none for it" : planned;
    }
}
