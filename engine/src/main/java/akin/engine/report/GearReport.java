package akin.engine.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What the catalogue and its packs hold, for people at a terminal. */
public final class GearReport {

    private static final int WIDTH = 80;
    private static final String INDENT = "    ";

    private GearReport() {}

    /**
     * An entry in a list.
     *
     * @param id its id
     * @param name what people call it by; empty when nothing is said
     * @param where file, line and column
     */
    public record Item(String id, String name, String where) {}

    /** A list of entries by kind. */
    public static String list(Map<String, List<Item>> kinds) {
        List<String> out = new ArrayList<>();
        kinds.forEach((kind, items) -> {
            if (!items.isEmpty()) {
                out.add((out.isEmpty() ? "" : "\n") + kind.toUpperCase(Locale.ROOT));
            }
            for (Item item : items) {
                String name = item.name().isEmpty() || item.name().equals(item.id()) ? "" : ": " + item.name();
                out.addAll(Wrap.lines(Wrap.clean(item.id() + name), INDENT, INDENT + INDENT, WIDTH));
                out.addAll(Wrap.lines(Wrap.clean(item.where()), INDENT + INDENT, INDENT + INDENT, WIDTH));
            }
        });
        return String.join("\n", out) + "\n";
    }

    /**
     * A fact of an entry.
     *
     * @param path dotted path below the entry
     * @param text as it is written
     * @param source where it is from; empty when nothing is said
     * @param where file, line and column
     */
    public record Fact(String path, String text, String source, String where) {}

    /**
     * All facts of an entry.
     *
     * @param name kind and id
     * @param places what it is made of, with places
     * @param unknown what is not known, by path, with what it would say
     */
    public static String show(String name, List<String> places, List<Fact> facts, Map<String, String> unknown) {
        List<String> out = new ArrayList<>();
        out.add(name.toUpperCase(Locale.ROOT).substring(0, name.indexOf('.')) + " "
                + Wrap.clean(name.substring(name.indexOf('.') + 1)));
        places.forEach(place -> out.addAll(Wrap.lines(Wrap.clean(place), INDENT, INDENT, WIDTH)));
        out.add("");
        for (Fact fact : facts) {
            out.addAll(Wrap.lines(Wrap.clean(fact.path() + ": " + fact.text()), INDENT, INDENT + INDENT, WIDTH));
            out.addAll(Wrap.lines(
                    Wrap.clean((fact.source().isEmpty() ? "no source given" : "from: " + fact.source()) + " ["
                            + fact.where() + "]"),
                    INDENT + INDENT,
                    INDENT + INDENT,
                    WIDTH));
        }
        out.add("");
        out.add(unknown.isEmpty() ? "NOTHING IS UNKNOWN" : "NOT KNOWN");
        unknown.forEach(
                (path, says) -> out.addAll(Wrap.lines(Wrap.clean(path + ": " + says), INDENT, INDENT + INDENT, WIDTH)));
        return String.join("\n", out) + "\n";
    }

    /**
     * A rule that cannot check a body, and the facts that would let it.
     *
     * @param rule id of the rule
     * @param facts each with where it is usually found
     */
    public record Waiting(String rule, List<String> facts) {}

    /** Which rules can and cannot check a body. */
    public static String trial(
            String name, String where, Collection<String> can, List<Waiting> cannot, Collection<String> besides) {
        List<String> out = new ArrayList<>();
        out.add("");
        out.add("BODY " + Wrap.clean(name));
        out.addAll(Wrap.lines(Wrap.clean(where), INDENT, INDENT, WIDTH));
        rules(out, "Can be checked by", can);
        if (!cannot.isEmpty()) {
            out.add("");
            out.add(INDENT + "Cannot be checked by " + cannot.size() + ", until these facts are known:");
        }
        for (Waiting one : cannot) {
            out.addAll(Wrap.lines(one.rule(), INDENT + INDENT, INDENT + INDENT, WIDTH));
            one.facts()
                    .forEach(fact ->
                            out.addAll(Wrap.lines(Wrap.clean(fact), INDENT.repeat(3), INDENT.repeat(4), WIDTH)));
        }
        rules(out, "Nothing to check in this trial for", besides);
        return String.join("\n", out) + "\n";
    }

    private static void rules(List<String> out, String what, Collection<String> rules) {
        if (!rules.isEmpty()) {
            out.add("");
            out.addAll(Wrap.lines(
                    what + " " + rules.size() + ": " + String.join(", ", rules), INDENT, INDENT + INDENT, WIDTH));
        }
    }
}
