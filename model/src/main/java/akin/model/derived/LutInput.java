package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.colour.Gamut;
import akin.model.finding.Fix;
import akin.model.finding.Missing;
import akin.model.finding.Severity;
import akin.model.rig.Monitor;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.List;

/**
 * The encoding and gamut that the table of a unit is made for, and those that it is given.
 *
 * @param unitName name of the unit
 * @param look name of the look
 * @param madeFor encoding that the table is made for
 * @param madeForGamut gamut that the table is made for
 * @param given encoding that the unit records
 * @param givenGamut gamut that the unit records
 */
public record LutInput(
        String unitName, String look, Encoding madeFor, Gamut madeForGamut, Encoding given, Gamut givenGamut)
        implements Derived {

    /** Both, or what is missing for them; nothing for a unit that is watched as it is recorded. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (!WatchedLook.asked(rig, unit)) {
            return List.of();
        }
        Monitor monitor = unit.monitor();
        Inputs inputs = Inputs.of(LutInput.class, unit);
        if (monitor == null) {
            return inputs.setting("monitor", null).derive(() -> {
                throw new IllegalStateException("no monitor of " + unit.name());
            });
        }
        inputs.setting("monitor.encoding", monitor.encoding()).setting("monitor.gamut", monitor.gamut());
        RecordedEncoding.require(inputs, unit);
        for (Object fact : RecordedGamut.derive(unit)) {
            if (fact instanceof Missing gap) {
                inputs.missing(gap);
            }
        }
        return inputs.derive(() -> new LutInput(
                unit.name(),
                requireNonNull(monitor.look()),
                requireNonNull(monitor.encoding()),
                requireNonNull(monitor.gamut()),
                requireNonNull(unit.encoding()),
                requireNonNull(unit.gamut())));
    }

    /** True when the table is given another curve, or other primaries, than it is made for. */
    public boolean wrong() {
        return !madeFor.id().equals(given.id()) || !madeForGamut.isSameAs(givenGamut);
    }

    /** Light set by a false picture is graded back; a false picture that is recorded stays. */
    public static Severity severity(Unit unit) {
        return LookRecorded.says(unit) ? Severity.BAKED_IN : Severity.FIXABLE;
    }

    /**
     * The LUT of the same look for what is recorded; or a profile that records what the LUT is made for. Keys: other-table,
     * set-profile.
     */
    public List<Fix> fixes(Unit unit) {
        List<Fix> fixes = new ArrayList<>();
        fixes.add(Fix.set("other-table", unit.path("monitor.encoding"), given.id())
                .and(unit.path("monitor.gamut"), givenGamut.id()));
        RecordedEncoding.offered(unit, madeFor.id(), madeForGamut.id())
                .ifPresent(profile -> fixes.add(Fix.set("set-profile", unit.path("profile"), profile.id())
                        .with("to", null, profile.id())));
        return List.copyOf(fixes);
    }
}
