package akin.model.rig;

import akin.model.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The cable between a body and its recorder.
 *
 * @param length its length
 * @param carries the length up to which its maker says that it carries the signal; null when nobody has asked yet
 */
public record Cable(@Nullable Length length, @Nullable Length carries) {}
