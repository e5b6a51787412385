package akin.engine.assess;

import akin.engine.read.Place;
import akin.model.finding.Severity;
import java.util.List;

/**
 * What became of a rig file whose safe fixes were made.
 *
 * @param text the text of the file with the fixes made; the text as it was when none is
 * @param done the fixes made, in the order they were made
 * @param left the findings that are still there, most urgent first, without the waived
 */
public record Mending(String text, List<Step> done, List<Left> left) {

    /** Copies the lists. */
    public Mending {
        done = List.copyOf(done);
        left = List.copyOf(left);
    }

    /**
     * One fix that was made.
     *
     * @param rule id of the rule
     * @param severity how urgent its finding was
     * @param title what did not match
     * @param effect what the fix did
     * @param edits the changes to the file, beside what it said when they were made
     */
    public record Step(String rule, Severity severity, String title, String effect, List<Assessment.Change> edits) {}

    /**
     * One finding that is still there.
     *
     * @param rule id of the rule
     * @param severity how urgent it is
     * @param title what does not match
     * @param path dotted path of the setting that caused it
     * @param place where that stands in the mended file
     * @param why why it is still there: one line for each fix it has, or one for all
     */
    public record Left(String rule, Severity severity, String title, String path, Place place, List<String> why) {}
}
