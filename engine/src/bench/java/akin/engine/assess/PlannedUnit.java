package akin.engine.assess;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import akin.model.rig.Settings;

/** One unit as the library moves it: all settings are one value, since what one menu offers hangs on another. */
@PlanningEntity
public class PlannedUnit {
    private Settings settings;

    /** A unit that is not set yet. */
    public PlannedUnit() {}

    /** How it is set; null before it is. */
    @PlanningVariable
    public Settings getSettings() {
        return settings;
    }

    /** Sets it. */
    public void setSettings(Settings settings) {
        this.settings = settings;
    }
}
