package akin.engine.assess;

import akin.model.finding.Caution;
import akin.model.finding.Finding;
import akin.model.finding.Missing;
import akin.model.finding.Target;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a rule session left behind, in no particular order.
 *
 * @param findings what rules found, without duplicates
 * @param missing facts that could not be derived
 * @param known names of the facts that were derived, by unit, or by unit and clip: {@link Coverage#subject}
 * @param targets levels to aim at
 * @param cautions what can hurt people or gear, without duplicates
 * @param failed rules of packs that failed, by id, and why
 */
record Outcome(
        Set<Finding> findings,
        Set<Missing> missing,
        Map<String, Set<String>> known,
        List<Target> targets,
        Set<Caution> cautions,
        Map<String, String> failed) {

    /** The same, with rules that failed. */
    Outcome failing(Map<String, String> rules) {
        return new Outcome(findings, missing, known, targets, cautions, Map.copyOf(rules));
    }
}
