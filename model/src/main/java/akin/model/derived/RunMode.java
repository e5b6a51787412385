package akin.model.derived;

import akin.model.finding.Missing;
import akin.model.gear.TimecodeSource;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the timecode of a unit ran on between its clips, as common timecode does, or stood still. Only of units that are
 * planned to have common timecode in their files, and that shot two clips or more.
 *
 * @param unitName name of the unit
 * @param clips names of its clips in the order of their timecode
 * @param stood true when every clip begins on the frame on which the one before it ends
 */
public record RunMode(String unitName, List<String> clips, boolean stood) implements Derived {

    /** The run mode, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        TimecodeSource source = unit.sync().source();
        List<ClipSpan> spans = new ArrayList<>();
        List<Object> missing = new ArrayList<>();
        long clips = rig.footage().stream()
                .filter(clip -> clip.unitName().equals(unit.name()))
                .count();
        if (source == null || !source.common() || source == TimecodeSource.TRACK || clips < 2) {
            return List.of();
        }
        rig.footage().stream()
                .filter(clip -> clip.unitName().equals(unit.name()))
                .flatMap(clip -> ClipSpan.derive(unit, clip).stream())
                .forEach(fact -> {
                    if (fact instanceof ClipSpan span) {
                        spans.add(span);
                    } else if (fact instanceof Missing gap) {
                        missing.add(new Missing(Derived.nameOf(RunMode.class), unit.name(), gap.path(), gap.where()));
                    }
                });
        if (!missing.isEmpty()) {
            return List.copyOf(missing);
        }
        spans.sort(java.util.Comparator.comparingLong(ClipSpan::first).thenComparing(ClipSpan::clip));
        boolean stood = true;
        for (int i = 1; i < spans.size(); i++) {
            stood &= spans.get(i - 1).followedBy(spans.get(i));
        }
        return List.of(
                new RunMode(unit.name(), spans.stream().map(ClipSpan::clip).toList(), stood));
    }

    /** How many clips there are. */
    public int count() {
        return clips.size();
    }
}
