package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.gear.IsoMenu;
import akin.model.quantity.Iso;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** How two units of different headroom can be made to clip alike. */
public final class HeadroomFix {

    private HeadroomFix() {}

    /**
     * Where the unit clips first, the lowest ISO of its menu that gives it the hero's headroom, paid for with neutral
     * density; and in every case exposing for the one that clips first.
     */
    public static List<Fix> fixes(Rig rig, Unit unit, ToneRange hero, ToneRange range) {
        List<Fix> fixes = new ArrayList<>();
        if (range.headroom() < hero.headroom()) {
            raise(rig, unit, hero.headroom(), range.iso()).ifPresent(fixes::add);
        }
        ToneRange shorter = range.headroom() < hero.headroom() ? range : hero;
        fixes.add(Fix.advise("expose-for-shorter")
                .with("shorter", null, shorter.unitName())
                .with("limit", null, shorter.headroom(), "stops"));
        return List.copyOf(fixes);
    }

    private static Optional<Fix> raise(Rig rig, Unit unit, double wanted, Iso now) {
        IsoMenu menu = unit.body().iso();
        double allowed = rig.match().tolerances().of(Tolerance.HEADROOM);
        return menu == null
                ? Optional.empty()
                : menu.offered().stream()
                        .filter(iso -> iso.value() > now.value())
                        .filter(iso ->
                                Math.abs(Objects.requireNonNullElse(ToneRange.headroomAt(unit, iso), 0.0) - wanted)
                                        <= allowed)
                        .map(iso -> LightFix.setIso(rig, unit, iso, "raise-iso"))
                        .flatMap(Optional::stream)
                        .findFirst();
    }
}
