package akin.engine.read;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** How error messages quote what was read and suggest what may have been meant. */
public final class Say {

    private static final int LONGEST_QUOTE = 60;
    private static final int SHORTEST_PART = 4;
    private static final LevenshteinDistance DISTANCE = LevenshteinDistance.getDefaultInstance();

    private Say() {}

    /** The message of an exception that was made for the person who wrote the file. */
    public static String of(Throwable problem) {
        String message = problem.getMessage();
        return message == null ? "this cannot be read" : message;
    }

    /** The text between quotation marks, shortened, with control characters made visible. */
    public static String quote(String text) {
        return "'" + clean(text) + "'";
    }

    /** The text shortened, with control characters made visible. */
    public static String clean(String text) {
        if (text.codePointCount(0, text.length()) <= LONGEST_QUOTE) {
            return visible(text);
        }
        return visible(text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE))) + '…';
    }

    /** The whole text, with control characters made visible. */
    public static String visible(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (c == '\n') {
                out.append("\\n");
            } else if (c == '\t') {
                out.append("\\t");
            } else if (hidden(c)) {
                out.append(String.format(Locale.ROOT, "\\u%04X", c));
            } else {
                out.appendCodePoint(c);
            }
        });
        // What a build server would take for a command wherever it stands in its log.
        return out.indexOf("##[") < 0 ? out.toString() : out.toString().replace("##[", "## [");
    }

    /** True of a character that would move the cursor, hide or turn around text on a terminal. */
    static boolean hidden(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE -> true;
            default -> false;
        };
    }

    /** " Did you mean 'x'?" when one of the words is near to what was read; otherwise nothing. */
    public static String nearest(String read, Collection<String> words) {
        String best = "";
        int distance = Integer.MAX_VALUE;
        for (String word : words) {
            int d = distance(clean(read).toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
            if (d < distance) {
                distance = d;
                best = word;
            }
        }
        int most = Math.max(1, Math.min(read.length(), best.length()) / 2);
        if (distance > most || distance >= Math.max(read.length(), best.length())) {
            best = words.stream()
                    .filter(word -> read.length() >= SHORTEST_PART && word.contains(read))
                    .findFirst()
                    .orElse("");
        }
        return best.isEmpty() ? "" : " Did you mean " + quote(best) + "?";
    }

    /** How far words are apart; of those with a topic before a stroke, how far without it, and a little for another topic. */
    private static int distance(String read, String word) {
        int whole = DISTANCE.apply(read, word);
        int behind = word.indexOf('/') + 1;
        if (behind == 0) {
            return whole;
        }
        int topic = read.indexOf('/') + 1;
        return Math.min(whole, DISTANCE.apply(read.substring(topic), word.substring(behind)) + (topic == 0 ? 0 : 1));
    }

    /** The words with commas, at most a dozen. */
    public static String list(Collection<String> words) {
        List<String> shown = words.stream().limit(12).map(Say::clean).toList();
        return String.join(", ", shown) + (words.size() > shown.size() ? ", …" : "");
    }
}
