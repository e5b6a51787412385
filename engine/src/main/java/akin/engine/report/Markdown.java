package akin.engine.report;

import java.util.regex.Pattern;

/** Text that must stay text in Markdown, whatever it holds. */
final class Markdown {

    /** Everything that can start emphasis, code, a link, a picture, a heading, a table, HTML or an entity, anywhere. */
    private static final Pattern SIGNS = Pattern.compile("([\\\\`*_{}\\[\\]<>#|!~&$])");

    /** What starts a list, a rule or a heading's underline at the start of a line only. */
    private static final Pattern START = Pattern.compile("^( *)([-+=]|[0-9]+(?=[.)](?: |$)))");

    /**
     * Where an address would become a link by itself. Readers look for those in the finished text, when an escape is no
     * longer seen, so that a space is put there.
     */
    private static final Pattern ADDRESS =
            Pattern.compile("(?i)(?<=www)(?=\\.)|(?<=:)(?=//)|(?<=\\S)(?=@)|(?<=@)(?=\\S)");

    private Markdown() {}

    static String text(String text) {
        String unlinked = ADDRESS.matcher(Wrap.clean(text)).replaceAll(" ");
        String escaped = SIGNS.matcher(unlinked).replaceAll("\\\\$1");
        return START.matcher(escaped).replaceFirst(match -> {
            String sign = match.group(2);
            return match.group(1) + (Character.isDigit(sign.charAt(0)) ? sign + "\\\\" : "\\\\" + sign);
        });
    }
}
