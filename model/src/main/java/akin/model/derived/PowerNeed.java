package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Recorder;
import akin.model.quantity.Power;
import akin.model.rig.Battery;
import akin.model.rig.Build;
import akin.model.rig.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a unit draws and what its supply may give.
 *
 * @param unitName name of the unit
 * @param watts power of body, recorder and whatever else is planned on the supply
 * @param gives the most that the supply may give, in watts
 * @param volts nominal voltage of the supply; null when not said
 */
public record PowerNeed(
        String unitName,
        double watts,
        double gives,
        @Nullable Double volts) implements Derived {

    /** The power, or what is missing for it; nothing where no battery is planned. */
    public static List<Object> derive(Unit unit) {
        Build build = unit.build();
        Battery battery = build == null ? null : build.battery();
        if (battery == null) {
            return List.of();
        }
        return inputs(Inputs.of(PowerNeed.class, unit), unit)
                .setting("build.battery.gives", battery.gives())
                .derive(() -> new PowerNeed(
                        unit.name(),
                        watts(unit),
                        requireNonNull(battery.gives()).watts(),
                        battery.voltage() == null ? null : battery.voltage().volts()));
    }

    /** What has to be known of a unit for {@link #watts(Unit)}. */
    static Inputs inputs(Inputs inputs, Unit unit) {
        inputs.body("power", WhereFound.SPEC_SHEET, unit.body().power());
        Recorder recorder = unit.recording().recorder();
        if (recorder != null) {
            inputs.input(recorder.path("power"), WhereFound.SPEC_SHEET, recorder.power());
        }
        return inputs;
    }

    /** All that hangs on the supply, in watts; {@link #inputs} have to be known. */
    static double watts(Unit unit) {
        Recorder recorder = unit.recording().recorder();
        Build build = unit.build();
        return requireNonNull(unit.body().power()).watts()
                + (recorder == null ? 0 : watts(recorder.power()))
                + (build == null ? 0 : watts(build.draws()));
    }

    private static double watts(@Nullable Power power) {
        return power == null ? 0 : power.watts();
    }

    /** True when more is drawn than the supply may give. */
    public boolean tooMuch() {
        return watts > gives;
    }

    /** The current in words, where the voltage is known: I = P / U. */
    public String current() {
        return volts == null || volts <= 0
                ? "of a voltage that is not planned"
                : String.format(java.util.Locale.ROOT, "%.1f A at %.1f V", watts / volts, volts);
    }
}
