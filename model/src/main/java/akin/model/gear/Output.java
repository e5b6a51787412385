package akin.model.gear;

import akin.model.quantity.FrameRate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A picture output of a body, towards a recorder.
 *
 * @param id the word a rig file uses for it
 * @param kind whether it carries raw values or a developed picture
 * @param bits bits a sample
 * @param chroma chroma sampling of a developed picture
 * @param encoding id of the encoding that this output forces, whatever the profile says; null when it follows the profile
 * @param gamut id of the gamut that this output forces, likewise
 * @param range the range of codes it sends
 * @param rates rates it carries, where fewer than the mode's
 */
public record Output(
        String id,
        Codec.@Nullable Kind kind,
        @Nullable Integer bits,
        @Nullable String chroma,
        @Nullable String encoding,
        @Nullable String gamut,
        @Nullable SignalRange range,
        @Nullable List<FrameRate> rates,
        @Nullable String source) {}
