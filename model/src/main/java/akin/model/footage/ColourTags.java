package akin.model.footage;

import akin.model.gear.SignalRange;
import org.jspecify.annotations.Nullable;

/**
 * What a clip says its code values mean, in the words that ffprobe prints for the code points of ITU-T H.273.
 *
 * @param primaries colour primaries, such as {@code bt709}; null when left open
 * @param transfer transfer characteristics, such as {@code arib-std-b67}; null when left open
 * @param matrix matrix coefficients, such as {@code bt2020nc}; null when left open
 * @param range range of the codes; null when left open
 */
public record ColourTags(
        @Nullable String primaries,
        @Nullable String transfer,
        @Nullable String matrix,
        @Nullable SignalRange range) {}
