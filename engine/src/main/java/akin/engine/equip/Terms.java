package akin.engine.equip;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a check goes by, beside the rig file.
 *
 * @param tolerance tolerance profile to use instead of the rig file's own; null: the rig file's
 * @param on the day for which waivers are looked at; null: end dates are not looked at
 */
public record Terms(@Nullable String tolerance, @Nullable LocalDate on) {

    /** The rig file's own tolerance, and no day. */
    public static final Terms OF_THE_RIG = new Terms(null, null);
}
