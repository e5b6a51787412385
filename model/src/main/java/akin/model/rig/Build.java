package akin.model.rig;

import akin.model.quantity.Mass;
import akin.model.quantity.Power;
import akin.model.quantity.Timespan;
import org.jspecify.annotations.Nullable;

/**
 * How a unit is built up: what drives it and what carries it.
 *
 * @param firmware version on the body, as its menu shows it
 * @param accessories mass of everything on the support beside body, lens and recorder: cage, mattebox, battery, cables
 * @param draws power of everything that hangs on the same supply beside body and recorder
 * @param battery what it runs on
 * @param runs how long one battery has to last
 * @param rating mass that the support is rated for
 * @param standing where it is held
 */
public record Build(
        @Nullable String firmware,
        @Nullable Mass accessories,
        @Nullable Power draws,
        @Nullable Battery battery,
        @Nullable Timespan runs,
        @Nullable Mass rating,
        @Nullable Standing standing) {}
