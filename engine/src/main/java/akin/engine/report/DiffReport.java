package akin.engine.report;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The difference of two texts in the unified form that patch programs read. */
public final class DiffReport {

    /** Lines shown around a change; what patch programs are used to. */
    private static final int CONTEXT = 3;

    private static final String NO_LINE_END = "\n\\ No newline at end of file";

    private DiffReport() {}

    /**
     * The difference, to the byte: line ends, marks and a missing last line end are part of it. Empty when there is none.
     *
     * @param name the name of the file, for both sides
     */
    public static String render(String name, String before, String after) {
        List<String> old = lines(before);
        List<String> lines =
                UnifiedDiffUtils.generateUnifiedDiff(name, name, old, DiffUtils.diff(old, lines(after)), CONTEXT);
        return lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
    }

    /** The same with every character that would steer a terminal replaced: to look at, not to apply. */
    public static String shown(String name, String before, String after) {
        StringBuilder out = new StringBuilder();
        for (String line : render(name, before, after).split("\n", -1)) {
            String bare = line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
            out.append(out.isEmpty() ? "" : "\n").append(Wrap.clean(bare));
        }
        return out.toString();
    }

    /** Lines without their end; a last line that has none says so, and so differs from one that has. */
    private static List<String> lines(String text) {
        if (text.isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        int last = lines.size() - 1;
        if (lines.get(last).isEmpty()) {
            lines.remove(last);
        } else {
            lines.set(last, lines.get(last) + NO_LINE_END);
        }
        return lines;
    }
}
