package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Severity;
import akin.model.finding.WhereFound;
import akin.model.gear.WhiteMenu;
import akin.model.quantity.ColourTemperature;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The white balance that is planned for a unit, beside what its menu offers.
 *
 * @param unitName name of the unit
 * @param planned the value planned, and whether it is burned in
 * @param menu what the body offers
 */
public record WhiteChoice(String unitName, WhiteBalance planned, WhiteMenu menu) implements Derived {

    /** The choice, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        ColourTemperature white = unit.white();
        WhiteMenu menu = unit.body().white();
        return Inputs.of(WhiteChoice.class, unit)
                .setting("white", white)
                .body("white", WhereFound.MANUAL, menu)
                .derive(() -> new WhiteChoice(
                        unit.name(),
                        new WhiteBalance(unit.name(), requireNonNull(white), WhiteBalance.raw(unit)),
                        requireNonNull(menu)));
    }

    /** True when the menu offers the planned value. */
    public boolean offered() {
        return menu.offers(planned.white());
    }

    /** The offered value nearest in mired. */
    public ColourTemperature nearest() {
        return menu.nearest(planned.white()).orElseThrow();
    }

    /** How far that is from the planned one, in mired. */
    public double miredLeft() {
        return planned.miredFrom(nearest());
    }

    /** What it costs that the planned value cannot be set: a habit where another is as good, else as the error costs. */
    public Severity severity(Tolerances limits) {
        return miredLeft() <= limits.of(Tolerance.WHITE) ? Severity.ADVICE : planned.costOf(miredLeft(), limits);
    }

    /** What the menu offers, in words. */
    public String offer() {
        if (menu.listed().isEmpty() && menu.from() != null && menu.to() != null) {
            return menu.from() + " to " + menu.to() + " in steps of " + menu.step() + " K";
        }
        return "only " + menu.offered().stream().map(Object::toString).collect(Collectors.joining(", "));
    }
}
