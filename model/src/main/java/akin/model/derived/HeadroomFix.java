package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.gear.IsoMenu;
import akin.model.quantity.Iso;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import akin.model.tone.TonePlacement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How two units of different headroom can be made to clip alike. */
public final class HeadroomFix {

    private HeadroomFix() {}

    /**
     * Where the unit clips first, the lowest ISO of its menu that gives it the hero's headroom, paid for with neutral
     * density, unless its shadows lose so much that the push shows; and in every case exposing for the one that clips first.
     */
    public static List<Fix> fixes(Rig rig, Unit unit, ToneRange hero, ToneRange range) {
        List<Fix> fixes = new ArrayList<>();
        if (range.headroom() < hero.headroom()) {
            raise(rig, unit, hero.headroom(), range).ifPresent(fixes::add);
        }
        ToneRange shorter = range.headroom() < hero.headroom() ? range : hero;
        fixes.add(Fix.advise("expose-for-shorter")
                .with("shorter", null, shorter.unitName())
                .with("limit", null, shorter.headroom(), "stops"));
        return List.copyOf(fixes);
    }

    private static Optional<Fix> raise(Rig rig, Unit unit, double wanted, ToneRange now) {
        IsoMenu menu = unit.body().iso();
        if (menu == null) {
            return Optional.empty();
        }
        double allowed = rig.match().tolerances().of(Tolerance.HEADROOM);
        for (Iso iso : menu.offered()) {
            TonePlacement then = ToneRange.placementAt(unit, iso);
            if (iso.value() <= now.iso().value()
                    || then == null
                    || Math.abs(then.headroomStops().orElse(0) - wanted) > allowed) {
                continue;
            }
            // What highlights gain over the base, shadows lose.
            double lost = then.highlightShiftStops() - now.placement().highlightShiftStops();
            Optional<Fix> fix = lost >= rig.match().tolerances().of(Tolerance.PUSH)
                    ? Optional.empty()
                    : LightFix.setIso(rig, unit, iso, "raise-iso");
            if (fix.isPresent()) {
                return fix.map(set -> set.with("lost", null, lost, "stops"));
            }
        }
        return Optional.empty();
    }
}
