package akin.engine.edit;

import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.Place;
import akin.engine.read.YamlReader;
import akin.model.finding.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Applies edits to the text of a document. Every byte that an edit does not name stays as it was. */
public final class Edits {

    /** Text that means itself without quotes wherever a value may stand, flow collections included. */
    private static final Pattern PLAIN = Pattern.compile(
            "(?!(?:null|Null|NULL)\\z)[A-Za-z0-9+]" + "[^\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}:#,\\[\\]{}&*!|>'\"%@`]*(?<! )");

    private static final Pattern HIDDEN = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}]");
    private static final Pattern FLOW = Pattern.compile("\\[.*]|\\{.*}", Pattern.DOTALL);

    /** What stands below here is one key, dots and all: a reason for a setting, such as {@code lens.stop}. */
    private static final Pattern REASONS = Pattern.compile("(units\\.[^.]+\\.intent)\\.(.+)");

    private final Document document;
    private final int[] text;

    private Edits(Document document) {
        this.document = document;
        this.text = document.text().codePoints().toArray();
    }

    /**
     * The document's text with the edits made.
     *
     * @throws BadInput when two edits are of the same setting, or an edit takes out something that is not there
     */
    public static String apply(Document document, List<Edit> edits) {
        for (int i = 0; i < edits.size(); i++) {
            for (Edit other : edits.subList(0, i)) {
                if (within(edits.get(i).path(), other.path())
                        || within(other.path(), edits.get(i).path())) {
                    throw document.error(
                            edits.get(i).path(), "two edits of " + other.path() + "; one setting takes one edit");
                }
            }
        }
        // One after the other: each sees the text that the one before left, so none needs to know of the rest.
        Document now = document;
        String text = document.text();
        for (Edit edit : edits) {
            now = text.equals(now.text()) ? now : YamlReader.read(document.file(), text);
            text = new Edits(now).make(edit);
        }
        return text;
    }

    /** The text of the document at a place. */
    public static String slice(Document document, Place place) {
        String text = document.text();
        int from = text.offsetByCodePoints(0, place.from());
        return text.substring(from, text.offsetByCodePoints(from, place.to() - place.from()));
    }

    /** A value as it is written where nothing stands yet: as it is if YAML allows that, else in quotes. */
    public static String written(String value) {
        return quotedLike("", value);
    }

    /** A value in quotes. */
    public static String quoted(String value) {
        return quotedLike("'", value);
    }

    private static boolean within(String path, String around) {
        return path.equals(around) || path.startsWith(around + ".");
    }

    private String make(Edit edit) {
        Optional<Node> node = document.at(edit.path());
        if (node.isPresent()) {
            return edit.to() == null ? remove(edit.path(), node.get()) : change(edit.path(), node.get(), edit.to());
        }
        if (edit.to() == null) {
            throw document.error(edit.path(), "there is no " + edit.path() + " to take out");
        }
        return add(edit.path(), edit.to());
    }

    private String splice(int from, int to, String with) {
        return new String(text, 0, from) + with + new String(text, to, text.length - to);
    }

    private String change(String path, Node node, String to) {
        int from = node.place().from();
        int end = node.place().to();
        if (from == end) {
            return splice(from, end, " " + quotedLike("", to));
        }
        if (node instanceof Node.Scalar) {
            return splice(from, end, quotedLike(slice(document, node.place()), to));
        }
        boolean flow = node instanceof Node.Items items ? items.flow() : ((Node.Fields) node).flow();
        Optional<Place> key = document.keyOf(path);
        if (flow || key.isEmpty()) {
            return splice(from, end, quotedLike("", to));
        }
        if (node instanceof Node.Items items) {
            Optional<String> byItems = changeItems(items, key.get(), to);
            if (byItems.isPresent()) {
                return byItems.get();
            }
        }
        // A block collection starts on a line of its own; what replaces it moves up behind the key if nothing is
        // between.
        int before = from;
        while (before > key.get().to() && Character.isWhitespace(text[before - 1])) {
            before--;
        }
        boolean commented = before > 0 && text[before - 1] != ':';
        String indent = node.place().column() > key.get().column() ? "" : "  ";
        return commented
                ? splice(from, end, indent + quotedLike("", to))
                : splice(before, end, " " + quotedLike("", to));
    }

    /**
     * A block list with other items, line by line: what stays keeps its line and the comment on it, and lines that are comments
     * stay. None where an item shares its line with anything else, or nothing would be kept by it.
     */
    private Optional<String> changeItems(Node.Items items, Place key, String to) {
        Optional<List<String>> wanted = scalars(to);
        if (wanted.isEmpty() || !items.items().stream().allMatch(this::hasItsLine)) {
            return Optional.empty();
        }
        int keep = 0;
        List<Place> gone = new ArrayList<>();
        for (Node item : items.items()) {
            if (keep < wanted.get().size()
                    && ((Node.Scalar) item).text().equals(wanted.get().get(keep))) {
                keep++;
            } else {
                gone.add(item.place());
            }
        }
        boolean commented = slice(document, items.place()).contains("#");
        if (keep == 0 && !commented) {
            return Optional.empty();
        }
        Place first = items.items().get(0).place();
        String start = new String(text, lineStart(first.from()), first.from() - lineStart(first.from()));
        List<String> fresh = wanted.get().subList(keep, wanted.get().size());
        int last = items.items().get(items.items().size() - 1).place().to();
        StringBuilder out = new StringBuilder();
        int done = 0;
        if (wanted.get().isEmpty()) {
            int colon = key.to();
            while (text[colon] != ':') {
                colon++;
            }
            out.append(new String(text, 0, colon + 1)).append(" []");
            done = colon + 1;
        }
        int behind = lineEnd(last);
        boolean lastGone = !gone.isEmpty() && gone.get(gone.size() - 1).to() == last;
        for (Place item : gone) {
            boolean end = item.to() == last;
            // Of the last line the break before it goes, so that the end of the file stays as it was.
            int from = end ? breakBefore(lineStart(item.from())) : lineStart(item.from());
            out.append(new String(text, done, Math.max(0, from - done)));
            done = Math.max(done, end ? behind : behindBreak(lineEnd(item.to())));
        }
        if (!lastGone) {
            out.append(new String(text, done, behind - done));
            done = behind;
        }
        for (String item : fresh) {
            out.append(newline()).append(start).append(quotedLike("", item));
        }
        return Optional.of(
                out.append(new String(text, done, text.length - done)).toString());
    }

    private boolean hasItsLine(Node item) {
        if (!(item instanceof Node.Scalar)) {
            return false;
        }
        int from = lineStart(item.place().from());
        int dash = from;
        while (text[dash] == ' ') {
            dash++;
        }
        boolean behindDash = text[dash] == '-';
        for (int i = dash + 1; i < item.place().from(); i++) {
            behindDash &= text[i] == ' ';
        }
        return behindDash && lineEnd(item.place().from()) >= item.place().to();
    }

    /** The items of a flow list of single values; none of anything else. */
    private static Optional<List<String>> scalars(String to) {
        if (!FLOW.matcher(to).matches()) {
            return Optional.empty();
        }
        return YamlReader.read("edit", "to: " + to)
                .at("to")
                .filter(Node.Items.class::isInstance)
                .map(list -> ((Node.Items) list).items())
                .filter(list -> list.stream().allMatch(Node.Scalar.class::isInstance))
                .map(list ->
                        list.stream().map(item -> ((Node.Scalar) item).text()).toList());
    }

    /** Quotes the new value as the old one was quoted, or where YAML needs it. */
    private static String quotedLike(String old, String to) {
        if (FLOW.matcher(to).matches()) {
            return to;
        }
        if (old.startsWith("\"") || HIDDEN.matcher(to).find()) {
            return doubleQuoted(to);
        }
        if (old.startsWith("'") || !PLAIN.matcher(to).matches()) {
            return "'" + to.replace("'", "''") + "'";
        }
        return to;
    }

    private static String doubleQuoted(String to) {
        StringBuilder out = new StringBuilder("\"");
        to.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                out.append('\\').appendCodePoint(c);
            } else if (HIDDEN.matcher(Character.toString(c)).matches()) {
                out.append(String.format(Locale.ROOT, "\\U%08X", c));
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.append('"').toString();
    }

    private String remove(String path, Node node) {
        Place key = document.keyOf(path)
                .orElseThrow(() -> document.error(path, "only a key can be taken out, not an element of a list"));
        Node.Fields parent = document.holderOf(path).orElseThrow();
        if (parent.fields().size() == 1) {
            return parent.flow()
                    ? splice(parent.place().from() + 1, parent.place().to() - 1, "")
                    : splice(parent.place().from(), parent.place().to(), "{}");
        }
        return parent.flow() ? removeInFlow(key, node) : removeLines(key, node);
    }

    private String removeInFlow(Place key, Node node) {
        int after = behindSpace(node.place().to());
        if (text[after] == ',') {
            int next = after + 1;
            while (text[next] == ' ') {
                next++;
            }
            return splice(key.from(), next, "");
        }
        // The last one, without a comma behind it: the comma before it goes too, if nothing but space is between.
        int from = key.from();
        while (Character.isWhitespace(text[from - 1])) {
            from--;
        }
        return splice(
                text[from - 1] == ',' ? from - 1 : key.from(), node.place().to(), "");
    }

    private String removeLines(Place key, Node node) {
        int from = key.from();
        while (from > 0 && (text[from - 1] == ' ' || text[from - 1] == '\uFEFF')) {
            from--;
        }
        int to = lineEnd(node.place().to());
        if (from == 0 || isBreak(text[from - 1])) {
            int start = from < text.length && text[from] == '\uFEFF' ? 1 : from;
            return splice(start, to < text.length ? behindBreak(to) : to, "");
        }
        // The first key behind a list's dash: the key after it takes its place.
        int next = to;
        while (next < text.length && Character.isWhitespace(text[next])) {
            next++;
        }
        return splice(key.from(), next, "");
    }

    private String add(String path, String to) {
        String parent = deepest(path);
        Node.Fields fields = mapping(parent).orElseThrow();
        String entry = entry(steps(path, parent), to);
        if (fields.fields().isEmpty()) {
            int end = fields.place().to() - 1;
            return splice(end, end, entry);
        }
        int end = fields.fields().values().stream()
                .mapToInt(field ->
                        Math.max(field.key().to(), field.value().place().to()))
                .max()
                .orElseThrow();
        if (fields.flow()) {
            return splice(end, end, ", " + entry);
        }
        int column = fields.fields().values().iterator().next().key().column();
        int line = lineEnd(end);
        return splice(line, line, newline() + " ".repeat(column - 1) + entry);
    }

    /** The keys that lead from a part of a path to its end. */
    private static List<String> steps(String path, String from) {
        Matcher reason = REASONS.matcher(path);
        boolean dotted = reason.matches();
        String plain = dotted ? reason.group(1) : path;
        List<String> steps = new ArrayList<>();
        if (plain.length() > from.length()) {
            steps.addAll(List.of(
                    plain.substring(from.isEmpty() ? 0 : from.length() + 1).split("\\.", -1)));
        }
        if (dotted) {
            steps.add(reason.group(2));
        }
        return steps;
    }

    /** {@code key: value}; of several keys, nested flow mappings. */
    private static String entry(List<String> keys, String to) {
        StringBuilder text = new StringBuilder(quotedLike("", keys.get(0))).append(": ");
        for (String key : keys.subList(1, keys.size())) {
            text.append('{').append(quotedLike("", key)).append(": ");
        }
        text.append(quotedLike("", to));
        return text.append("}".repeat(keys.size() - 1)).toString();
    }

    /** The longest part of a path that leads to a mapping of the document. */
    private String deepest(String path) {
        Matcher reason = REASONS.matcher(path);
        for (String parent = reason.matches() ? reason.group(1) + "." : path; !parent.isEmpty(); ) {
            parent = parentOf(parent);
            if (parent.isEmpty() || document.at(parent).isPresent()) {
                if (mapping(parent).isPresent()) {
                    return parent;
                }
                break;
            }
        }
        throw document.error(path, "there is no mapping to add " + path + " to");
    }

    private Optional<Node.Fields> mapping(String path) {
        Optional<Node> node = path.isEmpty() ? Optional.of(document.root()) : document.at(path);
        return node.map(Node::bare).filter(Node.Fields.class::isInstance).map(Node.Fields.class::cast);
    }

    private static String parentOf(String path) {
        return path.substring(0, Math.max(0, path.lastIndexOf('.')));
    }

    /** The line break that the file uses first. */
    private String newline() {
        int end = lineEnd(0);
        return end == text.length ? "\n" : new String(text, end, behindBreak(end) - end);
    }

    private int lineEnd(int at) {
        int end = at;
        while (end < text.length && !isBreak(text[end])) {
            end++;
        }
        return end;
    }

    private int lineStart(int at) {
        int start = at;
        while (start > 0 && !isBreak(text[start - 1])) {
            start--;
        }
        return start;
    }

    /** Where the break begins that ends the line before. */
    private int breakBefore(int lineStart) {
        int at = lineStart - 1;
        return at > 0 && text[at] == '\n' && text[at - 1] == '\r' ? at - 1 : at;
    }

    private int behindBreak(int at) {
        return at + (text[at] == '\r' && at + 1 < text.length && text[at + 1] == '\n' ? 2 : 1);
    }

    /** The next character that is neither space nor comment. */
    private int behindSpace(int at) {
        int i = at;
        while (Character.isWhitespace(text[i]) || text[i] == '#') {
            i = text[i] == '#' ? lineEnd(i) : i + 1;
        }
        return i;
    }

    private static boolean isBreak(int c) {
        return c == '\n' || c == '\r';
    }
}
