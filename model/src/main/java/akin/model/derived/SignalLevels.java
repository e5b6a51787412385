package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.finding.WhereFound;
import akin.model.gear.Output;
import akin.model.gear.Recorder;
import akin.model.gear.SignalRange;
import akin.model.rig.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The range of codes that a unit's body sends to its recorder, and the one that the recorder takes it for.
 *
 * @param unitName name of the unit
 * @param sends range that the body sends
 * @param reads range that the recorder takes
 */
public record SignalLevels(String unitName, SignalRange sends, SignalRange reads) implements Derived {

    /** The levels, or what is missing for them; nothing for a unit that records inside or sends raw values. */
    public static List<Object> derive(Unit unit) {
        Recorder recorder = unit.recording().recorder();
        if (recorder == null) {
            return List.of();
        }
        Output output = unit.recording().output();
        if (output != null && output.kind() == akin.model.gear.Codec.Kind.RAW) {
            return List.of();
        }
        Inputs inputs = Inputs.of(SignalLevels.class, unit)
                .setting("recorder.output", output)
                .setting("recorder.reads", unit.recording().reads());
        SignalRange range = output == null ? null : output.range();
        if (output != null) {
            inputs.body("outputs." + output.id() + ".range", WhereFound.MANUAL, range);
        }
        return inputs.derive(() -> new SignalLevels(
                unit.name(),
                requireNonNull(range),
                requireNonNull(unit.recording().reads())));
    }

    /** True when the recorder takes the codes for another range than they are in. */
    public boolean differ() {
        return sends != reads;
    }

    /** Full codes taken for legal may lose their ends; legal codes taken for full only look flat. */
    public Severity severity() {
        return sends == SignalRange.FULL ? Severity.LOSSY : Severity.FIXABLE;
    }

    /** What becomes of the picture, in words. */
    public String words() {
        return sends == SignalRange.FULL
                ? "codes under 64 and over 940 of 1023 may be cut off"
                : "black sits at code 64 and white at 940 of 1023, and the picture looks flat";
    }

    /** Sets the recorder to what the body sends; where it cannot be set, the editor has to be told. */
    public List<Fix> fixes(Unit unit, @Nullable SignalRange fixed) {
        return fixed == null
                ? List.of(Fix.set("set-recorder", unit.path("recorder.reads"), sends)
                        .with("to", null, sends))
                : List.of(Fix.advise("tell-editor"));
    }
}
