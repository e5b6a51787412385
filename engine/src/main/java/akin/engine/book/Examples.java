package akin.engine.book;

import akin.engine.read.BadInput;
import akin.engine.read.ClipSheet;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.Place;
import akin.engine.read.YamlReader;
import akin.model.footage.Clip;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Examples on rule pages are changes to one matched pair, so that they show only what matters. This lays them over it.
 */
public final class Examples {

    private static final String GONE = "~";
    private static final String CLIPS = "clips";

    /** What a clip says of itself that is as the matched pair plans it. */
    private static final Map<String, String> AS_PLANNED = Map.ofEntries(
            Map.entry("rate", "24000/1001"),
            Map.entry("average-rate", "24000/1001"),
            Map.entry("picture", "6144x3456"),
            Map.entry("pixel-shape", "1"),
            Map.entry("bits", "10"),
            Map.entry("scan", "progressive"),
            Map.entry("timecode", "10:00:00:00"),
            Map.entry("timecode-rate", "24000/1001"),
            Map.entry("frames", "240"),
            Map.entry("seconds", "10.01"),
            Map.entry("audio-rate", "48 kHz"),
            Map.entry("audio-seconds", "10.01"));

    private Examples() {}

    /**
     * The whole rig file of an example: the matched pair with the example's values in place of its own. Mappings are
     * joined, everything else is replaced, a key with {@code ~} behind it is taken out.
     *
     * @param pair the matched pair
     * @param changes the example
     */
    public static Document lay(Document changes, Document pair) {
        StringBuilder text = new StringBuilder();
        write(merge(pair.root(), plan(changes.root())), 0, text);
        return YamlReader.read(changes.file(), text.toString());
    }

    /** The example without what was shot. */
    private static Node plan(Node example) {
        if (!(example instanceof Node.Fields fields) || !fields.fields().containsKey(CLIPS)) {
            return example;
        }
        Map<String, Node.Field> planned = new LinkedHashMap<>(fields.fields());
        planned.remove(CLIPS);
        return new Node.Fields(planned, fields.flow(), fields.place());
    }

    /**
     * The clips of an example, under {@code clips}: a list of mappings with the columns of a table of clips. What one does not
     * say is as the matched pair plans it; a column with {@code ~} behind it is left open. Empty when the example has none.
     *
     * @param changes the example
     */
    public static List<Clip> clips(Document changes) {
        if (!(changes.at(CLIPS).orElse(null) instanceof Node.Items list)) {
            return List.of();
        }
        List<Clip> clips = new ArrayList<>();
        for (int i = 0; i < list.items().size(); i++) {
            String path = CLIPS + "." + i;
            String unit = changes.at(path + ".unit")
                    .filter(Node.Scalar.class::isInstance)
                    .map(node -> ((Node.Scalar) node).text())
                    .orElseThrow(() -> changes.error(path, "a clip names its unit"));
            Map<String, String> columns = new LinkedHashMap<>(AS_PLANNED);
            columns.put(ClipSheet.CLIP, unit + String.format(Locale.ROOT, "%03d", i + 1) + ".mov");
            columns.put("reel", unit + "-reel");
            if (list.items().get(i) instanceof Node.Fields fields) {
                fields.fields().forEach((column, field) -> {
                    if (!(field.value() instanceof Node.Scalar scalar)) {
                        throw new BadInput(changes.file(), field.value().place(), "a single value belongs here");
                    }
                    if (scalar.plain() && scalar.text().equals(GONE)) {
                        columns.remove(column);
                    } else {
                        columns.put(column, scalar.text());
                    }
                });
            }
            ClipSheet sheet = ClipSheet.strict(
                    columns,
                    (column, problem) -> changes.error(column.isEmpty() ? path : path + "." + column, problem));
            clips.add(sheet.as(unit, sheet.file()));
        }
        return List.copyOf(clips);
    }

    private static Node merge(Node under, Node over) {
        if (!(under instanceof Node.Fields below && over instanceof Node.Fields above)) {
            return over;
        }
        Map<String, Node.Field> merged = new LinkedHashMap<>(below.fields());
        above.fields().forEach((key, field) -> {
            Node.Field old = merged.get(key);
            if (field.value() instanceof Node.Scalar scalar
                    && scalar.plain()
                    && scalar.text().equals(GONE)) {
                merged.remove(key);
            } else {
                Node value = old == null ? field.value() : merge(old.value(), field.value());
                merged.put(key, new Node.Field(Place.START, value));
            }
        });
        return new Node.Fields(merged, false, Place.START);
    }

    private static void write(Node node, int depth, StringBuilder out) {
        if (node instanceof Node.Scalar scalar) {
            out.append(scalar.plain() ? scalar.text() : "'" + scalar.text().replace("'", "''") + "'");
        } else if (node instanceof Node.Items items) {
            out.append('[');
            for (int i = 0; i < items.items().size(); i++) {
                out.append(i == 0 ? "" : ", ");
                flow(items.items().get(i), out);
            }
            out.append(']');
        } else if (node instanceof Node.Fields fields) {
            if (fields.fields().isEmpty()) {
                out.append("{}");
            }
            fields.fields().forEach((key, field) -> {
                out.append(out.isEmpty() ? "" : "\n")
                        .append("  ".repeat(depth))
                        .append(key)
                        .append(": ");
                write(field.value(), depth + 1, out);
            });
        }
    }

    private static void flow(Node node, StringBuilder out) {
        if (node instanceof Node.Fields fields) {
            out.append('{');
            String comma = "";
            for (Map.Entry<String, Node.Field> field : fields.fields().entrySet()) {
                out.append(comma).append(field.getKey()).append(": ");
                flow(field.getValue().value(), out);
                comma = ", ";
            }
            out.append('}');
        } else {
            write(node, 0, out);
        }
    }
}
