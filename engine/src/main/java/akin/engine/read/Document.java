package akin.engine.read;

import java.util.Optional;

/**
 * One YAML document: its text, its tree and the place of everything in it.
 *
 * @param file the name to report it by
 * @param text its whole text
 * @param root its tree
 */
public record Document(String file, String text, Node root) {

    /** The value at a dotted path; list elements by number from 0. Empty when the path leads nowhere. */
    public Optional<Node> at(String path) {
        Node node = root;
        for (String step : steps(path)) {
            Node next = null;
            if (node instanceof Node.Fields fields) {
                Node.Field field = fields.fields().get(step);
                next = field == null ? null : field.value();
            } else if (node instanceof Node.Items items && step.matches("\\d{1,6}")) {
                int index = Integer.parseInt(step);
                next = index < items.items().size() ? items.items().get(index) : null;
            }
            if (next == null) {
                return Optional.empty();
            }
            node = next;
        }
        return Optional.of(node);
    }

    /** The place of the value at a dotted path, or of the nearest thing around it that the file does have. */
    public Place placeOf(String path) {
        String around = path;
        while (!around.isEmpty()) {
            Optional<Place> found = at(around).map(Node::place);
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

    /** The place of the key that a dotted path ends in. */
    public Optional<Place> keyOf(String path) {
        int dot = path.lastIndexOf('.');
        Optional<Node> parent = dot < 0 ? Optional.of(root) : at(path.substring(0, dot));
        return parent.flatMap(node -> node instanceof Node.Fields fields
                ? Optional.ofNullable(fields.fields().get(path.substring(dot + 1)))
                        .map(Node.Field::key)
                : Optional.empty());
    }

    private static String[] steps(String path) {
        return path.isEmpty() ? new String[0] : path.split("\\.", -1);
    }

    /** An error at the value that a path leads to. */
    public BadInput error(String path, String problem) {
        return new BadInput(file, placeOf(path), problem);
    }
}
