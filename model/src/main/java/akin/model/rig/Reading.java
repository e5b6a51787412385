package akin.model.rig;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the crew read of one unit's test shots.
 *
 * @param grey an 18 % grey card; null when not read
 * @param white a white patch or sheet; null when not read
 * @param clip the level at which highlights stop rising; null when not read
 * @param black the lens capped, or a black trap; null when not read
 * @param noise standard deviation of the level around {@code black}, with its own give; null when not read
 * @param patches the 24 patches of a chart in their order; empty when not read
 * @param spread how even the patches were, where they were sampled from a frame: the widest standard deviation inside one,
 *     as a share of the full code range; null when they were typed
 */
public record Reading(
        @Nullable Levels grey,
        @Nullable Levels white,
        @Nullable Levels clip,
        @Nullable Levels black,
        @Nullable Levels noise,
        List<Levels> patches,
        @Nullable Double spread) {

    /** Copies the list. */
    public Reading {
        patches = List.copyOf(patches);
    }
}
