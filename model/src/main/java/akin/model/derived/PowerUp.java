package akin.model.derived;

import akin.model.finding.WhereFound;
import akin.model.gear.Recorder;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * What a unit still knows after it was switched off.
 *
 * @param unitName name of the unit
 * @param forgets what to call the devices that keep no settings
 */
public record PowerUp(String unitName, List<String> forgets) implements Derived {

    /** Copies the list. */
    public PowerUp {
        forgets = List.copyOf(forgets);
    }

    /** What it knows, or what is missing to say so. */
    public static List<Object> derive(Unit unit) {
        Recorder recorder = unit.recording().recorder();
        Inputs inputs = Inputs.of(PowerUp.class, unit)
                .body("keeps-settings", WhereFound.MANUAL, unit.body().keepsSettings());
        List<String> forgets = new ArrayList<>();
        if (Boolean.FALSE.equals(unit.body().keepsSettings())) {
            forgets.add(unit.body().called());
        }
        if (recorder != null) {
            inputs.input(recorder.path("keeps-settings"), WhereFound.MANUAL, recorder.keepsSettings());
            if (Boolean.FALSE.equals(recorder.keepsSettings())) {
                forgets.add(recorder.called());
            }
        }
        return inputs.derive(() -> new PowerUp(unit.name(), forgets));
    }

    /** True when a device keeps no settings. */
    public boolean forgetful() {
        return !forgets.isEmpty();
    }

    /** Those devices in words. */
    public String words() {
        return String.join(" and ", forgets);
    }
}
