package akin.model.rig;

import akin.model.gear.Codec;
import akin.model.gear.Output;
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
 */
public record Recording(
        @Nullable Recorder recorder,
        @Nullable Output output,
        @Nullable Codec codec,
        @Nullable SignalRange reads) {

    /** True when an external recorder writes it. */
    public boolean external() {
        return recorder != null;
    }
}
