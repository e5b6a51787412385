package akin.engine.report.lut;

import akin.engine.report.Wrap;
import akin.model.look.CubeError;
import akin.model.look.LookTable;
import akin.model.look.ViewingLook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What {@code akin lut} says: the look, and for each unit its files, how far they are off, and what was left out. */
public final class LutReport {

    private static final int WIDTH = 80;
    private static final String INDENT = "    ";

    private LutReport() {}

    /** One unit. */
    public sealed interface Part {
        /** Name of the unit. */
        String unit();
    }

    /**
     * A unit that got tables.
     *
     * @param files the files written, by name
     * @param errors how far the cubes of each size are off
     * @param remarks what to know of the sizes, in sentences
     */
    public record Made(String unit, LookTable table, List<String> files, List<CubeError> errors, List<String> remarks)
            implements Part {

        /** Copies the lists. */
        public Made {
            files = List.copyOf(files);
            errors = List.copyOf(errors);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * A unit that got none.
     *
     * @param reason why not, and what would help
     * @param waiting true when it needs one; false when its picture is watched as it is
     */
    public record Skipped(String unit, String reason, boolean waiting) implements Part {}

    /** The whole report. */
    public static String text(String production, String rig, ViewingLook look, List<Part> parts) {
        List<String> out = new ArrayList<>();
        wrapped(out, "", production + ": " + rig + ", look-up tables to " + LutNotes.output(look.viewing()));
        LutNotes.look(look).forEach(note -> wrapped(out, "", note));
        for (Part part : parts) {
            out.add("");
            if (part instanceof Made made) {
                made(out, made);
            } else if (part instanceof Skipped skipped) {
                wrapped(out, "", skipped.unit() + ": no table. " + skipped.reason());
            }
        }
        return String.join("\n", out) + "\n";
    }

    private static void made(List<String> out, Made made) {
        wrapped(out, "", made.unit() + ": takes " + LutNotes.input(made.table()));
        wrapped(out, INDENT, "Gives " + LutNotes.output(made.table()) + ".");
        wrapped(out, INDENT, LutNotes.adaptation(made.table()));
        made.remarks().forEach(remark -> wrapped(out, INDENT, remark));
        made.files().forEach(file -> wrapped(out, INDENT, file));
        wrapped(
                out,
                INDENT,
                "Off the exact function between points, in 1023rds, over the 24 patches from 4 stops under to 4 over:");
        for (CubeError error : made.errors()) {
            out.add(String.format(
                    Locale.ROOT,
                    "%s%2d points: mean %.2f, 99 of 100 within %.1f, most %.1f",
                    INDENT + INDENT,
                    error.size(),
                    error.mean(),
                    error.nearlyAll(),
                    error.most()));
        }
        wrapped(out, INDENT + INDENT, "CLF: none between points: it holds the function itself, step by step");
    }

    private static void wrapped(List<String> out, String indent, String text) {
        out.addAll(Wrap.lines(Wrap.clean(text), indent, indent + INDENT, WIDTH));
    }
}
