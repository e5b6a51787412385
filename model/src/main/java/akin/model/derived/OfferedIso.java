package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.IsoMenu;
import akin.model.quantity.Iso;
import akin.model.rig.Unit;
import java.util.List;

/**
 * A unit's ISO and the values of its body's menu.
 *
 * @param unitName name of the unit
 * @param iso the ISO set
 * @param offered true when the menu has it
 * @param nearest the value of the menu that is nearest in stops
 */
public record OfferedIso(String unitName, Iso iso, boolean offered, Iso nearest) implements Derived {

    /** The ISO against the menu, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Iso iso = unit.iso();
        IsoMenu menu = unit.body().iso();
        return Inputs.of(OfferedIso.class, unit)
                .setting("iso", iso)
                .body("iso", WhereFound.MANUAL, menu)
                .derive(() -> of(unit, requireNonNull(iso), requireNonNull(menu)));
    }

    private static OfferedIso of(Unit unit, Iso iso, IsoMenu menu) {
        return new OfferedIso(
                unit.name(), iso, menu.offers(iso), menu.nearest(iso.value()).orElse(iso));
    }

    /** How much brighter the nearest value is, in stops. */
    public double residual() {
        return nearest.stopsFrom(iso);
    }

    /** Sets the nearest value. */
    public Fix fix(Unit unit) {
        return Fix.set("set-nearest", unit.path("iso"), nearest)
                .with("to", null, nearest)
                .with("left", null, residual(), "stops");
    }
}
