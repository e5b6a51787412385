package akin.engine.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks sentences into lines. */
final class Wrap {

    private static final Pattern WORDS = Pattern.compile(" +");

    private Wrap() {}

    /** The text in lines of at most {@code width} characters, each after {@code indent}; a longer word stays whole. */
    static List<String> lines(String text, String first, String indent, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : WORDS.split(text, -1)) {
            if (!empty && columns(line) + 1 + columns(word) > width) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        lines.add(line.toString());
        return lines;
    }

    static int columns(CharSequence text) {
        return (int) text.codePoints().count();
    }

    /** The text with control characters replaced: those of a rig file must not steer a terminal. */
    static String clean(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            boolean odd = Character.isISOControl(c)
                    || Character.getType(c) == Character.FORMAT
                    || Character.getType(c) == Character.LINE_SEPARATOR
                    || Character.getType(c) == Character.PARAGRAPH_SEPARATOR;
            out.appendCodePoint(odd ? '\uFFFD' : c);
        });
        return out.toString();
    }
}
