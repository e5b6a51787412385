package akin.model.rig;

import akin.model.gear.Adapter;
import akin.model.gear.Lens;
import akin.model.quantity.Aperture;
import akin.model.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A lens as it stands on a unit.
 *
 * @param lens the lens
 * @param focal focal length it is set to, before any adapter's optics; a prime's own
 * @param stop stop it is set to, as engraved on it
 * @param adapter what stands between it and the body, or null
 */
public record FittedLens(
        Lens lens,
        @Nullable Length focal,
        @Nullable Aperture stop,
        @Nullable Adapter adapter) {}
