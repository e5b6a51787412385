package akin.engine.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks sentences into lines, and keeps what steers a terminal or a page out of them. */
public final class Wrap {

    private static final Pattern WORDS = Pattern.compile(" +");

    /** How a line starts that a build server takes for a command; a line of ours may break anywhere. */
    private static final Pattern COMMAND = Pattern.compile("(:(?=:)|##(?=\\[))");

    private static final int FIRST_WIDE = 0x1100;

    private Wrap() {}

    /** The text in lines of at most {@code width} columns, each after {@code indent}; a longer word is broken. */
    public static List<String> lines(String text, String first, String indent, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : WORDS.split(text, -1)) {
            if (!empty && columns(line) + 1 + columns(word) > width) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                empty = true;
            }
            line.append(empty ? "" : " ");
            int columns = columns(line);
            for (int i = 0; i < word.length(); i = word.offsetByCodePoints(i, 1)) {
                int c = word.codePointAt(i);
                if (columns + columns(c) > width) {
                    lines.add(line.toString());
                    line = new StringBuilder(indent);
                    columns = columns(line);
                }
                line.appendCodePoint(c);
                columns += columns(c);
            }
            empty = false;
        }
        lines.add(line.toString());
        return lines;
    }

    static int columns(CharSequence text) {
        return text.codePoints().map(Wrap::columns).sum();
    }

    /** Columns of a terminal that a character takes; the wide ones after Unicode Standard Annex 11, by script. */
    private static int columns(int c) {
        if (c < FIRST_WIDE) {
            return 1;
        }
        boolean wide = switch (Character.UnicodeScript.of(c)) {
            case HAN, HIRAGANA, KATAKANA, HANGUL, BOPOMOFO, YI -> true;
            default -> (c >= 0xFF01 && c <= 0xFF60) || (c >= 0x1F300 && c <= 0x1FAFF);
        };
        return wide ? 2 : 1;
    }

    /**
     * The text with control characters replaced, and broken up what a build server would read as a command in its log: text
     * of a rig file must steer neither a terminal nor a machine, nor end a document before its time.
     */
    public static String clean(String text) {
        String shown = visible(text);
        return COMMAND.matcher(shown).find() ? COMMAND.matcher(shown).replaceAll("$1 ") : shown;
    }

    /** The text with control characters replaced, for a page that nothing reads as a log. */
    public static String visible(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.appendCodePoint(steers(c) ? '\uFFFD' : c));
        return out.toString();
    }

    /**
     * True of a character that would move the cursor, hide or turn around text, or that no text may hold. Messages about what
     * was read judge for themselves: a report knows nothing of reading.
     */
    static boolean steers(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE -> true;
            default -> (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        };
    }
}
