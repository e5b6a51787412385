package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Unchecked;
import akin.model.finding.Severity;
import akin.model.finding.Target;
import java.util.ArrayList;
import java.util.List;

/** The report for people at a terminal: 80 columns, most urgent first, everything told in words. */
public final class TextReport {

    private static final int WIDTH = 80;
    private static final String INDENT = "    ";

    /** Column at which the summary's file names start. */
    private static final int VERDICT = 16;

    private TextReport() {}

    /**
     * Renders all of a call: each rig file's report, and behind those of several a summary.
     *
     * @param style how to stress words; plain says the same
     */
    static String render(Batch batch, Style style) {
        List<String> reports = new ArrayList<>();
        batch.read().forEach(part -> reports.add(render(part.assessment(), style)));
        List<String> end = new ArrayList<>();
        if (!batch.one()) {
            end.add(style.strong(Story.RIGS));
            batch.parts().forEach(part -> summary(end, part));
            Story.passedOver(batch).forEach(line -> end.addAll(Wrap.lines(line, INDENT, INDENT, WIDTH)));
            end.add("");
        }
        for (String line : Story.baseline(batch)) {
            end.addAll(Wrap.lines(Wrap.clean(line), "", INDENT, WIDTH));
        }
        if (!batch.one()) {
            end.addAll(Wrap.lines(Tally.line(batch), "", "", WIDTH));
        }
        if (!end.isEmpty() && !(batch.one() && reports.isEmpty())) {
            reports.add(String.join("\n", end) + "\n");
        }
        return String.join("\n", reports);
    }

    private static void summary(List<String> out, Batch.Part part) {
        String label = INDENT + Tally.said(part.verdict());
        String start = label + " ".repeat(Math.max(1, VERDICT - label.length()));
        String indent = " ".repeat(VERDICT);
        if (part instanceof Batch.Unread unread) {
            out.addAll(Wrap.lines(Wrap.clean(unread.place() + ": " + unread.problem()), start, indent, WIDTH));
        } else {
            out.addAll(Wrap.lines(Wrap.clean(part.file()), start, indent, WIDTH));
        }
    }

    /**
     * Renders an assessment.
     *
     * @param style how to stress words; plain says the same
     */
    public static String render(Assessment assessment, Style style) {
        List<String> out = new ArrayList<>();
        out.addAll(Wrap.lines(Wrap.clean(Story.head(assessment)), "", "", WIDTH));
        body(out, assessment, style);
        return String.join("\n", out) + "\n";
    }

    /** All that stands under the head of a report. */
    static void body(List<String> out, Assessment assessment, Style style) {
        int number = 1;
        for (Severity severity : Severity.values()) {
            List<Assessment.Entry> entries = assessment.findings().stream()
                    .filter(f -> f.severity() == severity)
                    .toList();
            if (!entries.isEmpty()) {
                out.add("");
                out.add(style.stress(Story.heading(severity), severity));
            }
            for (Assessment.Entry entry : entries) {
                out.add("");
                entry(out, entry, number++, style);
                out.addAll(Wrap.lines(Wrap.clean("[" + Story.place(entry) + "]"), INDENT, INDENT, WIDTH));
            }
        }
        waived(out, assessment.waived());
        known(out, assessment.known());
        targets(out, assessment.targets());
        unchecked(out, assessment.unchecked());
        notes(out, assessment.notes());
        cautions(out, assessment.cautions());
        out.add("");
        out.addAll(Wrap.lines(Tally.of(assessment).line(assessment.verdict().word()), "", "", WIDTH));
    }

    /** One finding by itself, as it stands in a report. */
    static List<String> finding(Assessment.Entry entry) {
        List<String> out = new ArrayList<>();
        entry(out, entry, 1, Style.PLAIN);
        return out;
    }

