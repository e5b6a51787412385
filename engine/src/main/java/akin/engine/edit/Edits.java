package akin.engine.edit;

import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.Place;
import akin.model.finding.Edit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Applies edits to the text of a document. Every byte that an edit does not name stays as it was. */
public final class Edits {

    /** Text that means itself without quotes wherever a value may stand, flow collections included. */
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9+][^\\n\\t:#,\\[\\]{}&*!|>'\"%@`]*(?<! )");

    private static final Pattern FLOW = Pattern.compile("\\[.*]|\\{.*}", Pattern.DOTALL);

    private Edits() {}

    /** One replacement in the text, by code points. */
    private record Splice(int from, int to, String text) {}

    /**
     * The document's text with the edits made.
     *
     * @throws BadInput when two edits are of the same setting, or an edit takes out something that is not there
     */
    public static String apply(Document document, List<Edit> edits) {
        List<Splice> splices = new ArrayList<>();
        Map<String, List<Edit>> added = new LinkedHashMap<>();
        for (Edit edit : edits) {
            Optional<Node> node = document.at(edit.path());
            if (node.isPresent()) {
                splices.add(
                        edit.to() == null
                                ? removal(document, edit.path(), node.get())
                                : change(document, node.get(), edit.to()));
            } else if (edit.to() == null) {
                throw document.error(edit.path(), "there is no " + edit.path() + " to take out");
            } else {
                added.computeIfAbsent(deepest(document, edit.path()), parent -> new ArrayList<>())
                        .add(edit);
            }
        }
        added.forEach((parent, of) -> splices.add(addition(document, parent, of)));
        splices.sort(Comparator.comparingInt(Splice::from).reversed());
        StringBuilder text = new StringBuilder(document.text());
        int before = Integer.MAX_VALUE;
        for (Splice splice : splices) {
            if (splice.to() > before) {
                throw new BadInput(document.file(), "two edits of the same setting");
            }
            before = splice.from();
            int from = document.text().offsetByCodePoints(0, splice.from());
            int to = document.text().offsetByCodePoints(from, splice.to() - splice.from());
            text.replace(from, to, splice.text());
        }
        return text.toString();
    }

    /** The text of the document at a place. */
    public static String slice(Document document, Place place) {
        String text = document.text();
        int from = text.offsetByCodePoints(0, place.from());
        return text.substring(from, text.offsetByCodePoints(from, place.to() - place.from()));
    }

    private static Splice change(Document document, Node node, String to) {
        Place span = span(node);
        String old = slice(document, span);
        return new Splice(span.from(), span.to(), quotedLike(old, to));
    }

    /** Quotes the new value as the old one was quoted, or where YAML needs it. */
    private static String quotedLike(String old, String to) {
        if (FLOW.matcher(to).matches()) {
            return to;
        }
        if (old.startsWith("\"") && to.indexOf('"') < 0 && to.indexOf('\\') < 0) {
            return '"' + to + '"';
        }
        if (old.startsWith("'") || !PLAIN.matcher(to).matches()) {
            return "'" + to.replace("'", "''") + "'";
        }
        return to;
    }

    /** Where a node's text begins and ends; a block collection's end mark lies behind trailing blank lines, so look inside. */
    private static Place span(Node node) {
        Place place = node.place();
        int end = end(node);
        return new Place(place.line(), place.column(), place.from(), end);
    }

    private static int end(Node node) {
        if (node instanceof Node.Items items && !items.flow() && !items.items().isEmpty()) {
            return end(items.items().get(items.items().size() - 1));
        }
        if (node instanceof Node.Fields fields
                && !fields.flow()
                && !fields.fields().isEmpty()) {
            return fields.fields().values().stream()
                    .mapToInt(field -> end(field.value()))
                    .max()
                    .orElse(node.place().to());
        }
        return node.place().to();
    }

    private static Splice removal(Document document, String path, Node node) {
        Place key = document.keyOf(path)
                .orElseThrow(() -> document.error(path, "only a key can be taken out, not an element of a list"));
        String parentPath = path.substring(0, Math.max(0, path.lastIndexOf('.')));
        Node parent =
                parentPath.isEmpty() ? document.root() : document.at(parentPath).orElseThrow();
        int from = key.from();
        int to = end(node);
        int[] text = document.text().codePoints().toArray();
        if (parent instanceof Node.Fields fields && fields.flow()) {
            int after = skip(text, to, ' ', 1);
            if (after < text.length && text[after] == ',') {
                return new Splice(from, skip(text, after + 1, ' ', 1), "");
            }
            int before = skip(text, from - 1, ' ', -1);
            return new Splice(text[before] == ',' ? before : from, to, "");
        }
        while (from > 0 && text[from - 1] != '\n') {
            from--;
        }
        while (to < text.length && text[to] != '\n') {
            to++;
        }
        return new Splice(from, Math.min(text.length, to + 1), "");
    }

    private static int skip(int[] text, int at, int over, int step) {
        int i = at;
        while (i >= 0 && i < text.length && text[i] == over) {
            i += step;
        }
        return i;
    }

    /** The longest part of a path that leads to a mapping of the document. */
    private static String deepest(Document document, String path) {
        String parent = path;
        while (!parent.isEmpty()) {
            int dot = parent.lastIndexOf('.');
            parent = dot < 0 ? "" : parent.substring(0, dot);
            Optional<Node> node = parent.isEmpty() ? Optional.of(document.root()) : document.at(parent);
            if (node.isPresent() && node.get() instanceof Node.Fields) {
                return parent;
            }
        }
        throw document.error(path, "there is no mapping to add " + path + " to");
    }

    private static Splice addition(Document document, String parent, List<Edit> edits) {
        Node.Fields fields = (Node.Fields)
                (parent.isEmpty() ? document.root() : document.at(parent).orElseThrow());
        if (fields.flow()) {
            StringBuilder text = new StringBuilder();
            for (Edit edit : edits) {
                text.append(text.isEmpty() && fields.fields().isEmpty() ? "" : ", ")
                        .append(entry(parent, edit));
            }
            int end = fields.fields().values().stream()
                    .mapToInt(f -> end(f.value()))
                    .max()
                    .orElse(fields.place().to() - 1);
            return new Splice(end, end, text.toString());
        }
        int column = fields.fields().values().iterator().next().key().column();
        int[] text = document.text().codePoints().toArray();
        int line = end(fields);
        while (line < text.length && text[line] != '\n') {
            line++;
        }
        StringBuilder lines = new StringBuilder();
        for (Edit edit : edits) {
            lines.append('\n').append(" ".repeat(column - 1)).append(entry(parent, edit));
        }
        return new Splice(line, line, lines.toString());
    }

    /** {@code key: value}; of a path several steps below the parent, nested flow mappings. */
    private static String entry(String parent, Edit edit) {
        String below = parent.isEmpty() ? edit.path() : edit.path().substring(parent.length() + 1);
        String[] keys = below.split("\\.", -1);
        StringBuilder text = new StringBuilder(keys[0]).append(": ");
        for (int i = 1; i < keys.length; i++) {
            text.append('{').append(keys[i]).append(": ");
        }
        text.append(quotedLike("", String.valueOf(edit.to())));
        return text.append("}".repeat(keys.length - 1)).toString();
    }
}
