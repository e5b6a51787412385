package akin.model.derived;

import akin.model.rig.Rig;
import java.util.ArrayList;
import java.util.List;

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

    /** The overlaps of neighbours on each reel of a rig. */
    public static List<ClipOverlap> among(Rig rig) {
        List<ClipOverlap> overlaps = new ArrayList<>();
        List<ClipSpan> spans = ClipSpan.of(rig);
        for (int i = 1; i < spans.size(); i++) {
            ClipSpan a = spans.get(i - 1);
            ClipSpan b = spans.get(i);
            if (a.unitName().equals(b.unitName()) && a.reel().equals(b.reel()) && a.shared(b) > 0) {
                overlaps.add(new ClipOverlap(a.unitName(), a.reel(), a.clip(), b.clip(), a.shared(b)));
            }
        }
        return overlaps;
    }
}
