package akin.engine.assess;

import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;

/** The library asks the rules. */
public class RuleScore implements EasyScoreCalculator<PlannedShoot, BendableLongScore> {
    @Override
    public BendableLongScore calculateScore(PlannedShoot shoot) {
        if (shoot.unit().getSettings() == null) {
            return BendableLongScore.zero(LibrarySearch.LEVELS, 1);
        }
        return LibrarySearch.Question.current().score(shoot.unit().getSettings());
    }
}
