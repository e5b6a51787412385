package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.quantity.Timespan;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Takes;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a unit is planned to record in the scenes that it shoots.
 *
 * @param longestMinutes the longest take of all scenes, in minutes; 0 when none is planned
 * @param scene name of the scene with the longest take
 * @param path dotted path of the longest take
 * @param unknown dotted path of a longest take that is not planned where others are; null when there is none
 * @param totalMinutes all scenes together, in minutes; a scene of which only its longest take is known counts that
 */
public record PlannedTakes(
        double longestMinutes,
        String scene,
        String path,
        @Nullable String unknown,
        double totalMinutes) {

    private static final double MILLISECONDS = 60_000;

    /** What is planned for a unit. */
    static PlannedTakes of(Rig rig, Unit unit) {
        double longest = 0;
        double total = 0;
        String scene = "";
        String path = "";
        String unknown = null;
        for (Scene one : rig.scenes()) {
            Takes takes = one.takes();
            if (takes == null || !one.shotBy(unit.name())) {
                continue;
            }
            double take = minutes(takes.longest());
            total += Math.max(take, minutes(takes.total()));
            if (take == 0 && minutes(takes.total()) > 0 && unknown == null) {
                unknown = one.path("takes.longest");
            }
            if (take > longest) {
                longest = take;
                scene = one.name();
                path = one.path("takes.longest");
            }
        }
        return new PlannedTakes(longest, scene, path, unknown, total);
    }

    private static double minutes(@Nullable Timespan span) {
        return span == null ? 0 : span.milliseconds() / MILLISECONDS;
    }

    /** Names the longest take as needed, where it is not planned and takes are. */
    Inputs require(Inputs inputs) {
        return unknown == null ? inputs : inputs.input(unknown, WhereFound.PLAN, null);
    }

    /** True when nothing is planned. */
    boolean none() {
        return totalMinutes == 0;
    }

    /** The longest take cut to this many minutes, to the whole minute below; or what people can do instead. */
    static List<Fix> shorter(PlannedTakes takes, double minutes, String otherwise) {
        List<Fix> fixes = new ArrayList<>();
        double whole = Math.floor(minutes);
        if (whole >= 1) {
            Timespan take = new Timespan(whole * MILLISECONDS);
            fixes.add(Fix.set("shorter-take", takes.path(), take).with("take", null, take));
        }
        fixes.add(Fix.advise(otherwise));
        return fixes;
    }
}
