package akin.engine.read;

import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One YAML document: its text, its tree and the place of everything in it. A path leads through
 * {@code {value: ..., source: ...}} as if only the value stood there.
 *
 * @param file the name to report it by
 * @param text its whole text
 * @param root its tree
 */
public record Document(String file, String text, Node root) {

    private static final Pattern INDEX = Pattern.compile("[0-9]{1,6}");

    /** Where a path leads, and the mapping it comes through last; null when that is a list, or nothing. */
    private record Way(@Nullable Field last, Node to) {}

    /** A key of a mapping. */
    private record Field(Node.Fields mapping, String key) {}

    /** The value at a dotted path; list elements by number from 0. Empty when the path leads nowhere. */
    public Optional<Node> at(String path) {
        return way(path).map(Way::to);
    }

    /** The mapping that holds the key a dotted path ends in. Empty when the path leads nowhere or ends in a list. */
    public Optional<Node.Fields> holderOf(String path) {
        return way(path).map(Way::last).map(Field::mapping);
    }

    private Optional<Way> way(String path) {
        return path.isEmpty() ? Optional.of(new Way(null, root)) : way(root, path);
    }

    private static Optional<Way> way(Node from, String path) {
        if (from instanceof Node.Fields fields) {
            // A key may have dots in it itself, such as a reason for units.A.lens.stop under units.A.intent.
            for (int end = path.indexOf('.'); ; end = path.indexOf('.', end + 1)) {
                String key = end < 0 ? path : path.substring(0, end);
                Node.Field field = fields.fields().get(key);
                if (field != null) {
                    Optional<Way> way = end < 0
                            ? Optional.of(new Way(new Field(fields, key), field.value()))
                            : way(field.value(), path.substring(end + 1));
                    if (way.isPresent()) {
                        return way;
                    }
                }
                if (end < 0) {
                    return fields.bare() == fields ? Optional.empty() : way(fields.bare(), path);
                }
            }
        }
        int dot = path.indexOf('.');
        String step = dot < 0 ? path : path.substring(0, dot);
        if (from instanceof Node.Items items && INDEX.matcher(step).matches()) {
            int index = Integer.parseInt(step);
            if (index < items.items().size()) {
                Node item = items.items().get(index);
                return dot < 0 ? Optional.of(new Way(null, item)) : way(item, path.substring(dot + 1));
            }
        }
        return Optional.empty();
    }

    /** The place of the value at a dotted path, or of the nearest thing around it that the file does have. */
    public Place placeOf(String path) {
        String around = path;
        while (!around.isEmpty()) {
            Optional<Place> found = at(around).map(Node::bare).map(Node::place);
            if (found.isPresent()) {
                return found.get();
            }
            int dot = around.lastIndexOf('.');
            Optional<Place> key = dot < 0 ? Optional.empty() : keyOf(around.substring(0, dot));
            if (key.isPresent()) {
                return key.get();
            }
            around = dot < 0 ? "" : around.substring(0, dot);
        }
        return root.place();
    }

    /** The place of the code point at an index of the text, from 0; of its end for the number of its code points. */
    public Place placeAt(int index) {
        return Place.of(text, index);
    }

    /** The place of a key of the mapping at a dotted path, whatever dots the key has in it. */
    Optional<Place> keyOf(String holder, String key) {
        return way(holder)
                .map(way -> way.to().bare())
                .map(node ->
                        node instanceof Node.Fields fields ? fields.fields().get(key) : null)
                .map(Node.Field::key);
    }

    /** The place of the key that a dotted path ends in. */
    public Optional<Place> keyOf(String path) {
        return way(path)
                .map(Way::last)
                .map(field -> field.mapping().fields().get(field.key()))
                .map(Node.Field::key);
    }

    /** An error at the value that a path leads to. */
    public BadInput error(String path, String problem) {
        return new BadInput(file, placeOf(path), problem);
    }
}
