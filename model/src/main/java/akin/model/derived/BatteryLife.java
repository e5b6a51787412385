package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.rig.Battery;
import akin.model.rig.Build;
import akin.model.rig.Unit;
import java.util.List;

/**
 * How long a battery lasts and how long it has to.
 *
 * @param unitName name of the unit
 * @param wattHours what the battery holds
 * @param watts what the unit draws
 * @param minutes how long one battery has to last
 */
public record BatteryLife(String unitName, double wattHours, double watts, double minutes) implements Derived {

    private static final double MINUTES_AN_HOUR = 60;
    private static final double MILLISECONDS_A_MINUTE = 60_000;

    /** The life, or what is missing for it; nothing where nobody plans how long a battery has to last. */
    public static List<Object> derive(Unit unit) {
        Build build = unit.build();
        Battery battery = build == null ? null : build.battery();
        if (build == null || build.runs() == null) {
            return List.of();
        }
        return PowerNeed.inputs(Inputs.of(BatteryLife.class, unit), unit)
                .setting("build.battery.energy", battery == null ? null : battery.energy())
                .derive(() -> new BatteryLife(
                        unit.name(),
                        requireNonNull(requireNonNull(battery).energy()).wattHours(),
                        PowerNeed.watts(unit),
                        requireNonNull(build.runs()).milliseconds() / MILLISECONDS_A_MINUTE));
    }

    /** Minutes for which it drives the unit and keeps a spare, in per cent of what it holds: energy / power. */
    public double lastsMinutes(double sparePercent) {
        return wattHours * (1 - sparePercent / 100) / watts * MINUTES_AN_HOUR;
    }

    /** A change of battery in time ({@code swap}), or one that holds enough ({@code bigger}). */
    public List<Fix> fixes(Unit unit, double sparePercent) {
        long whole = (long) Math.floor(lastsMinutes(sparePercent));
        double needed = watts * minutes / MINUTES_AN_HOUR / (1 - sparePercent / 100);
        Fix bigger = Fix.advise("bigger").with("needed", null, needed, "Wh");
        return whole < 1
                ? List.of(bigger)
                : List.of(
                        Fix.set("swap", unit.path("build.runs"), whole + " min")
                                .with("every", null, (double) whole, "min"),
                        bigger);
    }

    /** True when that is shorter than it has to last. */
    public boolean tooShort(double sparePercent) {
        return watts > 0 && lastsMinutes(sparePercent) < minutes * (1 - 1e-9);
    }
}
