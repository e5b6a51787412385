package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.model.rig.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The cards of a rig as text or Markdown. */
public final class CardReport {

    private static final int WIDTH = 80;
    private static final int LABEL = 14;

    private CardReport() {}

    /** How a card is written. */
    public enum Markup {
        /** For a terminal or a printed slip. */
        TEXT,
        /** For a document. */
        MARKDOWN
    }

    /** The cards of a rig, the hero's first. */
    public static String render(Rig rig, Assessment assessment, Markup markup) {
        return Card.of(rig, assessment).stream()
                .map(card -> render(card, markup))
                .collect(Collectors.joining("\n"));
    }

    private static String render(Card card, Markup markup) {
        List<String> out = new ArrayList<>();
        heading(out, card.heading(), markup, 2);
        card.sections().forEach(section -> section(out, section, markup));
        return String.join("\n", out) + "\n";
    }

    private static void section(List<String> out, Card.Section section, Markup markup) {
        heading(out, section.title(), markup, 3);
        for (Card.Line line : section.lines()) {
            if (markup == Markup.MARKDOWN) {
                out.add("- " + (line.label().isEmpty() ? "" : "**" + Markdown.text(line.label()) + "** ")
                        + Markdown.text(line.value()));
            } else {
                String label = "  " + line.label()
                        + " ".repeat(Math.max(1, LABEL - line.label().length()));
                out.addAll(Wrap.lines(Wrap.clean(line.value()), label, " ".repeat(LABEL + 2), WIDTH));
            }
        }
    }

    private static void heading(List<String> out, String title, Markup markup, int level) {
        if (markup == Markup.MARKDOWN) {
            out.add("");
            out.add("#".repeat(level) + " " + Markdown.text(title));
            out.add("");
        } else if (level == 2) {
            out.add(Wrap.clean(title));
        } else {
            out.add("");
            out.add(title + ":");
        }
    }
}
