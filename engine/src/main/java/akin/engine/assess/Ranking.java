package akin.engine.assess;

import akin.model.finding.Severity;
import akin.model.rig.Unit;
import java.util.List;

/**
 * What came of a survey.
 *
 * @param size how many candidates were judged
 * @param sound how many of them have nothing that is baked in
 * @param best the best of them, best first
 */
public record Ranking(int size, int sound, List<Place> best) {

    /** Copies the list. */
    public Ranking {
        best = List.copyOf(best);
    }

    /**
     * One candidate.
     *
     * @param rank its place, from 1
     * @param unit the candidate with its settings
     * @param reasons what a check of it beside the hero finds, most urgent first
     * @param gaps which facts of it are not known, by the checks that wait for them
     * @param unchecked how many checks could not run for want of them
     */
    public record Place(int rank, Unit unit, List<Reason> reasons, List<Unchecked> gaps, int unchecked) {

        /** Copies the lists. */
        public Place {
            reasons = List.copyOf(reasons);
            gaps = List.copyOf(gaps);
        }

        /** How many findings have this severity. */
        public long count(Severity severity) {
            return reasons.stream()
                    .filter(reason -> reason.severity() == severity)
                    .count();
        }
    }

    /**
     * A finding in words.
     *
     * @param rule id of the rule
     * @param severity when it can still be put right
     * @param magnitude how many tolerances the mismatch is away
     * @param title what does not match
     * @param because why, in numbers
     */
    public record Reason(String rule, Severity severity, double magnitude, String title, String because) {}
}
