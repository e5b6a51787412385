package akin.engine.assess;

import akin.model.finding.Severity;
import java.util.List;

/**
 * The best settings that were found for one unit.
 *
 * @param unit name of the unit
 * @param tried how many plans were judged on the way
 * @param room how many plans there are, each setting with each other one
 * @param stopped true when the search was broken off, so that better ones may be left
 * @param before what the rules find in the plan as it is, most urgent first
 * @param answers the best first; none is empty, since the plan itself is one if nothing is better
 * @param conflict what has to be let go of for an answer that passes: a smallest set of what is kept; empty where none is
 *     needed, or letting go does not help
 * @param relaxations what single one of what is kept would have to be let go of, and what comes of it
 * @param deadlocks findings that no settings remove without bringing others that are as urgent
 */
public record Solution(
        String unit,
        int tried,
        long room,
        boolean stopped,
        List<Reason> before,
        List<Answer> answers,
        List<String> conflict,
        List<Relaxation> relaxations,
        List<Deadlock> deadlocks) {

    /** Copies the lists. */
    public Solution {
        before = List.copyOf(before);
        answers = List.copyOf(answers);
        conflict = List.copyOf(conflict);
        relaxations = List.copyOf(relaxations);
        deadlocks = List.copyOf(deadlocks);
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

    /**
     * Settings that may be taken, as changes to the plan.
     *
     * @param changes what is set otherwise
     * @param findings what the rules still find, most urgent first
     * @param unchecked how many checks cannot run
     * @param brings of the first answer's findings and these: what only this has
     * @param spares what only the first answer has
     */
    public record Answer(
            List<Change> changes, List<Reason> findings, int unchecked, List<Reason> brings, List<Reason> spares) {

        /** Copies the lists. */
        public Answer {
            changes = List.copyOf(changes);
            findings = List.copyOf(findings);
            brings = List.copyOf(brings);
            spares = List.copyOf(spares);
        }

        /** How many findings have this severity. */
        public long count(Severity severity) {
            return findings.stream().filter(f -> f.severity() == severity).count();
        }
    }

    /**
     * One setting, as an edit.
     *
     * @param edits the edit, or those that only make sense together
     * @param otherwise what the rules would find with this alone as it was planned, and do not find now
     * @param more what they find now, and would find further off
     */
    public record Change(List<Assessment.Change> edits, List<Reason> otherwise, List<Reason> more) {

        /** Copies the lists. */
        public Change {
            edits = List.copyOf(edits);
            otherwise = List.copyOf(otherwise);
            more = List.copyOf(more);
        }
    }

    /**
     * What comes of letting go of one thing that is kept.
     *
     * @param keep what is kept
     * @param changes what would then be set otherwise
     * @param passes true when that passes
     */
    public record Relaxation(String keep, List<Change> changes, boolean passes) {

        /** Copies the list. */
        public Relaxation {
            changes = List.copyOf(changes);
        }
    }

    /**
     * A finding that stays, since what removes it brings others.
     *
     * @param finding what stays
     * @param instead what the mildest plan without it has instead
     * @param unchecked rules that cannot be checked in that plan, and can be in this
     */
    public record Deadlock(Reason finding, List<Reason> instead, List<String> unchecked) {

        /** Copies the lists. */
        public Deadlock {
            instead = List.copyOf(instead);
            unchecked = List.copyOf(unchecked);
        }
    }
}
