package akin.engine.equip;

import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.Place;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One entry of the catalogue as it stands in a file.
 *
 * @param kind what it is: {@code bodies}, {@code lenses} ... or {@code encodings}, {@code gamuts}, {@code tolerances}
 * @param id the word a rig file uses for it
 * @param document the file
 * @param path where in it the entry stands
 * @param node its facts, those that it amends included
 * @param value what it was read as
 * @param under the entry that it amends; null when it stands by itself
 */
public record Entry(
        String kind,
        String id,
        Document document,
        String path,
        Node node,
        Object value,
        @Nullable Entry under) {

    private static final Set<String> BY_PROFILE = Set.of("iso-floors");
    private static final Set<String> FILE_KEYS =
            Set.of("akin-encoding", "akin-tolerance", "akin-gamuts", "id", "overrides");

    /**
     * One fact of an entry.
     *
     * @param text as it is written
     * @param source where it is from, as far as it says so itself or all facts around it do; null when nothing does
     * @param where file, line and column
     */
    public record Fact(String text, @Nullable String source, String where) {}

    /** Kind and id, such as {@code bodies.corvane-plover}. */
    public String name() {
        return kind + "." + id;
    }

    /** File, line and column of its first word. */
    public String where() {
        return at(document, place());
    }

    Place place() {
        Optional<Place> key = document.keyOf(path);
        if (key.isPresent()) {
            return key.get();
        }
        String named = path.isEmpty() ? "id" : path + ".id";
        return document.at(named).isPresent() ? document.placeOf(named) : document.placeOf(path);
    }

    static String at(Document document, Place place) {
        return document.file() + ":" + place.line() + ":" + place.column();
    }

    /** Its facts by dotted path below it, in the order of the file; those that it amends come first. */
    public Map<String, Fact> facts() {
        Map<String, Fact> facts = under == null ? new LinkedHashMap<>() : under.facts();
        written().forEach(facts::put);
        return facts;
    }

    /** The facts that its own file gives. */
    Map<String, Fact> written() {
        Map<String, Fact> facts = new LinkedHashMap<>();
        Node own = path.isEmpty() ? document.root() : document.at(path).orElse(node);
        collect(own, "", document.at(Node.SOURCE).map(Entry::text).orElse(null), 0, facts);
        return facts;
    }

    private void collect(Node at, String below, @Nullable String source, int depth, Map<String, Fact> facts) {
        if (at.bare() == at && at instanceof Node.Fields fields && structure(below, depth)) {
            Node.Field said = fields.fields().get(Node.SOURCE);
            String from = said == null ? source : text(said.value());
            fields.fields().forEach((key, field) -> {
                boolean ofFile = depth == 0 && path.isEmpty() && FILE_KEYS.contains(key);
                if (!key.equals(Node.SOURCE) && !ofFile) {
                    collect(field.value(), below.isEmpty() ? key : below + "." + key, from, depth + 1, facts);
                }
            });
            return;
        }
        String own = at.bare() != at && at instanceof Node.Fields sourced
                ? Optional.ofNullable(sourced.fields().get(Node.SOURCE))
                        .map(field -> text(field.value()))
                        .orElse(source)
                : source;
        facts.put(below, new Fact(text(at.bare()), own, at(document, at.bare().place())));
    }

    /** True of what holds facts and is none: the entry itself, its modes and profiles, one of them. */
    private static boolean structure(String below, int depth) {
        String first = below.contains(".") ? below.substring(0, below.indexOf('.')) : below;
        String last = below.substring(below.lastIndexOf('.') + 1);
        return depth == 0
                || (depth <= 2 && (Binder.PARTS.contains(first)))
                || (depth == 3 && BY_PROFILE.contains(last))
                || (depth == 1 && first.equals("limits"));
    }

    /** These facts laid over others. A fact is replaced whole; modes, profiles and the like are joined by id. */
    static Node laid(Node over, Node under) {
        return laid(over, under, "", 0);
    }

    private static Node laid(Node over, Node under, String below, int depth) {
        if (!(over instanceof Node.Fields above && under instanceof Node.Fields beneath && structure(below, depth))
                || over.bare() != over
                || under.bare() != under) {
            return over;
        }
        Map<String, Node.Field> joined = new LinkedHashMap<>(beneath.fields());
        above.fields().forEach((key, field) -> {
            Node.Field old = joined.get(key);
            String path = below.isEmpty() ? key : below + "." + key;
            joined.put(
                    key,
                    old == null
                            ? field
                            : new Node.Field(field.key(), laid(field.value(), old.value(), path, depth + 1)));
        });
        return new Node.Fields(joined, false, above.place());
    }

    /** A value as one would write it on one line. */
    static String text(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return scalar.text();
        }
        if (node instanceof Node.Items items) {
            return "["
                    + String.join(", ", items.items().stream().map(Entry::text).toList()) + "]";
        }
        StringBuilder text = new StringBuilder("{");
        ((Node.Fields) node)
                .fields()
                .forEach((key, field) -> text.append(text.length() == 1 ? "" : ", ")
                        .append(key)
                        .append(": ")
                        .append(text(field.value())));
        return text.append('}').toString();
    }
}
