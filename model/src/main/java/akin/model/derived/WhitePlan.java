package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.gear.WhiteMenu;
import akin.model.quantity.ColourTemperature;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks through the white-balance menus of a rig for values that stand together. */
public final class WhitePlan {

    private static final String WHITE = "white";

    private WhitePlan() {}

    /**
     * Fixes of a unit whose white balance differs from the hero's: the value of its own menu next to the hero's
     * ({@code set-white}) where that is within the tolerance; otherwise values for hero and others from all their menus
     * ({@code set-together}); where there are none, {@code grade}.
     */
    public static List<Fix> together(Rig rig, Unit unit) {
        Unit hero = heroOf(rig);
        ColourTemperature wanted = hero.white();
        if (wanted == null) {
            return List.of();
        }
        double limit = rig.match().tolerances().of(Tolerance.WHITE);
        Optional<ColourTemperature> alone = nearest(unit, wanted);
        if (alone.isPresent() && apart(alone.get(), wanted) <= limit) {
            return List.of(set(unit, alone.get(), wanted));
        }
        return joint(rig, unit, wanted, limit).map(List::of).orElseGet(() -> List.of(Fix.advise("grade")));
    }

    /** One fix, keyed {@code set-white}: the value of the unit's menu next to the hero's, or none where that is not known. */
    public static List<Fix> likeHero(Rig rig, Unit unit) {
        ColourTemperature wanted = heroOf(rig).white();
        if (wanted == null || unit.hero()) {
            return List.of();
        }
        return nearest(unit, wanted).map(white -> set(unit, white, wanted)).stream()
                .toList();
    }

    /** One fix, keyed {@code set-white}: the value of the unit's menu next to the one planned. */
    public static List<Fix> offered(Unit unit, WhiteChoice choice) {
        return List.of(set(unit, choice.nearest(), choice.planned().white()));
    }

    /** The hero's nearest value at which this unit, and as many others as can, come within the tolerance. */
    private static Optional<Fix> joint(Rig rig, Unit unit, ColourTemperature wanted, double limit) {
        Unit hero = heroOf(rig);
        WhiteMenu menu = hero.body().white();
        if (menu == null) {
            return Optional.empty();
        }
        Map<String, ColourTemperature> best = Map.of();
        long mostAlike = 0;
        double leastMoved = 0;
        for (ColourTemperature ofHero : menu.offered()) {
            Map<String, ColourTemperature> values = new LinkedHashMap<>();
            values.put(hero.name(), ofHero);
            long alike = 0;
            boolean cures = false;
            for (Unit other : rig.units()) {
                ColourTemperature planned = other.white();
                if (other.hero() || planned == null || other.intends(WHITE)) {
                    continue;
                }
                ColourTemperature value = apart(planned, ofHero) <= limit
                        ? planned
                        : nearest(other, ofHero).orElse(planned);
                boolean near = apart(value, ofHero) <= limit;
                alike += near ? 1 : 0;
                cures |= near && other.name().equals(unit.name());
                if (!value.equals(planned) && near) {
                    values.put(other.name(), value);
                }
            }
            double moved = apart(ofHero, wanted);
            if (cures && (alike > mostAlike || (alike == mostAlike && moved < leastMoved))) {
                best = values;
                mostAlike = alike;
                leastMoved = moved;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(fix(best));
    }

    private static Fix fix(Map<String, ColourTemperature> values) {
        List<String> words = new ArrayList<>();
        Fix fix = new Fix("set-together", List.of(), List.of());
        for (Map.Entry<String, ColourTemperature> value : values.entrySet()) {
            fix = fix.and("units." + value.getKey() + "." + WHITE, value.getValue());
            words.add(value.getKey() + " to " + value.getValue());
        }
        return fix.with("values", null, String.join(", ", words));
    }

    private static Fix set(Unit unit, ColourTemperature white, ColourTemperature wanted) {
        return Fix.set("set-white", unit.path(WHITE), white)
                .with("setting", null, white)
                .with("left", null, apart(white, wanted), "mired");
    }

    /** The value of a unit's menu nearest to a wanted one; the wanted one itself where the menu is not known. */
    private static Optional<ColourTemperature> nearest(Unit unit, ColourTemperature wanted) {
        WhiteMenu menu = unit.body().white();
        return menu == null ? Optional.of(wanted) : menu.nearest(wanted);
    }

    private static double apart(ColourTemperature a, ColourTemperature b) {
        return Math.abs(a.mired() - b.mired());
    }

    private static Unit heroOf(Rig rig) {
        return rig.units().stream().filter(Unit::hero).findFirst().orElseThrow();
    }
}
