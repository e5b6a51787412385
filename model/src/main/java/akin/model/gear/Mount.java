package akin.model.gear;

import akin.model.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A lens mount.
 *
 * @param id the word gear files use for it
 * @param flange distance from the mount's face to the image plane
 */
public record Mount(
        String id,
        @Nullable String name,
        @Nullable Length flange,
        @Nullable String source) {}
