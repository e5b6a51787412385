package akin.engine.book;

import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.Place;
import akin.engine.read.YamlReader;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Examples on rule pages are changes to one matched pair, so that they show only what matters. This lays them over it.
 */
public final class Examples {

    private static final String GONE = "~";

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
        write(merge(pair.root(), changes.root()), 0, text);
        return YamlReader.read(changes.file(), text.toString());
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
