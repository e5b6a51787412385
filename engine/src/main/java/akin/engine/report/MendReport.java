package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Mending;
import java.util.ArrayList;
import java.util.List;

/** What was mended in a rig file, what is left and why, for people at a terminal. */
public final class MendReport {

    private static final int WIDTH = 80;
    private static final String INDENT = "    ";

    private MendReport() {}

    /**
     * Renders a mending.
     *
     * @param after the assessment of the mended file
     * @param made true when the file was written; false when this only shows what would be
     */
    public static String render(Mending mending, Assessment after, boolean made, Style style) {
        List<String> out = new ArrayList<>();
        out.addAll(Wrap.lines(Wrap.clean(after.production()) + ": " + Wrap.clean(after.file()), "", "", WIDTH));
        out.add("");
        if (mending.done().isEmpty()) {
            out.add("NOTHING MENDED: no fix is chosen and safe; the file is as it was");
        } else {
            out.add(made ? "MENDED" : "WOULD BE MENDED: the file is as it was");
        }
        int number = 1;
        for (Mending.Step step : mending.done()) {
            out.add("");
            TextReport.title(out, number++, step.title(), style);
            out.addAll(Wrap.lines(Wrap.clean(step.effect()), INDENT, INDENT, WIDTH));
            for (Assessment.Change change : step.edits()) {
                out.addAll(
                        Wrap.lines(Wrap.clean(Story.change(change)), INDENT + INDENT, INDENT + INDENT + INDENT, WIDTH));
            }
            out.add(INDENT + "[" + step.rule() + ", " + step.severity() + "]");
        }
        if (!mending.left().isEmpty()) {
            out.add("");
            out.add("LEFT");
        }
        for (Mending.Left left : mending.left()) {
            out.add("");
            TextReport.title(out, number++, left.title(), style);
            for (String why : left.why()) {
                out.addAll(Wrap.lines(Wrap.clean(why), INDENT, INDENT + INDENT, WIDTH));
            }
            out.addAll(Wrap.lines(
                    "[" + left.rule() + ", " + left.severity() + ", line "
                            + left.place().line() + ": " + left.path() + "]",
                    INDENT,
                    INDENT,
                    WIDTH));
        }
        out.add("");
        out.addAll(Wrap.lines(Tally.of(after).line(after.verdict().word()), "", "", WIDTH));
        return String.join("\n", out) + "\n";
    }
}
