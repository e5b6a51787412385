package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.gear.Stabilisation;
import akin.model.quantity.Percent;
import akin.model.rig.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What steadies the picture of a unit.
 *
 * @param unitName name of the unit
 * @param by what is switched on
 */
public record Steadiness(String unitName, Stabilisation by) implements Derived {

    /** What steadies the picture, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Stabilisation by = of(unit);
        return Inputs.of(Steadiness.class, unit)
                .setting("stabilisation", by)
                .derive(() -> new Steadiness(unit.name(), requireNonNull(by)));
    }

    /** What is switched on: as planned; nothing on a body that has nothing to switch on; null when not known. */
    static @Nullable Stabilisation of(Unit unit) {
        if (unit.stabilisation() != null) {
            return unit.stabilisation();
        }
        boolean lensSteady =
                unit.lens() != null && Boolean.TRUE.equals(unit.lens().lens().stabilised());
        return unit.body().stabilisation() == Stabilisation.NONE && !lensSteady ? Stabilisation.NONE : null;
    }

    /** The share of the width and height that electronic stabilisation leaves; 1 when it is off or its cut not known. */
    static double shareUsed(Unit unit) {
        Percent crop = unit.body().steadyCrop();
        return unit.stabilisation() == Stabilisation.ELECTRONIC && crop != null ? 1 - crop.value() / 100 : 1;
    }

    /** True when anything is switched on. */
    public boolean on() {
        return by != Stabilisation.NONE;
    }

    /** Electronic stabilisation cuts and bends the picture; a sensor or lens group that moves does not. */
    public Severity against(Steadiness other) {
        return by == Stabilisation.ELECTRONIC || other.by == Stabilisation.ELECTRONIC
                ? Severity.LOSSY
                : Severity.ADVICE;
    }

    /** Switching it off wherever it is on. Key: switch-off. */
    public List<Fix> fixes(Unit unit, Steadiness hero, Unit heroUnit) {
        Fix fix = Fix.advise("switch-off");
        fix = on() ? fix.and(unit.path("stabilisation"), Stabilisation.NONE) : fix;
        return List.of(hero.on() ? fix.and(heroUnit.path("stabilisation"), Stabilisation.NONE) : fix);
    }
}
