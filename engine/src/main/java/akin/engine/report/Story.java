package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Numbers;
import akin.engine.assess.Unchecked;
import akin.engine.baseline.Baseline;
import akin.model.finding.Severity;
import akin.model.finding.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

/** What every report for people says in the same words, whatever it puts around them. Nothing here is escaped yet. */
final class Story {

    static final String WAIVED = "WAIVED: agreed to stay as it is";
    static final String KNOWN = "KNOWN: in the baseline, so it does not fail the check";
    static final String AIM = "AIM FOR: where an 18 % grey card must sit, and where highlights clip";
    static final String UNCHECKED = "NOT CHECKED: a fact is not known";
    static final String CARE = "TAKE CARE: local code and licensed or qualified people decide, not this report";
    static final String NOTES = "NOTE: where the facts come from";
    static final String RIGS = "RIG FILES";
    static final String BRINGS = "That would bring: ";

    private Story() {}

    /** What an assessment is of. */
    static String head(Assessment a) {
        return a.production() + ": " + a.file() + ", matched to " + a.hero() + " for " + a.tolerance();
    }

    static String heading(Severity severity) {
        return severity.word().toUpperCase(Locale.ROOT) + ": " + Meaning.of(severity);
    }

    /** A level in words. */
    static String level(Target target) {
        return target.what() + " at " + Numbers.spoken(target);
    }

    /** One edit of a fix. */
    static String change(Assessment.Change change) {
        if (change.to() == null) {
            return change.path() + ": take out " + change.from();
        }
        return change.path() + ": " + (change.from() == null ? "add " : change.from() + " -> ") + change.to();
    }

    /** Why, and what to do, one sentence a line. */
    static List<String> lines(Assessment.Entry entry) {
        List<String> lines = new ArrayList<>();
        lines.add(entry.because());
        for (Assessment.Remedy fix : entry.fixes()) {
            lines.add((lines.size() == 1 ? "Do: " : "Or: ") + fix.effect());
            fix.edits().forEach(change -> lines.add("    " + change(change)));
            fix.sideEffects().forEach(effect -> lines.add("    " + BRINGS + effect));
        }
        return lines;
    }

    /** Where a finding of a section of its own severity comes from. */
    static String place(Assessment.Entry entry) {
        return entry.rule() + shot(entry) + ", line " + entry.place().line() + ": " + entry.path();
    }

    /** Where a finding comes from that stands in no section of its severity. */
    static String placeWithSeverity(Assessment.Entry entry) {
        return entry.rule() + ", " + entry.severity() + shot(entry) + ", line "
                + entry.place().line() + ": " + entry.path();
    }

    /** The clips that a finding is about; nothing when it is about the plan. */
    private static String shot(Assessment.Entry entry) {
        return entry.clips().isEmpty() ? "" : ", clip " + String.join(", ", entry.clips());
    }

    /** Why a finding is waived. */
    static String agreed(Assessment.Waived waived) {
        return "agreed" + (waived.until() == null ? "" : ", until " + waived.until()) + ": " + waived.because();
    }

    static String missing(Unchecked line) {
        return line.missing() + " (" + line.where().words() + ")";
    }

    /** Why a caution applies. */
    static String here(Assessment.Caution caution) {
        return "Here: "
                + caution.reasons().stream().map(Assessment.Reason::words).collect(Collectors.joining("; "));
    }

    /** What became of the baseline; empty when there was none. */
    static List<String> baseline(Batch batch) {
        if (batch.baseline() == null) {
            return List.of();
        }
        Baseline.Comparison baseline = Objects.requireNonNull(batch.baseline());
        List<String> lines = new ArrayList<>();
        lines.add("Baseline " + baseline.file() + ": " + baseline.known() + " known, " + baseline.fresh() + " new, "
                + baseline.gone().size() + " gone"
                + (baseline.trouble() == null ? "" : "; not compared: " + baseline.trouble()));
        baseline.gone().forEach(gone -> lines.add("gone: " + gone(gone)));
        return lines;
    }

    static String gone(Baseline.Gone gone) {
        return gone.rig() + ": " + gone.key().rule() + " of "
                + String.join(", ", gone.key().units()) + " (" + gone.key().path() + ")";
    }

    /** How many files of the folders were left alone; empty when none was. */
    static List<String> passedOver(Batch batch) {
        return switch (batch.passedOver()) {
            case 0 -> List.of();
            case 1 -> List.of("1 other YAML file is no rig, since it has not both akin: and units:");
            default ->
                List.of(batch.passedOver()
                        + " other YAML files are no rigs, since they have not both akin: and units:");
        };
    }
}
