package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.model.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The report for a page: what the text report says, in the same order. */
final class MarkdownReport {

    private MarkdownReport() {}

    static String render(Batch batch) {
        List<String> out = new ArrayList<>();
        batch.read().forEach(part -> assessment(out, part.assessment()));
        if (!batch.one() || !batch.allRead()) {
            out.add("# " + Story.RIGS);
            out.add("");
            batch.parts()
                    .forEach(part -> out.add("- **" + Tally.said(part.verdict()) + "** "
                            + (part instanceof Batch.Unread unread
                                    ? Markdown.text(unread.place() + ": " + unread.problem())
                                    : Markdown.text(part.file()))));
            out.add("");
            Story.passedOver(batch).forEach(line -> paragraph(out, line));
        }
        Story.baseline(batch).forEach(line -> paragraph(out, line));
        if (!batch.one()) {
            out.add("**" + Markdown.text(Tally.line(batch)) + "**");
            out.add("");
        }
        return String.join("\n", out).stripTrailing() + "\n";
    }

    private static void assessment(List<String> out, Assessment a) {
        out.add("# " + Markdown.text(Story.head(a)));
        out.add("");
        int number = 1;
        for (Severity severity : Severity.values()) {
            List<Assessment.Entry> entries =
                    a.findings().stream().filter(f -> f.severity() == severity).toList();
            if (!entries.isEmpty()) {
                out.add("## " + Story.heading(severity));
                out.add("");
            }
            for (Assessment.Entry entry : entries) {
                entry(out, entry, number++);
            }
        }
        section(
                out,
                Story.WAIVED,
                a.waived().stream()
                        .flatMap(w -> aside(w.entry(), Stream.of(Story.agreed(w))))
                        .toList());
        section(
                out,
                Story.KNOWN,
                a.known().stream().flatMap(e -> aside(e, Stream.empty())).toList());
        section(
                out,
                Story.AIM,
                a.targets().stream()
                        .map(t -> "- " + Markdown.text(t.unit()) + ": " + Markdown.text(Story.level(t)))
                        .toList());
        section(
                out,
                Story.UNCHECKED,
                Gap.of(a.unchecked()).stream()
                        .flatMap(gap -> Stream.of(
                                "- " + Markdown.text(gap.words()),
                                "  - waits: " + Markdown.text(String.join(", ", gap.waits()))))
                        .toList());
        section(
                out,
                Story.NOTES,
                a.notes().stream().map(note -> "- " + Markdown.text(note)).toList());
        section(
                out,
                Story.CARE,
                a.cautions().stream()
                        .flatMap(c -> Stream.of(
                                "- " + Markdown.text(c.sentence()),
                                "  - " + Markdown.text(Story.here(c) + " [" + c.rule() + "]")))
                        .toList());
        out.add("**" + Markdown.text(Tally.of(a).line(a.verdict().word())) + "**");
        out.add("");
    }

    private static void entry(List<String> out, Assessment.Entry entry, int number) {
        out.add("### " + number + "\\. " + Markdown.text(entry.title()));
        out.add("");
        paragraph(out, entry.because());
        String label = "Do:";
        for (Assessment.Remedy fix : entry.fixes()) {
            out.add("- **" + label + "** " + Markdown.text(fix.effect()));
            fix.edits().forEach(change -> out.add("  - " + Markdown.text(Story.change(change))));
            fix.sideEffects().forEach(effect -> out.add("  - " + Markdown.text(Story.BRINGS + effect)));
            label = "Or:";
        }
        if (!entry.fixes().isEmpty()) {
            out.add("");
        }
        paragraph(out, "[" + Story.place(entry) + "]");
    }

    private static Stream<String> aside(Assessment.Entry entry, Stream<String> reason) {
        return Stream.concat(
                Stream.of("- " + Markdown.text(entry.title())),
                Stream.concat(reason, Stream.of("[" + Story.placeWithSeverity(entry) + "]"))
                        .map(line -> "  - " + Markdown.text(line)));
    }

    private static void section(List<String> out, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            out.add("## " + heading);
            out.add("");
            out.addAll(lines);
            out.add("");
        }
    }

    private static void paragraph(List<String> out, String text) {
        out.add(Markdown.text(text));
        out.add("");
    }
}
