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

    private final String file;
    private final String text;
    private final Deque<Open> open = new ArrayDeque<>();
    private @Nullable Node root;

    private YamlReader(String file, String text) {
        this.file = file;
        this.text = text;
    }

    /**
     * Reads a document.
     *
     * @param file the name to report it by
     * @throws BadInput when it is not one strict YAML document
     */
    public static Document read(String file, String text) {
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        if (body.codePointCount(0, body.length()) > LONGEST) {
            throw new BadInput(file, "longer than the " + LONGEST + " characters a rig or gear file may have");
        }
        return new Document(file, body, new YamlReader(file, body).root());
    }

    private Node root() {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setUseMarks(true)
                .setCodePointLimit(LONGEST + 1)
                .build();
        try {
            Iterator<Event> events = new Parse(settings).parseString(text).iterator();
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
            throw new BadInput(file, e.getProblemMark().map(YamlReader::at).orElse(Place.START), notYaml(e));
        } catch (ReaderException e) {
            throw new BadInput(
                    file,
                    atIndex(e.getPosition()),
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
            throw new BadInput(file, Place.START, "the file is empty");
        }
        return root;
    }

    private static String notYaml(MarkedYamlEngineException e) {
        String problem = e.getProblem() == null ? "it cannot be read" : e.getProblem();
        String context = e.getContext() == null ? "" : e.getContext() + ": ";
        return "not YAML: " + Say.clean(context + problem);
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
            if (key.isEmpty()) {
                throw new BadInput(file, place(event), "an empty key; a key is a word");
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
            put(new Node.Scalar(event.getValue(), event.isPlain(), place(event)));
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
        Place place = new Place(
                done.start.line(),
                done.start.column(),
                done.start.from(),
                place(event).to());
        put(
                done.mapping
                        ? new Node.Fields(java.util.Collections.unmodifiableMap(done.fields), done.flow, place)
                        : new Node.Items(List.copyOf(done.items), done.flow, place));
    }

    private void put(Node node) {
        Open parent = open.peek();
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

    private static Place place(Event event) {
        Optional<Mark> start = event.getStartMark();
        Optional<Mark> end = event.getEndMark();
        if (start.isEmpty() || end.isEmpty()) {
            return Place.START;
        }
        Mark from = start.get();
        return new Place(
                from.getLine() + 1,
                from.getColumn() + 1,
                from.getIndex(),
                end.get().getIndex());
    }

    private static Place at(Mark mark) {
        return new Place(mark.getLine() + 1, mark.getColumn() + 1, mark.getIndex(), mark.getIndex());
    }

    private Place atIndex(int index) {
        int line = 1;
        int column = 1;
        int seen = 0;
        for (int i = 0; i < text.length() && seen < index; i = text.offsetByCodePoints(i, 1), seen++) {
            if (text.charAt(i) == '\n') {
                line++;
                column = 1;
            } else {
                column++;
            }
        }
        return new Place(line, column, index, index);
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
