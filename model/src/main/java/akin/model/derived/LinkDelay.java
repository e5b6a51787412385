package akin.model.derived;

import akin.model.finding.WhereFound;
import akin.model.gear.Output;
import akin.model.rig.Unit;
import java.util.List;

/**
 * By how much the picture comes later at the recorder than the sound and the timecode of the body.
 *
 * @param unitName name of the unit
 * @param frames in frames at the unit's rate
 * @param milliseconds in milliseconds
 */
public record LinkDelay(String unitName, double frames, double milliseconds) implements Derived {

    /** The delay, or what is missing for it; nothing for a unit that records inside. */
    public static List<Object> derive(Unit unit) {
        if (!unit.recording().external()) {
            return List.of();
        }
        Output output = unit.recording().output();
        Double delay = output == null ? null : output.delay();
        Inputs inputs = Inputs.of(LinkDelay.class, unit).setting("recorder.output", output);
        if (output != null) {
            inputs.body("outputs." + output.id() + ".delay", WhereFound.TEST, delay);
        }
        return inputs.derive(() -> {
            double frames = java.util.Objects.requireNonNull(delay);
            return new LinkDelay(
                    unit.name(), frames, frames * 1000 / unit.rate().perSecond());
        });
    }
}
