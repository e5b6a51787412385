package akin.engine.read;

import java.util.List;
import java.util.Map;

/** A value of a YAML document with its place. */
public sealed interface Node {

    /** Key of a value that is written with its source. */
    String VALUE = "value";

    /** Key of the source of a value. */
    String SOURCE = "source";

    /** Where it stands. */
    Place place();

    /** The value itself when it is written with its source, {@code {value: ..., source: ...}}; otherwise this. */
    default Node bare() {
        return this;
    }

    /**
     * A single value.
     *
     * @param text what it says, without quotes
     * @param plain true when it was written without quotes
     */
    record Scalar(String text, boolean plain, Place place) implements Node {}

    /** A list. */
    record Items(List<Node> items, boolean flow, Place place) implements Node {}

    /** A mapping; its order is the order of the file. */
    record Fields(Map<String, Field> fields, boolean flow, Place place) implements Node {

        @Override
        public Node bare() {
            Field value = fields.get(VALUE);
            return value != null && fields.size() == 2 && fields.containsKey(SOURCE) ? value.value() : this;
        }
    }

    /**
     * One entry of a mapping.
     *
     * @param key where the key stands
     * @param value what it holds
     */
    record Field(Place key, Node value) {}
}
