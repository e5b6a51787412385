package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.model.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The rule book for people at a terminal. */
public final class PageReport {

    private static final int WIDTH = 80;
    private static final String INDENT = "    ";

    private PageReport() {}

    /** Every rule by topic, each with what it finds. */
    public static String index(RuleBook book) {
        List<String> out = new ArrayList<>();
        // In the order of the book, which ends with the topics that packs bring.
        for (String topic :
                book.pages().stream().map(RulePage::topic).distinct().toList()) {
            List<RulePage> pages = book.pages().stream()
                    .filter(page -> page.topic().equals(topic))
                    .toList();
            out.add((out.isEmpty() ? "" : "\n") + topic);
            for (RulePage page : pages) {
                out.add("  " + page.id() + severities(page, " (", ")"));
                out.addAll(Wrap.lines(inWords(page.title()), INDENT, INDENT, WIDTH));
            }
        }
        return String.join("\n", out) + "\n";
    }

    /**
     * One page.
     *
     * @param body its text, without the front matter
     * @param worked what its first example gives; empty for a rule that only gives levels to aim at
     */
    public static String page(RulePage page, String body, Optional<Assessment.Entry> worked) {
        List<String> out = new ArrayList<>();
        out.add(page.id() + severities(page, " (", ")"));
        out.addAll(Wrap.lines(inWords(page.title()), "", "", WIDTH));
        out.add("");
        out.add(body.strip());
        worked.ifPresent(entry -> {
            out.add("");
            out.add("## The first example, worked");
            out.add("");
            out.addAll(TextReport.finding(entry));
        });
        out.add("");
        out.add("## Needs");
        out.add("");
        out.add(page.needs().isEmpty() ? "nothing beyond the rig file" : String.join(", ", page.needs()));
        out.add("");
        out.add("## Sources");
        out.add("");
        for (String source : page.sources()) {
            out.addAll(Wrap.lines(source, "- ", "  ", WIDTH));
        }
        out.add("");
        return String.join("\n", out) + "\n";
    }

    /** Names of the example's units for {unit} and {hero}; what only a rig has, by its name. */
    public static String inWords(String template) {
        return template.replace("{unit}", "B").replace("{hero}", "A").replaceAll("\\{([a-z0-9-]+)(:[a-z]+)?}", "<$1>");
    }

    private static String severities(RulePage page, String before, String after) {
        return page.severities().isEmpty()
                ? ""
                : page.severities().stream().map(Severity::word).collect(Collectors.joining(", ", before, after));
    }
}
