package akin.engine.equip;

import akin.model.footage.Clip;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a check goes by, beside the rig file.
 *
 * @param tolerance tolerance profile to use instead of the rig file's own; null: the rig file's
 * @param on the day for which waivers are looked at; null: end dates are not looked at
 * @param footage clips that were shot, each of a unit of the rig file; empty when only the plan is looked at
 * @param readings what was read of test shots, in the place of what the rig file has; null: what the rig file has
 */
public record Terms(
        @Nullable String tolerance,
        @Nullable LocalDate on,
        List<Clip> footage,
        @Nullable ReadingsFile readings) {

    /** Copies the list. */
    public Terms {
        footage = List.copyOf(footage);
    }

    /** Terms for the plan alone. */
    public Terms(@Nullable String tolerance, @Nullable LocalDate on) {
        this(tolerance, on, List.of(), null);
    }

    /** The same terms, for clips that were shot. */
    public Terms with(List<Clip> shot) {
        return new Terms(tolerance, on, shot, readings);
    }

    /** The same terms, with what was read of test shots. */
    public Terms with(ReadingsFile read) {
        return new Terms(tolerance, on, footage, read);
    }

    /** The rig file's own tolerance, and no day. */
    public static final Terms OF_THE_RIG = new Terms(null, null);
}
