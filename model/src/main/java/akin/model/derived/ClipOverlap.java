package akin.model.derived;

import akin.model.rig.Rig;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Two clips of one unit and reel whose timecodes overlap: one timecode then names two frames.
 *
 * @param unitName name of the unit
 * @param reel the reel
 * @param earlier name of the clip that begins first
 * @param later name of the other
 * @param frames frames that they share
 */
public record ClipOverlap(String unitName, String reel, String earlier, String later, long frames) {

    /**
     * The overlaps on each reel of a rig: each clip with the one before it that runs on longest, also where that began before
     * midnight. Clips of unlike rates or ways of counting are not compared.
     */
    public static List<ClipOverlap> among(Rig rig) {
        List<ClipOverlap> overlaps = new ArrayList<>();
        Map<List<Object>, List<ClipSpan>> tracks = new LinkedHashMap<>();
        for (ClipSpan span : ClipSpan.of(rig)) {
            tracks.computeIfAbsent(
                            List.of(span.unitName(), span.reel(), span.rate(), span.day()), track -> new ArrayList<>())
                    .add(span);
        }
        tracks.values().forEach(track -> overlaps.addAll(onOneTrack(track)));
        return overlaps;
    }

    /** Of one reel, in the order of their first frames. */
    private static List<ClipOverlap> onOneTrack(List<ClipSpan> spans) {
        List<ClipOverlap> overlaps = new ArrayList<>();
        ClipSpan running = null;
        long end = 0;
        for (ClipSpan span : spans) {
            long after = span.first() + span.frames() - span.day();
            if (after > end) {
                running = span;
                end = after;
            }
        }
        for (ClipSpan span : spans) {
            if (running != null && !running.equals(span) && end > span.first() && span.frames() > 0) {
                long shared = Math.min(end, span.first() + span.frames()) - span.first();
                overlaps.add(new ClipOverlap(span.unitName(), span.reel(), running.clip(), span.clip(), shared));
            }
            if (running == null || span.first() + span.frames() > end) {
                running = span;
                end = span.first() + span.frames();
            }
        }
        return overlaps;
    }
}
