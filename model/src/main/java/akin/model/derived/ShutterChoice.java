package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.ShutterMenu;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Shutter;
import akin.model.rig.Unit;
import akin.model.timing.ExposureTiming;
import java.util.List;
import java.util.Optional;

/**
 * The shutter that is planned for a unit, beside what its menu offers.
 *
 * @param unitName name of the unit
 * @param planned the setting planned
 * @param rate recorded frame rate
 * @param menu what the body offers
 */
public record ShutterChoice(String unitName, Shutter planned, FrameRate rate, ShutterMenu menu) implements Derived {

    /** The choice, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Shutter shutter = unit.shutter();
        ShutterMenu menu = unit.body().shutter();
        return Inputs.of(ShutterChoice.class, unit)
                .setting("shutter", shutter)
                .body("shutter", WhereFound.MANUAL, menu)
                .derive(() ->
                        new ShutterChoice(unit.name(), requireNonNull(shutter), unit.rate(), requireNonNull(menu)));
    }

    /** True when the menu offers the planned setting, as it is written or by another name. */
    public boolean offered() {
        return inMenu().isPresent();
    }

    /**
     * The planned setting as the menu writes it: as planned where the menu has that, else the one that exposes exactly as
     * long at this rate (180° for 1/48 at 24); empty when there is none.
     */
    public Optional<Shutter> inMenu() {
        return menu.offers(planned)
                ? Optional.of(planned)
                : nearest().filter(setting -> setting.sameTime(planned, rate));
    }

    /** The offered setting nearest in exposure time; empty when all that is offered outlasts the frame. */
    public Optional<Shutter> nearest() {
        return menu.nearest(planned.seconds(rate), rate);
    }

    /** How far the nearest offered setting is from the planned one, in per cent; infinite when there is none. */
    public double percentLeft() {
        return nearest()
                .map(setting -> ExposureTiming.percentApart(planned.seconds(rate), setting.seconds(rate)))
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** The same in tolerances; where nothing is offered, as if the exposure were twice or half the planned. */
    public double tolerancesLeft(double tolerance) {
        double percent = percentLeft();
        return (Double.isInfinite(percent) ? 100 : percent) / tolerance;
    }

    /** The menu item to switch on before the planned angle can be dialled in; empty when there is none. */
    public Optional<String> optionToSwitchOn() {
        return inMenu().filter(Shutter.Angle.class::isInstance).flatMap(setting -> Optional.ofNullable(menu.option()));
    }

    /** What the menu offers, in words. */
    public String offer() {
        StringBuilder words = new StringBuilder();
        ShutterMenu.AngleDial dial = menu.dial();
        if (dial != null) {
            words.append("angles from ")
                    .append(dial.from())
                    .append(" to ")
                    .append(dial.to())
                    .append(" in steps of ")
                    .append(dial.step());
        } else if (!menu.angles().isEmpty()) {
            words.append("the angles ").append(list(menu.angles()));
        }
        if (menu.hasTimes()) {
            words.append(words.isEmpty() ? "" : " and ").append("the times ").append(list(menu.times()));
        }
        return words.append(menu.hasAngles() && menu.hasTimes() ? "" : ", nothing else")
                .toString();
    }

    private static String list(List<? extends Shutter> settings) {
        return settings.stream().map(Object::toString).collect(java.util.stream.Collectors.joining(", "));
    }
}
