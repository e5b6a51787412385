package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Numbers;
import akin.engine.assess.Solution;
import akin.model.finding.Severity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import tools.jackson.core.JsonGenerator;

/** Settings that match, for people at a terminal and as JSON. */
public final class SolveReport {

    private static final int WIDTH = 80;
    private static final String INDENT = "    ";

    private SolveReport() {}

    /**
     * The answers in words.
     *
     * @param after the assessment of the rig file with the first answer of each unit made
     * @param written true when they were written to the file
     */
    public static String text(List<Solution> solutions, Assessment after, boolean written) {
        List<String> out = new ArrayList<>();
        wrapped(
                out,
                Wrap.clean(after.production()) + ": " + Wrap.clean(after.file()) + ", matched to "
                        + Wrap.clean(after.hero()) + " for " + Wrap.clean(after.tolerance()));
        for (Solution solution : solutions) {
            int number = 1;
            for (Solution.Answer answer : solution.answers()) {
                out.add("");
                answer(out, solution, answer, number++, written);
            }
            stuck(out, solution);
        }
        out.add("");
        wrapped(out, Tally.of(after).line(after.verdict().word()));
        for (Solution solution : solutions) {
            wrapped(
                    out,
                    Wrap.clean(solution.unit()) + ": " + solution.tried() + " plans judged of the "
                            + solution.room() + " that its settings give"
                            + (solution.stopped() ? "; stopped before the end, so better ones may be left" : ""));
        }
        return String.join("\n", out) + "\n";
    }

    private static void answer(
            List<String> out, Solution solution, Solution.Answer answer, int number, boolean written) {
        String unit = Wrap.clean(solution.unit());
        String first =
                answer.changes().isEmpty() ? unit + " stays as it is planned" : unit + (written ? " is set" : ": set");
        wrapped(
                out,
                (number == 1 ? first.replaceFirst("^", "") : "OR " + first)
                        + (solution.answers().size() == 1 ? "" : " (answer " + number + ")") + ": " + left(answer));
        for (Solution.Change change : answer.changes()) {
            for (Assessment.Change edit : change.edits()) {
                out.addAll(Wrap.lines(Wrap.clean(Story.change(edit)), INDENT, INDENT + INDENT, WIDTH));
            }
            if (change.otherwise().isEmpty() && change.more().isEmpty()) {
                out.addAll(Wrap.lines("Goes with the others.", INDENT + INDENT, INDENT + INDENT, WIDTH));
            }
            for (Solution.Reason reason : change.otherwise()) {
                otherwise(out, "Otherwise " + reason.severity().word() + ": ", reason);
            }
            for (Solution.Reason reason : change.more()) {
                otherwise(out, "Otherwise further off, " + reason.severity().word() + ": ", reason);
            }
        }
        if (number > 1) {
            told(out, "Against the first it brings: ", answer.brings());
            told(out, "Against the first it spares: ", answer.spares());
            if (answer.brings().isEmpty() && answer.spares().isEmpty()) {
                out.addAll(Wrap.lines("As good as the first, by other settings.", INDENT, INDENT, WIDTH));
            }
        } else {
            told(out, "Left: ", answer.findings());
        }
    }

    private static void otherwise(List<String> out, String what, Solution.Reason reason) {
        out.addAll(Wrap.lines(what + Wrap.clean(reason.because()), INDENT + INDENT, INDENT + INDENT, WIDTH));
    }

    private static String left(Solution.Answer answer) {
        return Arrays.stream(Severity.values())
                        .map(severity -> answer.count(severity) + " " + severity.word())
                        .collect(Collectors.joining(", "))
                + (answer.unchecked() == 0 ? "" : ", " + answer.unchecked() + " unchecked") + " left in the rig";
    }

    private static void told(List<String> out, String what, List<Solution.Reason> reasons) {
        for (Solution.Reason reason : reasons) {
            out.addAll(Wrap.lines(
                    what + Wrap.clean(reason.title()) + " (" + reason.rule() + ", " + reason.severity() + ")",
                    INDENT,
                    INDENT + INDENT,
                    WIDTH));
        }
    }

