package akin.model.rig;

import akin.model.gear.Codec;
import akin.model.gear.Input;
import akin.model.gear.Output;
import akin.model.gear.Profile;
import akin.model.gear.Recorder;
import akin.model.gear.SignalRange;
import org.jspecify.annotations.Nullable;

/**
 * Where the picture of a unit is written.
 *
 * @param recorder the external recorder; null when recorded inside the body
 * @param output the body's output that feeds it; null when recorded inside or not said
 * @param codec what is written; null when not said
 * @param reads the range of codes the recorder is set to take; null when not said
 * @param input the recorder's input; null when recorded inside, or when not said and there are several
 * @param cable the cable between them; null when not said
 * @param overlays true when menus or frame lines are switched on in the output; null when not said
 * @param startStop true when the body is to start and stop the recorder; null when not said
 */
public record Recording(
        @Nullable Recorder recorder,
        @Nullable Output output,
        @Nullable Codec codec,
        @Nullable SignalRange reads,
        @Nullable Input input,
        @Nullable Cable cable,
        @Nullable Boolean overlays,
        @Nullable Boolean startStop) {

    /** A recording of which the way to the recorder is not planned. */
    public Recording(
            @Nullable Recorder recorder, @Nullable Output output, @Nullable Codec codec, @Nullable SignalRange reads) {
        this(recorder, output, codec, reads, null, null, null, null);
    }

    /** Id of the encoding that ends up in the file: the one its output forces, else the profile's; null when not known. */
    public @Nullable String encodingWith(@Nullable Profile profile) {
        String forced = output == null ? null : output.encoding();
        return forced == null && profile != null ? profile.encoding() : forced;
    }

    /** Id of the gamut that ends up in the file, likewise. */
    public @Nullable String gamutWith(@Nullable Profile profile) {
        String forced = output == null ? null : output.gamut();
        return forced == null && profile != null ? profile.gamut() : forced;
    }

    /** True when an external recorder writes it. */
    public boolean external() {
        return recorder != null;
    }
}
