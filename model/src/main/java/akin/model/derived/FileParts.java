package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Clips;
import akin.model.gear.FileLimit;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Into how many files the longest take of a unit is split. Only where takes are planned.
 *
 * @param unitName name of the unit
 * @param files number of files, 1 or more
 * @param takes what is planned
 */
public record FileParts(String unitName, long files, PlannedTakes takes) implements Derived {

    /** The number of files, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        PlannedTakes takes = PlannedTakes.of(rig, unit);
        if (takes.none()) {
            return List.of();
        }
        Clips clips = TakeEnd.clips(unit);
        FileLimit limit = clips == null ? null : clips.files();
        if (limit != null && limit.bytes() == null) {
            return List.of(new FileParts(unit.name(), 1, takes));
        }
        List<Object> parts = needed(unit, limit)
                .derive(() -> new FileParts(
                        unit.name(),
                        requireNonNull(limit).files(takes.longestMinutes() * 60 * WrittenData.bits(unit) / 8),
                        takes));
        // Of takes that are not planned it is only asked where those that are fit into one file.
        boolean split = parts.get(0) instanceof FileParts known && known.files > 1;
        return split || takes.unknown() == null
                ? parts
                : takes.require(needed(unit, limit)).derive(() -> {
                    throw new IllegalStateException("a take of " + unit.name() + " is not planned");
                });
    }

    private static Inputs needed(Unit unit, @Nullable FileLimit limit) {
        return WrittenData.flow(Inputs.of(FileParts.class, unit), unit)
                .input(TakeEnd.clipsPath(unit, "files"), WhereFound.MANUAL, limit);
    }
}
