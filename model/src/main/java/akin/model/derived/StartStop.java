package akin.model.derived;

import akin.model.finding.WhereFound;
import akin.model.gear.Input;
import akin.model.gear.Output;
import akin.model.gear.Recorder;
import akin.model.rig.Recording;
import akin.model.rig.Unit;
import java.util.List;

/**
 * Whether a recorder rolls with its body.
 *
 * @param unitName name of the unit
 * @param planned true when the body is to start and stop it
 * @param able true when the body's output can, and the recorder's input takes it
 */
public record StartStop(String unitName, boolean planned, boolean able) implements Derived {

    /** Whether it does, or what is missing to say so; nothing for a unit that records inside. */
    public static List<Object> derive(Unit unit) {
        Recording recording = unit.recording();
        Recorder recorder = recording.recorder();
        if (recorder == null) {
            return List.of();
        }
        Output output = recording.output();
        Input input = recording.input();
        Inputs inputs = Inputs.of(StartStop.class, unit)
                .setting("recorder.start-stop", recording.startStop())
                .setting("recorder.output", output);
        Boolean sends = output == null ? null : output.trigger();
        Boolean takes = input == null ? null : input.trigger();
        boolean refused = Boolean.FALSE.equals(sends) || Boolean.FALSE.equals(takes);
        if (output != null && !refused) {
            inputs.body("outputs." + output.id() + ".trigger", WhereFound.MANUAL, sends);
        }
        if (recorder.inputs().isEmpty() && !refused) {
            inputs.input(recorder.path("inputs"), WhereFound.MANUAL, null);
        } else if (!refused) {
            inputs.setting("recorder.input", input);
        }
        if (input != null && !refused) {
            inputs.input(recorder.path("inputs." + input.id() + ".trigger"), WhereFound.MANUAL, takes);
        }
        return inputs.derive(() -> new StartStop(unit.name(), Boolean.TRUE.equals(recording.startStop()), !refused));
    }
}