    private static void entry(List<String> out, Assessment.Entry entry, int number, Style style) {
        title(out, number, entry.title(), style);
        out.addAll(Wrap.lines(Wrap.clean(entry.because()), INDENT, INDENT, WIDTH));
        boolean first = true;
        for (Assessment.Remedy fix : entry.fixes()) {
            String start = INDENT + (first ? "Do: " : "Or: ");
            out.addAll(Wrap.lines(Wrap.clean(fix.effect()), start, INDENT + INDENT, WIDTH));
            for (Assessment.Change change : fix.edits()) {
                out.addAll(
                        Wrap.lines(Wrap.clean(Story.change(change)), INDENT + INDENT, INDENT + INDENT + INDENT, WIDTH));
            }
            for (String sideEffect : fix.sideEffects()) {
                out.addAll(Wrap.lines(
                        Wrap.clean(Story.BRINGS + sideEffect), INDENT + INDENT, INDENT + INDENT + INDENT, WIDTH));
            }
            first = false;
        }
    }

    /** A title with its number in the report. */
    static void title(List<String> out, int number, String title, Style style) {
        String label = String.format(java.util.Locale.ROOT, "%2d. ", number);
        for (String line : Wrap.lines(Wrap.clean(title), label, INDENT, WIDTH)) {
            out.add(style.strong(line));
        }
    }

    private static void waived(List<String> out, List<Assessment.Waived> waived) {
        if (waived.isEmpty()) {
            return;
        }
        out.add("");
        out.add(Story.WAIVED);
        for (Assessment.Waived one : waived) {
            aside(out, one.entry(), List.of(Story.agreed(one)));
        }
    }

    private static void known(List<String> out, List<Assessment.Entry> known) {
        if (known.isEmpty()) {
            return;
        }
        out.add("");
        out.add(Story.KNOWN);
        for (Assessment.Entry entry : known) {
            aside(out, entry, List.of());
        }
    }

    /** A finding that does not count. */
    private static void aside(List<String> out, Assessment.Entry entry, List<String> reason) {
        out.addAll(Wrap.lines(Wrap.clean(entry.title()), INDENT, INDENT + INDENT, WIDTH));
        reason.forEach(line -> out.addAll(Wrap.lines(Wrap.clean(line), INDENT + INDENT, INDENT + INDENT, WIDTH)));
        out.addAll(Wrap.lines(
                Wrap.clean("[" + Story.placeWithSeverity(entry) + "]"), INDENT + INDENT, INDENT + INDENT, WIDTH));
    }

    private static void targets(List<String> out, List<Target> targets) {
        if (targets.isEmpty()) {
            return;
        }
        out.add("");
        out.add(Story.AIM);
        for (Target target : targets) {
            out.addAll(Wrap.lines(
                    Wrap.clean(Story.level(target)),
                    INDENT + Wrap.clean(target.unit()) + ": ",
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
        out.add(Story.UNCHECKED);
        for (Gap gap : Gap.of(unchecked)) {
            out.addAll(Wrap.lines(Wrap.clean(gap.words()), INDENT, INDENT + INDENT, WIDTH));
            out.addAll(Wrap.lines(
                    Wrap.clean("waits: " + String.join(", ", gap.waits())), INDENT + INDENT, INDENT + INDENT, WIDTH));
        }
    }

    private static void cautions(List<String> out, List<Assessment.Caution> cautions) {
        if (cautions.isEmpty()) {
            return;
        }
        out.add("");
        out.addAll(Wrap.lines(Story.CARE, "", INDENT, WIDTH));
        for (Assessment.Caution caution : cautions) {
            out.addAll(Wrap.lines(Wrap.clean(caution.sentence()), INDENT, INDENT + INDENT, WIDTH));
            out.addAll(Wrap.lines(
                    Wrap.clean(Story.here(caution) + " [" + caution.rule() + "]"),
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
        out.add(Story.NOTES);
        for (String note : notes) {
            out.addAll(Wrap.lines(Wrap.clean(note), INDENT, INDENT + INDENT, WIDTH));
        }
    }
}
