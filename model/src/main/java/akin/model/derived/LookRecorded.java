package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.gear.Profile;
import akin.model.rig.Monitor;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the table that a unit is watched through is recorded with the picture.
 *
 * @param unitName name of the unit
 * @param look name of the look
 * @param recorded true when it is
 * @param agreed true when the rig file gives a reason for it
 */
public record LookRecorded(String unitName, String look, boolean recorded, boolean agreed) implements Derived {

    /** Whether it is, or what is missing for it; nothing for a unit that is watched as it is recorded. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (!WatchedLook.asked(rig, unit)) {
            return List.of();
        }
        Monitor monitor = unit.monitor();
        Boolean recorded = monitor == null ? null : monitor.recorded();
        return WatchedLook.input(Inputs.of(LookRecorded.class, unit), unit, "recorded", recorded)
                .derive(() -> new LookRecorded(
                        unit.name(),
                        requireNonNull(requireNonNull(monitor).look()),
                        requireNonNull(recorded),
                        unit.intends("monitor")));
    }

    /** True when the plan of a unit says that its table is recorded. */
    static boolean says(Unit unit) {
        Monitor monitor = unit.monitor();
        return monitor != null && Boolean.TRUE.equals(monitor.recorded());
    }

    /** True when it is recorded and nobody has given a reason. */
    public boolean wrong() {
        return recorded && !agreed;
    }

    /**
     * Switches the recording of the table off; where the profile is a finished look too, that as well, so that one fix leaves
     * a picture to grade. Keys: watch-only, watch-only-and-profile.
     */
    public List<Fix> fixes(Unit unit) {
        Profile profile = unit.profile();
        List<Fix> fixes = new ArrayList<>();
        if (profile != null
                && Boolean.TRUE.equals(profile.look())
                && ProfileChoice.derive(unit).get(0) instanceof ProfileChoice choice
                && choice.widest() != null) {
            fixes.add(Fix.set("watch-only-and-profile", unit.path("monitor.recorded"), false)
                    .and(unit.path("profile"), choice.widest())
                    .with("to", null, choice.widest()));
        } else {
            fixes.add(Fix.set("watch-only", unit.path("monitor.recorded"), false));
        }
        return List.copyOf(fixes);
    }
}
