package akin.engine.assess;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.valuerange.CountableValueRange;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import akin.model.rig.Settings;

/** A rig as the library holds it: the unit to be set, and the plans that it may have. */
@PlanningSolution
public class PlannedShoot {
    @PlanningEntityProperty
    private PlannedUnit unit;

    @ValueRangeProvider
    private CountableValueRange<Settings> plans;

    @PlanningScore(bendableHardLevelsSize = LibrarySearch.LEVELS, bendableSoftLevelsSize = 1)
    private BendableLongScore score;

    /** For the library, which fills it in. */
    public PlannedShoot() {}

    PlannedShoot(PlannedUnit unit, CountableValueRange<Settings> plans) {
        this.unit = unit;
        this.plans = plans;
    }

    PlannedUnit unit() {
        return unit;
    }

    BendableLongScore score() {
        return score;
    }
}
