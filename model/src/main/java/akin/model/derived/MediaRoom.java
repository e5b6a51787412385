package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Media;
import akin.model.quantity.DataSize;
import akin.model.quantity.Timespan;
import akin.model.rig.MediaPlan;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;

/**
 * How long the media of a unit record, and how long they have to. Only where both media and takes are planned.
 *
 * @param unitName name of the unit
 * @param minutesEach minutes that one of its cards or drives holds
 * @param count how many it has
 * @param takes what is planned
 */
public record MediaRoom(String unitName, double minutesEach, int count, PlannedTakes takes) implements Derived {

    /** The room, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        MediaPlan plan = unit.media();
        PlannedTakes takes = PlannedTakes.of(rig, unit);
        if (plan == null || takes.none()) {
            return List.of();
        }
        Media media = plan.media();
        return WrittenData.flow(Inputs.of(MediaRoom.class, unit), unit)
                .input(media.path("capacity"), WhereFound.SPEC_SHEET, media.capacity())
                .derive(() -> new MediaRoom(
                        unit.name(),
                        minutes(requireNonNull(media.capacity()), WrittenData.bits(unit)),
                        plan.count(),
                        takes));
    }

    /** Minutes of a data rate that a size holds: bytes · 8 / (60 · bit/s). Arithmetic. */
    static double minutes(DataSize size, double bitsPerSecond) {
        return size.bytes() * 8 / bitsPerSecond / 60;
    }

    /** Minutes of a take that fit on one card with this much to spare. */
    public double longestTake(double sparePercent) {
        return minutesEach / (1 + sparePercent / 100);
    }

    /** True when the longest take does not fit on one card with this much to spare. */
    public boolean takeTooLong(double sparePercent) {
        return takes.longestMinutes() > longestTake(sparePercent);
    }

    /** Cards or drives that all takes need, with this much to spare. */
    public long needed(double sparePercent) {
        return (long) Math.ceil(takes.totalMinutes() * (1 + sparePercent / 100) / minutesEach);
    }

    /** The longest take, in words. */
    public String plannedTake() {
        return "a take of " + new Timespan(takes.longestMinutes() * 60_000) + " in " + takes.scene();
    }

    /** All takes, in words. */
    public String plannedInAll() {
        return new Timespan(takes.totalMinutes() * 60_000) + " in all";
    }

    /** A take as long as fits, to the whole minute; or media that hold more. Keys: shorter-take, larger. */
    public List<Fix> fixesOfTake(double sparePercent) {
        return PlannedTakes.shorter(takes, longestTake(sparePercent), "larger");
    }

    /** As many cards as the takes need; or copying by day. Keys: more-media, copy. */
    public List<Fix> fixesOfCount(Unit unit, double sparePercent) {
        return List.of(
                Fix.set("more-media", unit.path("media.count"), needed(sparePercent))
                        .with("count", null, needed(sparePercent)),
                Fix.advise("copy"));
    }
}
