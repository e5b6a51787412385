package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.FailOn;
import akin.engine.read.Place;
import akin.model.finding.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * One line a finding for a build server that reads commands from its log:
 * {@code ::error file=..,line=..,col=..,title=..::message}. Escaped as that notation is published: in a message
 * {@code %}, carriage return and line feed as {@code %25}, {@code %0D}, {@code %0A}; in a property also {@code :} and
 * {@code ,} as {@code %3A}, {@code %2C}.
 */
final class AnnotationReport {

    private static final String ERROR = "error";
    private static final String WARNING = "warning";
    private static final String NOTICE = "notice";

    private AnnotationReport() {}

    static String render(Batch batch) {
        List<String> out = new ArrayList<>();
        for (Batch.Part part : batch.parts()) {
            if (part instanceof Batch.Unread unread) {
                out.add(line(
                        ERROR,
                        unread.file(),
                        unread.line(),
                        unread.column(),
                        "the rig file cannot be read",
                        List.of(unread.problem())));
            } else if (part instanceof Batch.Read read) {
                assessment(out, read, batch.failOn());
            }
        }
        for (String line : Story.baseline(batch)) {
            out.add(line(batch.baselineFails() ? ERROR : NOTICE, "", 0, 0, "akin", List.of(line)));
        }
        out.add(line(NOTICE, "", 0, 0, "akin", List.of(Tally.line(batch))));
        return String.join("\n", out) + "\n";
    }

    private static void assessment(List<String> out, Batch.Read read, FailOn failOn) {
        Assessment a = read.assessment();
        for (Assessment.Entry entry : a.findings()) {
            String level = entry.severity() == Severity.ADVICE ? NOTICE : WARNING;
            out.add(entry(
                    failOn.fails(entry.severity()) ? ERROR : level,
                    a,
                    entry,
                    entry.severity().word(),
                    Story.lines(entry)));
        }
        for (Assessment.Waived waived : a.waived()) {
            out.add(entry(NOTICE, a, waived.entry(), "waived", List.of(Story.agreed(waived))));
        }
        for (Assessment.Entry entry : a.known()) {
            out.add(entry(NOTICE, a, entry, "known", List.of(entry.because())));
        }
        Gap.of(a.unchecked())
                .forEach(gap -> out.add(line(
                        failOn.failsUnchecked() ? ERROR : NOTICE,
                        a.file(),
                        0,
                        0,
                        "not checked: a fact is not known",
                        List.of(gap.words(), "waits: " + String.join(", ", gap.waits())))));
        for (String note : a.notes()) {
            out.add(line(NOTICE, a.file(), 0, 0, Story.NOTES, List.of(note)));
        }
        for (Assessment.Caution caution : a.cautions()) {
            Place first = caution.reasons().get(0).place();
            out.add(line(
                    NOTICE,
                    a.file(),
                    first.line(),
                    first.column(),
                    "take care: " + caution.sentence(),
                    List.of(Story.here(caution), Story.CARE, "[" + caution.rule() + "]")));
        }
    }

    private static String entry(
            String level, Assessment a, Assessment.Entry entry, String label, List<String> message) {
        List<String> lines = new ArrayList<>(message);
        lines.add("[" + Story.placeWithSeverity(entry) + "]");
        return line(level, a.file(), entry.place().line(), entry.place().column(), label + ": " + entry.title(), lines);
    }

    private static String line(String command, String file, int line, int column, String title, List<String> message) {
        List<String> properties = new ArrayList<>();
        if (!file.isEmpty()) {
            properties.add("file=" + property(file));
        }
        if (line > 0) {
            properties.add("line=" + line);
            properties.add("col=" + column);
        }
        properties.add("title=" + property(title));
        return "::" + command + " " + String.join(",", properties) + "::"
                + String.join(
                        "%0A", message.stream().map(AnnotationReport::data).toList());
    }

    private static String data(String text) {
        return Wrap.clean(text).replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A");
    }

    private static String property(String text) {
        return data(text).replace(":", "%3A").replace(",", "%2C");
    }
}
