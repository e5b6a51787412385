package akin.engine.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks sentences into lines, and keeps what steers a terminal or a page out of them. */
public final class Wrap {

    private static final Pattern WORDS = Pattern.compile(" +");

    /** The last two characters of every plane are none. */
    private static final int LAST_TWO = 0xFFFE;

    private static final int FIRST_WIDE = 0x1100;

    private Wrap() {}

    /** The text in lines of at most {@code width} columns, each after {@code indent}; a longer word is broken. */
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

    /** The text with control characters replaced: those of a rig file must not steer a terminal. */
    public static String clean(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            boolean odd = Character.isISOControl(c)
                    || (c & LAST_TWO) == LAST_TWO
                    || Character.getType(c) == Character.FORMAT
                    || Character.getType(c) == Character.SURROGATE
                    || Character.getType(c) == Character.LINE_SEPARATOR
                    || Character.getType(c) == Character.PARAGRAPH_SEPARATOR;
            out.appendCodePoint(odd ? '\uFFFD' : c);
        });
        return out.toString();
    }
}
