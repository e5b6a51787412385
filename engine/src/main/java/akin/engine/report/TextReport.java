package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Numbers;
import akin.engine.assess.Unchecked;
import akin.engine.assess.Verdict;
import akin.model.finding.Severity;
import akin.model.finding.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The report for people at a terminal: 80 columns, most urgent first, everything told in words. */
public final class TextReport {

    private static final int WIDTH = 80;
    private static final String INDENT = "    ";

    private TextReport() {}

    /**
     * Renders an assessment.
     *
     * @param style how to stress words; plain says the same
     */
    public static String render(Assessment assessment, Style style) {
        List<String> out = new ArrayList<>();
        out.addAll(Wrap.lines(
                Wrap.clean(assessment.production()) + ": " + Wrap.clean(assessment.file()) + ", matched to "
                        + assessment.hero() + " for " + assessment.tolerance(),
                "",
                "",
                WIDTH));
        int number = 1;
        for (Severity severity : Severity.values()) {
            List<Assessment.Entry> entries = assessment.findings().stream()
                    .filter(f -> f.severity() == severity)
                    .toList();
            if (!entries.isEmpty()) {
                out.add("");
                out.add(style.stress(heading(severity), severity));
            }
            for (Assessment.Entry entry : entries) {
                out.add("");
                entry(out, entry, number++, style);
                out.addAll(place(entry));
            }
        }
        waived(out, assessment.waived());
        targets(out, assessment.targets());
        unchecked(out, assessment.unchecked());
        notes(out, assessment.notes());
        cautions(out, assessment.cautions());
        out.add("");
        out.addAll(Wrap.lines(lastLine(assessment), "", "", WIDTH));
        return String.join("\n", out) + "\n";
    }

    /** One finding by itself, as it stands in a report. */
    static List<String> finding(Assessment.Entry entry) {
        List<String> out = new ArrayList<>();
        entry(out, entry, 1, Style.PLAIN);
        return out;
    }

    private static String heading(Severity severity) {
        return severity.word().toUpperCase(java.util.Locale.ROOT) + ": " + Meaning.of(severity);
    }

    private static void entry(List<String> out, Assessment.Entry entry, int number, Style style) {
        String label = String.format(java.util.Locale.ROOT, "%2d. ", number);
        for (String line : Wrap.lines(Wrap.clean(entry.title()), label, INDENT, WIDTH)) {
            out.add(style.strong(line));
        }
        out.addAll(Wrap.lines(Wrap.clean(entry.because()), INDENT, INDENT, WIDTH));
        boolean first = true;
        for (Assessment.Remedy fix : entry.fixes()) {
            String start = INDENT + (first ? "Do: " : "Or: ");
            out.addAll(Wrap.lines(Wrap.clean(fix.effect()), start, INDENT + INDENT, WIDTH));
            for (Assessment.Change change : fix.edits()) {
                out.addAll(Wrap.lines(change(change), INDENT + INDENT, INDENT + INDENT + INDENT, WIDTH));
            }
            for (String sideEffect : fix.sideEffects()) {
                out.addAll(Wrap.lines(
                        "That would bring: " + Wrap.clean(sideEffect),
                        INDENT + INDENT,
                        INDENT + INDENT + INDENT,
                        WIDTH));
            }
            first = false;
        }
    }

    private static List<String> place(Assessment.Entry entry) {
        return Wrap.lines(
                "[" + entry.rule() + ", line " + entry.place().line() + ": " + entry.path() + "]",
                INDENT,
                INDENT,
                WIDTH);
    }

    static String change(Assessment.Change change) {
        if (change.to() == null) {
            return change.path() + ": take out " + Wrap.clean(String.valueOf(change.from()));
        }
        return change.path() + ": " + (change.from() == null ? "add " : Wrap.clean(change.from()) + " -> ")
                + Wrap.clean(change.to());
    }

    private static void waived(List<String> out, List<Assessment.Waived> waived) {
        if (waived.isEmpty()) {
            return;
        }
        out.add("");
        out.add("WAIVED: agreed to stay as it is");
        for (Assessment.Waived one : waived) {
            out.addAll(Wrap.lines(Wrap.clean(one.entry().title()), INDENT, INDENT + INDENT, WIDTH));
            String until = one.until() == null ? "" : ", until " + one.until();
            out.addAll(Wrap.lines(
                    Wrap.clean("agreed" + until + ": " + one.because()), INDENT + INDENT, INDENT + INDENT, WIDTH));
            out.addAll(Wrap.lines(
                    "[" + one.entry().rule() + ", " + one.entry().severity() + ", line "
                            + one.entry().place().line() + ": " + one.entry().path() + "]",
                    INDENT + INDENT,
                    INDENT + INDENT,
                    WIDTH));
        }
    }

    private static void targets(List<String> out, List<Target> targets) {
        if (targets.isEmpty()) {
            return;
        }
        out.add("");
        out.add("AIM FOR: where an 18 % grey card must sit");
        for (Target target : targets) {
            out.addAll(Wrap.lines(
                    Wrap.clean(Numbers.spoken(target.value(), target.scale()) + " on the " + target.aid()),
                    INDENT + target.unit() + ": ",
                    INDENT + INDENT,
                    WIDTH));
        }
    }

    /** One line per fact that is missing, with every rule that waits for it. */
    private static void unchecked(List<String> out, List<Unchecked> unchecked) {
        if (unchecked.isEmpty()) {
            return;
        }
        out.add("");
        out.add("NOT CHECKED: a fact is not known");
        for (Gap gap : Gap.of(unchecked)) {
            out.addAll(Wrap.lines(Wrap.clean(gap.fact() + " (" + gap.where() + ")"), INDENT, INDENT + INDENT, WIDTH));
            out.addAll(Wrap.lines("waits: " + String.join(", ", gap.waits()), INDENT + INDENT, INDENT + INDENT, WIDTH));
        }
    }

    private static void cautions(List<String> out, List<Assessment.Caution> cautions) {
        if (cautions.isEmpty()) {
            return;
        }
        out.add("");
        out.addAll(Wrap.lines(
                "TAKE CARE: local code and licensed or qualified people decide, not this report", "", INDENT, WIDTH));
        for (Assessment.Caution caution : cautions) {
            out.addAll(Wrap.lines(Wrap.clean(caution.sentence()), INDENT, INDENT + INDENT, WIDTH));
            String reasons =
                    caution.reasons().stream().map(Assessment.Reason::words).collect(Collectors.joining("; "));
            out.addAll(Wrap.lines(
                    Wrap.clean("Here: " + reasons) + " [" + caution.rule() + "]",
                    INDENT + INDENT,
                    INDENT + INDENT,
                    WIDTH));
        }
    }

    private static void notes(List<String> out, List<String> notes) {
        if (notes.isEmpty()) {
            return;
        }
        out.add("");
        out.add("NOTE: where the facts come from");
        for (String note : notes) {
            out.addAll(Wrap.lines(Wrap.clean(note), INDENT, INDENT + INDENT, WIDTH));
        }
    }

    static String lastLine(Assessment a) {
        String counts = a.count(Severity.BAKED_IN) + " baked-in, " + a.count(Severity.LOSSY) + " lossy, "
                + a.count(Severity.FIXABLE) + " fixable, " + a.count(Severity.ADVICE) + " advice"
                + (a.waived().isEmpty() ? "" : ", " + a.waived().size() + " waived");
        String verdict =
                a.verdict() == Verdict.INCOMPLETE ? "incomplete" : a.verdict().word();
        return a.checks() + " checks run, " + a.unchecked().size() + " unchecked: " + verdict + " (" + counts + ")";
    }
}