    private static void stuck(List<String> out, Solution solution) {
        if (!solution.conflict().isEmpty()) {
            out.add("");
            wrapped(
                    out,
                    "What is kept of " + Wrap.clean(solution.unit()) + " stands against a match: "
                            + String.join(", ", solution.conflict())
                            + (solution.conflict().size() == 1 ? "." : ", together."));
        }
        for (Solution.Relaxation relaxation : solution.relaxations()) {
            out.addAll(Wrap.lines(
                    "Letting go of " + relaxation.keep() + (relaxation.passes() ? " is enough: " : " helps: ")
                            + relaxation.changes().stream()
                                    .flatMap(change -> change.edits().stream())
                                    .map(edit -> Wrap.clean(Story.change(edit)))
                                    .collect(Collectors.joining("; ")),
                    INDENT,
                    INDENT + INDENT,
                    WIDTH));
        }
        for (Solution.Deadlock deadlock : solution.deadlocks()) {
            out.add("");
            String title = Wrap.clean(deadlock.finding().title()) + " ("
                    + deadlock.finding().rule() + ")";
            List<String> brings = new ArrayList<>();
            deadlock.instead()
                    .forEach(reason -> brings.add(
                            Wrap.clean(reason.title()) + " (" + reason.rule() + ", " + reason.severity() + ")"));
            deadlock.unchecked().forEach(rule -> brings.add(rule + " unchecked, which may be as bad"));
            wrapped(
                    out,
                    brings.isEmpty()
                            ? "No setting of " + Wrap.clean(solution.unit()) + " that was tried removes: " + title
                            : "What would remove: " + title + ", brings instead: " + String.join("; ", brings));
        }
    }

    private static void wrapped(List<String> out, String words) {
        out.addAll(Wrap.lines(words, "", "", WIDTH));
    }

    /** All of it for programs. */
    public static String json(List<Solution> solutions, Assessment after, String version) {
        return JsonText.write(json -> {
            json.writeStartObject();
            json.writeStringProperty("akin", version);
            json.writeStringProperty("rig", after.file());
            json.writeStringProperty("production", after.production());
            json.writeStringProperty("tolerance", after.tolerance());
            json.writeStringProperty("verdict", after.verdict().word());
            json.writeArrayPropertyStart("units");
            solutions.forEach(solution -> unit(json, solution));
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static void unit(JsonGenerator json, Solution solution) {
        json.writeStartObject();
        json.writeStringProperty("unit", solution.unit());
        json.writeNumberProperty("tried", solution.tried());
        json.writeNumberProperty("room", solution.room());
        json.writeBooleanProperty("stopped", solution.stopped());
        reasons(json, "before", solution.before());
        json.writeArrayPropertyStart("answers");
        for (Solution.Answer answer : solution.answers()) {
            json.writeStartObject();
            changes(json, answer.changes());
            json.writeObjectPropertyStart("counts");
            for (Severity severity : Severity.values()) {
                json.writeNumberProperty(severity.word(), answer.count(severity));
            }
            json.writeNumberProperty("unchecked", answer.unchecked());
            json.writeEndObject();
            reasons(json, "findings", answer.findings());
            reasons(json, "brings", answer.brings());
            reasons(json, "spares", answer.spares());
            json.writeEndObject();
        }
        json.writeEndArray();
        JsonText.strings(json, "conflict", solution.conflict());
        json.writeArrayPropertyStart("relaxations");
        for (Solution.Relaxation relaxation : solution.relaxations()) {
            json.writeStartObject();
            json.writeStringProperty("keep", relaxation.keep());
            json.writeBooleanProperty("passes", relaxation.passes());
            changes(json, relaxation.changes());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayPropertyStart("deadlocks");
        for (Solution.Deadlock deadlock : solution.deadlocks()) {
            json.writeStartObject();
            reasons(json, "finding", List.of(deadlock.finding()));
            reasons(json, "instead", deadlock.instead());
            JsonText.strings(json, "unchecked", deadlock.unchecked());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void changes(JsonGenerator json, List<Solution.Change> changes) {
        json.writeArrayPropertyStart("changes");
        for (Solution.Change change : changes) {
            json.writeStartObject();
            json.writeArrayPropertyStart("edits");
            for (Assessment.Change edit : change.edits()) {
                json.writeStartObject();
                json.writeStringProperty("path", edit.path());
                json.writeStringProperty("from", edit.from());
                json.writeStringProperty("to", edit.to());
                json.writeEndObject();
            }
            json.writeEndArray();
            reasons(json, "otherwise", change.otherwise());
            reasons(json, "more", change.more());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void reasons(JsonGenerator json, String name, List<Solution.Reason> reasons) {
        json.writeArrayPropertyStart(name);
        for (Solution.Reason reason : reasons) {
            json.writeStartObject();
            json.writeStringProperty("rule", reason.rule());
            json.writeStringProperty("severity", reason.severity().word());
            json.writeNumberProperty("magnitude", Numbers.exact(reason.magnitude()));
            json.writeStringProperty("title", reason.title());
            json.writeStringProperty("because", reason.because());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
