package akin.model.gear;

import akin.model.quantity.Iso;
import akin.model.quantity.Stops;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A recording profile: the encoding it writes and how the body must be rated in it.
 *
 * @param id the word a rig file uses for it
 * @param encoding id of the encoding it writes
 * @param gamut id of the gamut it writes
 * @param isoFloor lowest ISO at which the encoding's highlight range is whole
 * @param isoBases native ISOs; empty when known to have none that matters
 * @param headroom stops from middle grey to clip at a native ISO; null when not known, which the curve's end does not
 *     tell: the sensor may clip before it
 * @param footroom stops from middle grey down to the usable floor at a native ISO
 * @param look true when a display look is burned in
 */
public record Profile(
        String id,
        @Nullable String encoding,
        @Nullable String gamut,
        @Nullable Iso isoFloor,
        @Nullable List<Iso> isoBases,
        @Nullable Stops headroom,
        @Nullable Stops footroom,
        @Nullable Boolean look,
        @Nullable String source) {}
