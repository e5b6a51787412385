package akin.engine.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads one strict YAML 1.2 document from a text into a tree that knows its places.
 *
 * <p>Strict means: one document; no duplicate keys, anchors, aliases, merge keys or tags; keys are plain words; nesting
 * to a bounded depth. The tree is built from the parser's events without recursion, so that hostile nesting cannot
 * exhaust the stack.
 */
public final class YamlReader {

    /** Deeper than any rig or gear file goes. */
    static final int DEEPEST = 32;

    /** Longer than any rig or gear file is, in code points. */
    public static final int LONGEST = 1_000_000;

    /** More values than any rig or gear file holds; what a small file of many tiny values may cost in memory. */
    public static final int MOST = 100_000;

    /** What some editors put before the text of a file. It is kept, and counts as no column. */
    static final String MARK = "\uFEFF";

    private final String file;
    private final String text;
    private final int shift;
    private final Deque<Open> open = new ArrayDeque<>();
    private int @Nullable [] codePoints;
    private int values;
    private @Nullable Node root;

    private YamlReader(String file, String text) {
        this.file = file;
        this.text = text;
        this.shift = text.startsWith(MARK) ? 1 : 0;
    }

    /**
     * Reads a document.
     *
     * @param file the name to report it by
     * @throws BadInput when it is not one strict YAML document
     */
    public static Document read(String file, String text) {
        if (text.codePointCount(0, text.length()) > LONGEST) {
            throw new BadInput(file, "longer than the " + LONGEST + " characters a rig or gear file may have");
        }
        return new Document(file, text, new YamlReader(file, text).root());
    }

    private Node root() {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setUseMarks(true)
                .setCodePointLimit(LONGEST + 1)
                .build();
        try {
            Iterator<Event> events =
                    new Parse(settings).parseString(text.substring(shift)).iterator();
            int documents = 0;
            while (events.hasNext()) {
                Event event = events.next();
                if (event instanceof DocumentStartEvent) {
                    documents++;
                    if (documents > 1) {
                        throw new BadInput(file, place(event), "a second document starts here; a file holds one");
                    }
                } else {
                    take(event);
                }
            }
        } catch (MarkedYamlEngineException e) {
            throw notYaml(e);
        } catch (ReaderException e) {
            throw new BadInput(
                    file,
                    Place.of(text, e.getPosition() + shift),
                    String.format(
                            java.util.Locale.ROOT,
                            "the character U+%04X cannot stand in a YAML file; is this a text file?",
                            e.getCodePoint()));
        } catch (YamlEngineException e) {
            throw new BadInput(file, Place.START, "not YAML");
        }
        if (root == null
                || (root instanceof Node.Scalar scalar
                        && scalar.plain()
                        && scalar.text().isEmpty())) {
            throw new BadInput(file, Place.START, "nothing is written in this file but blanks or comments");
        }
        return root;
    }

    /** The parser speaks of its own workings; what a person most often wrote to get there is said instead. */
    private BadInput notYaml(MarkedYamlEngineException e) {
        Place place = e.getProblemMark().map(this::at).orElse(Place.START);
        Place start = e.getContextMark().map(this::at).orElse(place);
        String problem = e.getProblem() == null ? "" : e.getProblem();
        String context = e.getContext() == null ? "" : e.getContext();
        if (problem.contains("(TAB)")) {
            return new BadInput(file, place, "a tab stands here; write spaces");
        }
        if (problem.contains("mapping values are not allowed")) {
            return new BadInput(
                    file,
                    place,
                    "this colon makes no key: write one 'key: value' to a line, in line with the keys around it, and"
                            + " quotes around a value with a colon in it");
        }
        if (problem.contains("expected '<document start>'")) {
            return new BadInput(file, place, "this stands behind the end of the document; a file holds one");
        }
        if (context.contains("quoted scalar") && problem.contains("end of stream")) {
            return new BadInput(file, start, "the quotation mark that opens here is not closed");
        }
        if (context.contains("flow sequence") || context.contains("flow mapping")) {
            boolean list = context.contains("sequence");
            return new BadInput(
                    file,
                    place,
                    "a comma or " + (list ? "]" : "}") + " belongs here, for the " + (list ? "[" : "{") + " on line "
                            + start.line() + ", column " + start.column());
        }
        if (problem.contains("expected <block end>") || problem.contains("sequence entries are not allowed")) {
            return new BadInput(
                    file,
                    place,
                    "this does not go with the lines before it: keys of one mapping start in one column, and behind a"
                            + " value stands nothing but a comment");
        }
        if (problem.contains("that cannot start any token")) {
            return new BadInput(
                    file, place, "a value cannot start with " + Say.quote(sign(place)) + "; put it in quotes");
        }
        return new BadInput(
                file,
                place,
                "not YAML: " + (context.isEmpty() ? "" : context + ": ")
                        + (problem.isEmpty() ? "unreadable" : problem));
    }

    private String sign(Place place) {
        return Character.toString(text.codePointAt(text.offsetByCodePoints(0, place.from())));
    }

    private void take(Event event) {
        switch (event.getEventId()) {
            case Alias ->
                throw new BadInput(
                        file,
                        place(event),
                        "the alias *"
                                + Say.clean(((AliasEvent) event).getAlias().toString())
                                + " stands here; write the value itself, aliases are not read");
            case Scalar -> scalar((ScalarEvent) event);
            case SequenceStart, MappingStart -> start((CollectionStartEvent) event);
            case SequenceEnd, MappingEnd -> end(event);
            default -> {}
        }
    }

