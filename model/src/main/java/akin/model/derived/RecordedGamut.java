package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.colour.Gamut;
import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Codec;
import akin.model.gear.Output;
import akin.model.gear.Profile;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * The gamut that the picture in a unit's file is relative to.
 *
 * @param unitName name of the unit
 * @param gamut the gamut
 * @param raw true when raw values are written, which post develops into any gamut
 */
public record RecordedGamut(String unitName, Gamut gamut, boolean raw) implements Derived {

    /** The gamut, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Output output = unit.recording().output();
        Profile profile = unit.profile();
        Inputs inputs = Inputs.of(RecordedGamut.class, unit);
        if (unit.recording().external()) {
            inputs.setting("recorder.output", output);
        }
        if (output == null || output.gamut() == null) {
            inputs.setting("profile", profile);
        }
        if (profile != null) {
            inputs.body("profiles." + profile.id() + ".gamut", WhereFound.MANUAL, unit.gamut());
        }
        return inputs.derive(() -> {
            Codec codec = unit.recording().codec();
            return new RecordedGamut(
                    unit.name(), requireNonNull(unit.gamut()), codec != null && codec.kind() == Codec.Kind.RAW);
        });
    }

    /** True when RGB values mean other colours than in another file, and both are developed already. */
    public boolean differs(RecordedGamut other) {
        return !(raw && other.raw) && !gamut.isSameAs(other.gamut);
    }

    /** A profile of the unit that keeps the encoding and writes the hero's gamut, and converting in post. */
    public List<Fix> fixes(Unit unit, RecordedGamut hero) {
        List<Fix> fixes = new ArrayList<>();
        Profile now = unit.profile();
        if (now != null && now.encoding() != null) {
            RecordedEncoding.offered(unit, now.encoding(), hero.gamut().id())
                    .ifPresent(profile -> fixes.add(Fix.set("set-profile", unit.path("profile"), profile.id())
                            .with("to", null, profile.id())));
        }
        fixes.add(Fix.advise("convert"));
        return List.copyOf(fixes);
    }
}
