package akin.engine.read;

import akin.model.quantity.QuantityException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.POJONode;

/**
 * Binds a document's tree to records with Jackson, and turns every complaint into one message at its place.
 *
 * <p>Scalars reach Jackson as they were written (text, and whether in quotes), so that no number is ever rounded or
 * guessed on its way: each type reads its own text.
 */
public final class Binder {

    private static final String ID = "id";
    private static final Set<String> KINDS =
            Set.of("bodies", "lenses", "recorders", "media", "adapters", "mounts", "formats");
    /** The keys below which a body or a recorder holds parts by id. */
    public static final Set<String> PARTS = Set.of("modes", "profiles", "codecs", "inputs", "outputs");

    private static final Pattern WITH_PARTS = Pattern.compile("(gear\\.)?(bodies|recorders)\\.[^.]+");

    private final JsonMapper mapper;

    /** A binder for the sheets and gear records. */
    public Binder() {
        mapper = JsonMapper.builder()
                .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .withConfigOverride(
                        Map.class,
                        o -> o.setNullHandling(com.fasterxml.jackson.annotation.JsonSetter.Value.forValueNulls(
                                com.fasterxml.jackson.annotation.Nulls.AS_EMPTY)))
                .addModule(Scalars.module())
                .build();
    }

    /**
     * Binds the whole document.
     *
     * @throws BadInput at the first value that does not fit
     */
    public <T> T bind(Document document, Class<T> type) {
        return bind(document, document.root(), "", type);
    }

    /** Binds the value at a path, with a word added to it as its {@code id}. */
    public <T> T bind(Document document, Node node, String path, Class<T> type) {
        try {
            return mapper.treeToValue(json(document, node, path), type);
        } catch (JacksonException e) {
            throw explain(document, path, e);
        }
    }

    private JsonNode json(Document document, Node node, String path) {
        if (node instanceof Node.Scalar scalar) {
            if (scalar.plain() && Scalars.isNull(scalar.text())) {
                throw document.error(path, "no value stands here; give one, or take the line out");
            }
            return new POJONode(scalar);
        }
        if (node instanceof Node.Items list) {
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            int index = 0;
            for (Node item : list.items()) {
                array.add(json(document, item, path + "." + index++));
            }
            return array;
        }
        Map<String, Node.Field> fields = ((Node.Fields) node).fields();
        Node bare = node.bare();
        if (bare != node) {
            requireSource(
                    document, Objects.requireNonNull(fields.get(Node.SOURCE)).value(), path);
            return json(document, bare, path);
        }
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        fields.forEach((key, field) -> {
            String below = path.isEmpty() ? key : path + "." + key;
            JsonNode value = json(document, field.value(), below);
            if (namedByKey(path, key) && value instanceof ObjectNode named) {
                nameByKey(document, below, named);
            }
            object.set(key, value);
        });
        return object;
    }

    private static void requireSource(Document document, Node source, String path) {
        if (!(source instanceof Node.Scalar said)
                || said.text().isBlank()
                || (said.plain() && Scalars.isNull(said.text()))) {
            throw new BadInput(
                    document.file(), source.place(), "the source of " + path + " is a text that says where it is from");
        }
    }

    private static boolean namedByKey(String path, String key) {
        return KINDS.contains(key)
                ? path.isEmpty() || path.equals("gear")
                : PARTS.contains(key) && WITH_PARTS.matcher(path).matches();
    }

    /** Gear is written under its id; the records carry the id themselves. */
    private static void nameByKey(Document document, String path, ObjectNode named) {
        named.properties().forEach(entry -> {
            if (entry.getValue() instanceof ObjectNode one) {
                String at = path + "." + entry.getKey();
                if (one.has(ID)) {
                    throw new BadInput(
                            document.file(),
                            document.keyOf(at + "." + ID).orElseGet(() -> document.placeOf(at)),
                            "the key 'id' is not known here; the word before the colon is the id");
                }
                one.set(ID, new POJONode(new Node.Scalar(entry.getKey(), false, document.placeOf(at))));
            }
        });
    }

    private static BadInput explain(Document document, String base, JacksonException e) {
        StringBuilder path = new StringBuilder(base);
        for (JacksonException.Reference step : e.getPath()) {
            if (!path.isEmpty()) {
                path.append('.');
            }
            path.append(step.getPropertyName() == null ? String.valueOf(step.getIndex()) : step.getPropertyName());
        }
        String at = path.toString();
        if (e instanceof UnrecognizedPropertyException unknown) {
            List<String> known = unknown.getKnownPropertyIds().stream()
                    .map(String::valueOf)
                    .filter(word -> !word.equals(ID))
                    .sorted()
                    .toList();
            String word = unknown.getPropertyName();
            String holder = at.equals(word) ? "" : parentOf(at, word);
            return new BadInput(
                    document.file(),
                    document.keyOf(holder, word).orElseGet(() -> document.placeOf(at)),
                    "the key " + Say.quote(word) + " is not known here." + Say.nearest(word, known) + " Allowed: "
                            + Say.list(known));
        }
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof Scalars.Unfit || cause instanceof QuantityException) {
                return document.error(at, Say.of(cause));
            }
            if (cause instanceof IllegalArgumentException && !(cause instanceof JacksonException)) {
                return document.error(at, Say.of(cause));
            }
        }
        if (e instanceof MismatchedInputException mismatch) {
            String missing = missingKey(mismatch);
            if (missing != null) {
                String around = at.isEmpty() ? missing : at;
                Place place = at.isEmpty()
                        ? document.root().place()
                        : document.keyOf(parentOf(around, missing)).orElseGet(() -> document.placeOf(at));
                return new BadInput(document.file(), place, "the key " + Say.quote(missing) + " is missing");
            }
            String read = document.at(at).map(Node::bare).orElse(document.root()) instanceof Node.Scalar scalar
                    ? "read " + Say.quote(scalar.text()) + "; "
                    : "";
            return document.error(at, read + "a " + shape(mismatch.getTargetType()) + " belongs here");
        }
        return document.error(at, "this cannot be read");
    }

    private static String parentOf(String at, String missing) {
        return at.endsWith("." + missing) ? at.substring(0, at.length() - missing.length() - 1) : at;
    }

    private static @Nullable String missingKey(MismatchedInputException e) {
        String message = e.getOriginalMessage();
        String start = "Missing required creator property '";
        if (message == null || !message.startsWith(start)) {
            return null;
        }
        return message.substring(start.length(), message.indexOf('\'', start.length()));
    }

    private static String shape(@Nullable Class<?> type) {
        if (type != null && Collection.class.isAssignableFrom(type)) {
            return "list, such as [one, another],";
        }
        if (type != null && (Map.class.isAssignableFrom(type) || type.isRecord())) {
            return "mapping (key: value)";
        }
        return "single value";
    }
}
