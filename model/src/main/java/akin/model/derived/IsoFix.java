package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.gear.Codec;
import akin.model.gear.IsoMenu;
import akin.model.quantity.Iso;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.Comparator;
import java.util.List;

/** Another ISO for a unit, out of its body's menu, paid for with neutral density. */
public final class IsoFix {

    private IsoFix() {}

    /** Under the floor highlights clip in the file for good; in raw the ISO is a note that says how it was exposed. */
    public static Severity underFloor(Unit unit) {
        Codec codec = unit.recording().codec();
        return codec != null && codec.kind() == Codec.Kind.RAW ? Severity.ADVICE : Severity.BAKED_IN;
    }

    /** Raises the ISO to the lowest of the menu that is not under the floor. */
    public static List<Fix> toFloor(Rig rig, Unit unit, IsoFloor fact) {
        IsoMenu menu = unit.body().iso();
        Iso to = menu == null ? fact.floor() : menu.atLeast(fact.floor()).orElse(fact.floor());
        return List.of(LightFix.setIso(rig, unit, to, "raise-and-filter")
                .orElseGet(() -> LightFix.setIsoUnpaid(unit, to, "raise")));
    }

    /** Sets a native ISO that the menu has and that is not under the floor, the nearest first, of two the upper. */
    public static List<Fix> toBase(Rig rig, Unit unit, IsoBases fact) {
        IsoMenu menu = unit.body().iso();
        Iso floor = IsoFloor.known(unit);
        return fact.bases().stream()
                .filter(base -> menu == null || menu.offers(base))
                .filter(base -> floor == null || base.value() >= floor.value())
                .sorted(Comparator.<Iso>comparingDouble(base -> Math.abs(base.stopsFrom(fact.iso())))
                        .thenComparing(Comparator.comparingInt(Iso::value).reversed()))
                .map(base -> LightFix.setIso(rig, unit, base, "to-base")
                        .orElseGet(() -> LightFix.setIsoUnpaid(unit, base, "to-base-unpaid")))
                .toList();
    }
}
