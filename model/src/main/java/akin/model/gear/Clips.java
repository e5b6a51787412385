package akin.model.gear;

import org.jspecify.annotations.Nullable;

/**
 * How a body or recorder writes its clips.
 *
 * @param limit after how long it ends a clip by itself
 * @param files how large a file may grow before it starts the next
 * @param names what the names of its clips begin with as it leaves the works
 */
public record Clips(
        @Nullable TimeLimit limit,
        @Nullable FileLimit files,
        @Nullable String names) {}
