package akin.engine.equip;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What may be said of an entry, in the order and words of the JSON Schema that editors use: the one list of keys for people.
 */
public final class Form {

    private static final String MAY_BE_LEFT_OUT = "may be left out";
    private static final String AREA = "area";
    private static final String CROP_FACTOR = "crop-factor";
    private static final Set<String> UNASKED = Set.of("source", "akin-encoding", "id", "overrides");

    /**
     * One key.
     *
     * @param key as it is written
     * @param description what it says, in a sentence
     * @param required true when an entry cannot do without
     * @param leftOut true when it is only said where something differs, so that its absence is no gap
     * @param word true when it is a text, which needs quotes where it looks like a number
     * @param parts the keys of each part, when it holds parts by id, such as modes; else empty
     */
    public record Key(
            String key, String description, boolean required, boolean leftOut, boolean word, List<Key> parts) {}

    private final String description;
    private final List<Key> keys;

    private Form(String description, List<Key> keys) {
        this.description = description;
        this.keys = List.copyOf(keys);
    }

    /** The form of a kind of entry, of {@link Catalogue#KINDS}; of gamuts there is none. */
    public static Form of(String kind) {
        SharedData data = new SharedData();
        switch (kind) {
            case "encodings" -> {
                JsonNode schema = schema(data, "encoding");
                return new Form(schema.path("description").asString(""), keys(schema, schema));
            }
            case "tolerances" -> {
                JsonNode schema = schema(data, "tolerance");
                return new Form(
                        schema.path("description").asString(""),
                        keys(schema, schema.path("properties").path("limits")));
            }
            case "gamuts" -> {
                return new Form("", List.of());
            }
            default -> {
                JsonNode schema = schema(data, "gear");
                JsonNode entry =
                        referred(schema, schema.path("properties").path(kind).path("additionalProperties"));
                return new Form(entry.path("description").asString(""), keys(schema, entry));
            }
        }
    }

    private static JsonNode schema(SharedData data, String name) {
        return JsonMapper.shared()
                .readTree(data.text("schema/" + name + ".schema.json")
                        .orElseThrow(() -> new IllegalStateException("the schema " + name + " is not packaged")));
    }

    private static JsonNode referred(JsonNode schema, JsonNode node) {
        String reference = node.path("$ref").asString("");
        return reference.startsWith("#/$defs/") ? schema.at(reference.substring(1)) : node;
    }

    private static List<Key> keys(JsonNode schema, JsonNode of) {
        Set<String> required = new TreeSet<>();
        of.path("required").forEach(word -> required.add(word.asString("")));
        List<Key> keys = new ArrayList<>();
        of.path("properties").forEachEntry((key, node) -> {
            if (!UNASKED.contains(key)) {
                JsonNode part = referred(schema, node.path("additionalProperties"));
                keys.add(new Key(
                        key,
                        node.path("description").asString(""),
                        required.contains(key),
                        node.path("$comment").asString("").equals(MAY_BE_LEFT_OUT),
                        node.path("$ref").asString("").equals("#/$defs/text"),
                        part.has("properties") ? keys(schema, part) : List.of()));
            }
        });
        return keys;
    }

    /** What the kind is, in a sentence. */
    public String description() {
        return description;
    }

    /** Its keys, in order. */
    public List<Key> keys() {
        return keys;
    }

    /** The facts that an entry does not give, by dotted path, each with what it would say. */
    public Map<String, String> unknown(Set<String> facts) {
        Map<String, String> unknown = new LinkedHashMap<>();
        for (Key key : keys) {
            if (key.parts().isEmpty()) {
                missing(key, key.key(), facts, unknown);
                continue;
            }
            Set<String> ids = new TreeSet<>();
            String start = key.key() + ".";
            facts.stream()
                    .filter(fact -> fact.startsWith(start))
                    .forEach(fact -> ids.add(fact.substring(start.length()).replaceAll("\\..*", "")));
            if (ids.isEmpty() && !key.leftOut()) {
                unknown.put(key.key(), key.description());
            }
            for (String id : ids) {
                key.parts().forEach(part -> missing(part, start + id + "." + part.key(), facts, unknown));
            }
        }
        return unknown;
    }

    private static void missing(Key key, String path, Set<String> facts, Map<String, String> unknown) {
        boolean known = facts.contains(path)
                || facts.stream().anyMatch(fact -> fact.startsWith(path + "."))
                || (key.key().equals(AREA)
                        && facts.contains(path.substring(0, path.length() - AREA.length()) + CROP_FACTOR));
        if (!known && !key.leftOut()) {
            unknown.put(path, key.description());
        }
    }
}