    private void scalar(ScalarEvent event) {
        refuseDecoration(event, event.getTag().orElse(null));
        Open parent = open.peek();
        if (parent != null && parent.awaitsKey()) {
            String key = event.getValue();
            if (key.equals("<<")) {
                throw new BadInput(file, place(event), "merge keys (<<) are not read; write the values themselves");
            }
            if (key.isEmpty() || key.codePoints().anyMatch(Say::hidden)) {
                throw new BadInput(file, place(event), "read the key " + Say.quote(key) + "; a key is a word");
            }
            Node.Field twin = parent.fields.get(key);
            if (twin != null) {
                throw new BadInput(
                        file,
                        place(event),
                        "the key " + Say.quote(key) + " stands here again; it was first given on line "
                                + twin.key().line());
            }
            parent.key = key;
            parent.keyPlace = place(event);
        } else {
            Place place = place(event);
            boolean block =
                    event.getScalarStyle() == ScalarStyle.LITERAL || event.getScalarStyle() == ScalarStyle.FOLDED;
            put(new Node.Scalar(event.getValue(), event.isPlain(), block ? trimmed(place) : place));
        }
    }

    private void start(CollectionStartEvent event) {
        refuseDecoration(event, event.getTag().orElse(null));
        Open parent = open.peek();
        if (parent != null && parent.awaitsKey()) {
            throw new BadInput(file, place(event), "a list or mapping stands where a key belongs; a key is a word");
        }
        if (open.size() >= DEEPEST) {
            throw new BadInput(file, place(event), "nested deeper than " + DEEPEST + " levels");
        }
        open.push(new Open(event instanceof MappingStartEvent, event.getFlowStyle() == FlowStyle.FLOW, place(event)));
    }

    private void end(Event event) {
        Open done = open.pop();
        // A block collection's end mark lies behind the blank lines and comments that follow it.
        int to = done.flow ? place(event).to() : Math.max(done.start.from(), done.last);
        Place place = new Place(done.start.line(), done.start.column(), done.start.from(), to);
        put(
                done.mapping
                        ? new Node.Fields(java.util.Collections.unmodifiableMap(done.fields), done.flow, place)
                        : new Node.Items(List.copyOf(done.items), done.flow, place));
    }

    /** A block scalar's end mark lies behind its last line break, or behind blank lines that are no part of it. */
    private Place trimmed(Place place) {
        if (codePoints == null) {
            codePoints = text.codePoints().toArray();
        }
        boolean keep = false;
        for (int i = place.from(); i < place.to() && codePoints[i] != '\n'; i++) {
            keep |= codePoints[i] == '+';
        }
        int to = place.to();
        while (to > place.from() && Character.isWhitespace(codePoints[to - 1])) {
            to--;
            if (keep && codePoints[to] == '\n') {
                to -= to > place.from() && codePoints[to - 1] == '\r' ? 1 : 0;
                break;
            }
        }
        return new Place(place.line(), place.column(), place.from(), to);
    }

    private void put(Node node) {
        Open parent = open.peek();
        if (++values > MOST) {
            throw new BadInput(file, node.place(), "more than the " + MOST + " values a rig or gear file may have");
        }
        if (parent != null) {
            parent.last = node.place().to();
        }
        if (parent == null) {
            root = node;
        } else if (parent.mapping) {
            parent.fields.put(
                    java.util.Objects.requireNonNull(parent.key),
                    new Node.Field(java.util.Objects.requireNonNull(parent.keyPlace), node));
            parent.key = null;
        } else {
            parent.items.add(node);
        }
    }

    private void refuseDecoration(NodeEvent event, @Nullable String tag) {
        if (event.getAnchor().isPresent()) {
            throw new BadInput(
                    file,
                    place(event),
                    "the anchor &" + Say.clean(event.getAnchor().get().toString())
                            + " stands here; anchors and aliases are not read");
        }
        if (tag != null) {
            throw new BadInput(file, place(event), "the tag " + Say.quote(tag) + " stands here; tags are not read");
        }
    }

    private Place place(Event event) {
        Optional<Mark> start = event.getStartMark();
        Optional<Mark> end = event.getEndMark();
        if (start.isEmpty() || end.isEmpty()) {
            return Place.START;
        }
        Mark from = start.get();
        return new Place(
                from.getLine() + 1,
                from.getColumn() + 1,
                from.getIndex() + shift,
                end.get().getIndex() + shift);
    }

    private Place at(Mark mark) {
        int index = mark.getIndex() + shift;
        return new Place(mark.getLine() + 1, mark.getColumn() + 1, index, index);
    }

    /** A list or mapping that has not ended yet. */
    private static final class Open {
        private final boolean mapping;
        private final boolean flow;
        private final Place start;
        private final Map<String, Node.Field> fields = new LinkedHashMap<>();
        private final List<Node> items = new ArrayList<>();
        private @Nullable String key;
        private @Nullable Place keyPlace;
        private int last;

        private Open(boolean mapping, boolean flow, Place start) {
            this.mapping = mapping;
            this.flow = flow;
            this.start = start;
        }

        private boolean awaitsKey() {
            return mapping && key == null;
        }
    }
}
