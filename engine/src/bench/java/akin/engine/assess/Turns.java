package akin.engine.assess;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveListFactory;
import akin.model.rig.Settings;
import java.util.Collection;
import java.util.List;

/** The moves that our own search knows, for the library. */
public class Turns implements MoveListFactory<PlannedShoot> {
    @Override
    public List<Turn> createMoveList(PlannedShoot shoot) {
        return LibrarySearch.Question.current().turns(shoot.unit().getSettings()).stream()
                .map(settings -> new Turn(shoot.unit(), settings))
                .toList();
    }

    /** From how a unit is set to other settings. */
    static final class Turn extends AbstractMove<PlannedShoot> {
        private final PlannedUnit unit;
        private final Settings settings;

        Turn(PlannedUnit unit, Settings settings) {
            this.unit = unit;
            this.settings = settings;
        }

        @Override
        public boolean isMoveDoable(ScoreDirector<PlannedShoot> director) {
            return !settings.equals(unit.getSettings());
        }

        @Override
        protected void doMoveOnGenuineVariables(ScoreDirector<PlannedShoot> director) {
            director.beforeVariableChanged(unit, "settings");
            unit.setSettings(settings);
            director.afterVariableChanged(unit, "settings");
        }

        @Override
        public Turn rebase(ScoreDirector<PlannedShoot> director) {
            return new Turn(director.lookUpWorkingObject(unit), settings);
        }

        @Override
        public Collection<PlannedUnit> getPlanningEntities() {
            return List.of(unit);
        }

        @Override
        public Collection<Settings> getPlanningValues() {
            return List.of(settings);
        }

        @Override
        public String toString() {
            return "to " + settings;
        }
    }
}
