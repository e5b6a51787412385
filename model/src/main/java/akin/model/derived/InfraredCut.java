package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.quantity.NeutralDensity;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import java.util.List;

/**
 * Whether infra-red can tint a unit's blacks behind its neutral density: most neutral filters pass it, so that its share
 * of the light grows with the density.
 *
 * @param unitName name of the unit
 * @param density density of all its filters together
 * @param polluted true when they are dense and the body does not block infra-red well enough for that
 */
public record InfraredCut(String unitName, double density, boolean polluted) implements Derived {

    /** The state of things, or what is missing for it: with little density nothing need be known of the body. */
    public static List<Object> derive(Unit unit, Tolerances limits) {
        List<NeutralDensity> filters = unit.filters();
        Inputs inputs = Inputs.of(InfraredCut.class, unit).setting("filters", filters);
        double density = filters == null ? 0 : NdChoice.of(filters).density();
        boolean dense = density >= limits.of(Tolerance.INFRARED_ND);
        Boolean cut = unit.body().irCut();
        if (dense) {
            inputs.body("ir-cut", WhereFound.TEST, cut);
        }
        return inputs.derive(() -> new InfraredCut(unit.name(), density, dense && !requireNonNull(cut)));
    }
}
