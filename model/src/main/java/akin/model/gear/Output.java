package akin.model.gear;

import akin.model.quantity.FrameRate;
import akin.model.quantity.PictureSize;
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
 * @param connector standard of its connector
 * @param picture pixels it sends, where not the mode's
 * @param overlays true when menus and frame lines can be switched into its picture; false when it is always clean
 * @param trigger true when it tells the recorder to start and stop
 * @param delay by how many frames its picture comes later than the sound and the timecode of the body
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
        @Nullable Connector connector,
        @Nullable PictureSize picture,
        @Nullable Boolean overlays,
        @Nullable Boolean trigger,
        @Nullable Double delay,
        @Nullable String source) {

    /** An output of which nothing is known of the way to the recorder. */
    public Output(
            String id,
            Codec.@Nullable Kind kind,
            @Nullable Integer bits,
            @Nullable String chroma,
            @Nullable String encoding,
            @Nullable String gamut,
            @Nullable SignalRange range,
            @Nullable List<FrameRate> rates,
            @Nullable String source) {
        this(id, kind, bits, chroma, encoding, gamut, range, rates, null, null, null, null, null, source);
    }
}
