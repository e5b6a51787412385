package akin.engine.equip;

import akin.engine.edit.Edits;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.GearSheet;
import akin.engine.read.Node;
import akin.engine.read.Say;
import akin.engine.read.YamlReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A new fact sheet: the values that are known, and for all others a commented line with a slot for the source. */
public final class Skeleton {

    /** The words for one entry, and the kind it is of. */
    public static final Map<String, String> KINDS = kinds();

    private static final int WIDTH = 110;
    private static final String SOURCE = "source";
    private static final Pattern PLAIN_WORD = Pattern.compile("[A-Za-z(].*");

    private final String kind;
    private final String id;
    private final Form form;
    private final Map<String, String> values;
    private final List<String> lines = new ArrayList<>();
    private final Map<Integer, String> keyOfLine = new TreeMap<>();

    private Skeleton(String kind, String id, Map<String, String> values) {
        this.kind = kind;
        this.id = id;
        this.form = Form.of(kind);
        this.values = new LinkedHashMap<>(values);
    }

    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put("body", "bodies");
        kinds.put("lens", "lenses");
        kinds.put("recorder", "recorders");
        kinds.put("media", "media");
        kinds.put("adapter", "adapters");
        kinds.put("mount", "mounts");
        kinds.put("format", "formats");
        kinds.put("encoding", "encodings");
        kinds.put("tolerance", "tolerances");
        return java.util.Collections.unmodifiableMap(kinds);
    }

    /**
     * The text of a new file.
     *
     * @param kind what it is of, of {@link Catalogue#KINDS}
     * @param values values by key; {@code key.source} says where one is from, {@code source} where all are
     * @param catalogue where the entry must not be yet, and where a new tolerance profile takes its other limits from
     * @throws BadInput when a key is not known, a value does not fit, or the entry cannot do without one that is not given
     */
    public static String write(String kind, String id, Map<String, String> values, Catalogue catalogue, Binder binder) {
        if (!Catalogue.ID.matcher(id).matches()) {
            throw new BadInput(
                    "gear new",
                    "read the id " + Say.quote(id) + "; an id is small letters and digits, with single dashes between");
        }
        catalogue.entry(kind, id).ifPresent(there -> {
            throw new BadInput(
                    "gear new", there.name() + " stands in " + there.where() + " already; give this another id");
        });
        Skeleton skeleton = new Skeleton(kind, id, values);
        skeleton.requireKnown();
        skeleton.compose(catalogue);
        String text = String.join("\n", skeleton.lines) + "\n";
        skeleton.requireFits(text, binder);
        return text;
    }

    private void requireKnown() {
        TreeSet<String> known = new TreeSet<>();
        known.add(SOURCE);
        for (Form.Key key : form.keys()) {
            if (key.parts().isEmpty()) {
                known.add(key.key());
            } else {
                key.parts().forEach(part -> known.add(key.key() + ".ID." + part.key()));
            }
        }
        for (String path : values.keySet()) {
            String fact = path.endsWith("." + SOURCE) && !kind.equals("encodings")
                    ? path.substring(0, path.length() - SOURCE.length() - 1)
                    : path;
            String[] steps = fact.split("\\.", -1);
            String pattern = steps.length == 3 ? steps[0] + ".ID." + steps[2] : fact;
            if (!known.contains(pattern)
                    || (steps.length == 3 && !Catalogue.ID.matcher(steps[1]).matches())) {
                throw new BadInput(
                        "--set " + Say.clean(path),
                        "no fact of " + kind + " is called " + Say.quote(fact) + "." + Say.nearest(pattern, known)
                                + " Allowed: " + Say.list(known) + ". A new sheet without --set lists them all");
            }
            if (!fact.equals(path) && !values.containsKey(fact)) {
                throw new BadInput("--set " + Say.clean(path), "there is no " + fact + " whose source this could be");
            }
            if (Say.visible(values.getOrDefault(path, "")).isBlank()) {
                throw new BadInput("--set " + Say.clean(path), "no value stands here");
            }
        }
        List<String> missing = form.keys().stream()
                .filter(key -> key.required() && !values.containsKey(key.key()))
                .map(Form.Key::key)
                .filter(key -> !key.equals("name") && !kind.equals("tolerances"))
                .collect(Collectors.toCollection(ArrayList::new));
        if (kind.equals("encodings") && !values.containsKey(SOURCE)) {
            missing.add(SOURCE);
        }
        if (!missing.isEmpty()) {
            throw new BadInput(
                    "gear new",
                    "of " + kind + " these must be known: " + String.join(", ", missing)
                            + "; give each with --set, such" + " as --set " + missing.get(0) + "=...");
        }
    }

    private void compose(Catalogue catalogue) {
        comment("", form.description());
        comment(
                "",
                "What is not known stays behind its #: it is then reported as not checked, never taken as good. Say of every"
                        + " fact where it is from, here or once for all.");
        if (kind.equals("tolerances")) {
            tolerance(catalogue);
            return;
        }
        if (kind.equals("encodings")) {
            lines.add("akin-encoding: 1");
            lines.add("id: " + id);
            values.putIfAbsent("name", id);
            form.keys().forEach(key -> key(key, "", key.key()));
            put("", SOURCE, SOURCE, values.getOrDefault(SOURCE, ""), true);
            return;
        }
        lines.add("akin-gear: 1");
        if (values.containsKey(SOURCE)) {
            put("", SOURCE, SOURCE, values.getOrDefault(SOURCE, ""), true);
        } else {
            lines.add("#source:");
        }
        lines.add(kind + ":");
        lines.add("  " + id + ":");
        values.putIfAbsent("name", id);
        for (Form.Key key : form.keys()) {
            if (key.parts().isEmpty()) {
                key(key, "    ", key.key());
            } else {
                parts(key);
            }
        }
    }

    private void parts(Form.Key key) {
        TreeSet<String> ids = new TreeSet<>();
        String start = key.key() + ".";
        values.keySet().stream()
                .filter(path -> path.startsWith(start))
                .forEach(path -> ids.add(path.substring(start.length()).replaceAll("\\..*", "")));
        comment("    ", key.description());
        if (ids.isEmpty()) {
            lines.add("    #" + key.key() + ":");
            lines.add("    #  an-id:");
            for (Form.Key part : key.parts()) {
                comment("    #    ", part.description());
                lines.add("    #    " + part.key() + ": {value: , source: }");
            }
            return;
        }
        lines.add("    " + key.key() + ":");
        for (String one : ids) {
            lines.add("      " + one + ":");
            key.parts().forEach(part -> key(part, "        ", start + one + "." + part.key()));
        }
    }

    private void key(Form.Key key, String indent, String path) {
        comment(indent, key.description());
        String value = values.get(path);
        if (value == null) {
            lines.add(indent + "#" + key.key() + ":" + (kind.equals("encodings") ? "" : " {value: , source: }"));
        } else {
            put(indent, key.key(), path, value, key.word());
        }
    }

    private void put(String indent, String key, String path, String value, boolean word) {
        String written = word && !PLAIN_WORD.matcher(value).matches() ? Edits.quoted(value) : Edits.written(value);
        String source = kind.equals("encodings") ? null : values.get(path + "." + SOURCE);
        lines.add(indent + key + ": "
                + (source == null ? written : "{value: " + written + ", source: " + Edits.quoted(source) + "}"));
        keyOfLine.put(lines.size(), path);
    }

    /** A profile needs every limit; those that are not given are those of the profile that productions use by default. */
    private void tolerance(Catalogue catalogue) {
        Document usual = catalogue.tolerances(Equipper.DEFAULT_TOLERANCE).orElseThrow();
        lines.add("akin-tolerance: 1");
        if (values.containsKey(SOURCE)) {
            put("", SOURCE, SOURCE, values.getOrDefault(SOURCE, ""), true);
        } else {
            lines.add("#source:");
        }
        lines.add("limits:");
        for (Form.Key key : form.keys()) {
            String limit = usual.at("limits." + key.key())
                    .map(node -> ((Node.Scalar) node).text())
                    .orElse("");
            comment("  ", key.description());
            put("  ", key.key(), key.key(), values.getOrDefault(key.key(), limit), false);
        }
    }

    private void requireFits(String text, Binder binder) {
        try {
            Document document = YamlReader.read("gear new", text);
            switch (kind) {
                case "encodings" -> Encodings.bind(binder, document, id);
                case "tolerances" -> ToleranceReader.limits(document);
                default -> GearSheet.read(document, binder);
            }
        } catch (BadInput e) {
            String key = keyOfLine.get(e.line());
            throw new BadInput(key == null ? "gear new" : "--set " + key, e.problem());
        }
    }

    private void comment(String indent, String text) {
        StringBuilder line = new StringBuilder(indent).append('#');
        for (String word : text.split(" ", -1)) {
            if (line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(indent).append('#');
            }
            line.append(' ').append(word);
        }
        lines.add(line.toString());
    }
}
