package akin.engine.assess;

import akin.engine.read.Place;
import akin.model.finding.Severity;
import akin.model.finding.Target;
import akin.model.finding.Value;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The finished assessment of one rig file: ranked, worded, with places. Reports are rendered from this alone.
 *
 * @param file the rig file as it was named
 * @param production name of the production
 * @param hero name of the hero
 * @param tolerance name of the tolerance profile
 * @param verdict what it comes to
 * @param checks how many checks ran
 * @param findings most urgent first, without the waived
 * @param waived findings that a waiver covers, most urgent first; they do not count towards the verdict
 * @param known findings that stand in a baseline, most urgent first; they do not count towards the verdict either
 * @param unchecked what could not be checked
 * @param targets levels to aim at, by unit
 * @param cautions what in the plan can hurt people or gear, each once, in the order of the book
 * @param notes what a reader must know of the data behind it: where a pack speaks for the catalogue
 */
public record Assessment(
        String file,
        String production,
        String hero,
        String tolerance,
        Verdict verdict,
        int checks,
        List<Entry> findings,
        List<Waived> waived,
        List<Entry> known,
        List<Unchecked> unchecked,
        List<Target> targets,
        List<Caution> cautions,
        List<String> notes) {

    /** Copies the lists. */
    public Assessment {
        findings = List.copyOf(findings);
        waived = List.copyOf(waived);
        known = List.copyOf(known);
        unchecked = List.copyOf(unchecked);
        targets = List.copyOf(targets);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** How many findings have this severity. */
    public long count(Severity severity) {
        return findings.stream().filter(f -> f.severity() == severity).count();
    }

    /**
     * One finding in words and numbers.
     *
     * @param rule id of the rule
     * @param severity when it can still be put right
     * @param magnitude how many tolerances the mismatch is away
     * @param units names of the units concerned; of a pairing the hero first
     * @param clips names of the shot clips concerned; empty when it is about the plan alone
     * @param title what does not match
     * @param because why, in numbers
     * @param values the evidence
     * @param fixes ways to put it right, best first
     * @param path dotted path of the setting that caused it
     * @param place where that stands in the file
     * @param sources where the rule and its numbers come from
     */
    public record Entry(
            String rule,
            Severity severity,
            double magnitude,
            List<String> units,
            List<String> clips,
            String title,
            String because,
            List<Value> values,
            List<Remedy> fixes,
            String path,
            Place place,
            List<String> sources) {}

    /**
     * A finding that is agreed to stay as it is.
     *
     * @param entry the finding
     * @param because why it is agreed
     * @param until last day on which it is; null: for the whole production
     */
    public record Waived(
            Entry entry, String because, @Nullable LocalDate until) {}

    /**
     * A caution, said once however often it applies.
     *
     * @param rule id of the rule
     * @param sentence what to take care of
     * @param reasons why it applies
     */
    public record Caution(String rule, String sentence, List<Reason> reasons) {

        /** Copies the list. */
        public Caution {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Why a caution applies.
     *
     * @param words why, in words
     * @param unit name of the unit that calls for it; null when a scene does
     * @param scene name of the scene that calls for it; null when a unit does
     * @param path dotted path of what calls for it
     * @param place where that stands in the file
     */
    public record Reason(
            String words, @Nullable String unit, @Nullable String scene, String path, Place place) {}

    /**
     * A fix in words, with its edits and what else they would do.
     *
     * @param edits changes to the rig file; empty for something that people do
     * @param effect what to do and what it does
     * @param sideEffects findings that the edits would newly give, in words
     */
    public record Remedy(List<Change> edits, String effect, List<String> sideEffects) {}

    /**
     * One edit.
     *
     * @param path dotted path of the setting
     * @param from how it is written now; null when it is not
     * @param to how it is to be written; null when it is to be taken out
     */
    public record Change(
            String path, @Nullable String from, @Nullable String to) {}
}
