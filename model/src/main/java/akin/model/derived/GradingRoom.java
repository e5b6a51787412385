package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Codec;
import akin.model.gear.Output;
import akin.model.rig.Unit;
import java.util.List;

/**
 * How much a recording can be changed in the grade before it shows: what decides whether a mismatch of exposure or
 * white is fixable or lossy.
 *
 * @param unitName name of the unit
 * @param kind raw values or an encoded picture
 * @param bits bits a sample: those of the codec, or those that the output sends to the recorder where they are fewer
 */
public record GradingRoom(String unitName, Codec.Kind kind, int bits) implements Derived {

    /** Fewest bits of a log recording in which half a stop moves without banding. Common practice, no source. */
    public static final int ROOMY_BITS = 10;

    /** The grading room, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Codec codec = unit.recording().codec();
        String key = unit.recording().external() ? "recorder.codec" : "codec";
        Inputs inputs = Inputs.of(GradingRoom.class, unit).setting(key, codec);
        Output output = unit.recording().output();
        if (codec != null) {
            inputs.input(path(unit, codec, "kind"), WhereFound.SPEC_SHEET, codec.kind());
            inputs.input(path(unit, codec, "bits"), WhereFound.SPEC_SHEET, codec.bits());
        }
        if (output != null) {
            inputs.body("outputs." + output.id() + ".bits", WhereFound.SPEC_SHEET, output.bits());
        }
        return inputs.derive(() -> new GradingRoom(
                unit.name(), requireNonNull(requireNonNull(codec).kind()), bits(unit, requireNonNull(codec.bits()))));
    }

    /** Bits of a sample that hold picture: no more than the output sends to the recorder. */
    static int bits(Unit unit, int written) {
        Output output = unit.recording().output();
        return output == null || output.bits() == null ? written : Math.min(written, output.bits());
    }

    static String path(Unit unit, Codec codec, String fact) {
        var recorder = unit.recording().recorder();
        String key = "codecs." + codec.id() + "." + fact;
        return recorder == null ? unit.body().path(key) : recorder.path(key);
    }

    /** True when white balance and ISO are only notes to post. */
    public boolean raw() {
        return kind == Codec.Kind.RAW;
    }

    /** True when a moderate change in the grade does not show. */
    public boolean roomy() {
        return raw() || bits >= ROOMY_BITS;
    }

    /** The less roomy of two. */
    public static GradingRoom tighter(GradingRoom a, GradingRoom b) {
        return a.roomy() ? b : a;
    }
}
