package akin.engine.equip;

import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.GearSheet;
import akin.engine.read.Node;
import akin.engine.read.YamlReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The gear files that are shipped, read one by one from the source tree. */
final class ShippedGear {

    static final Path SHARED = Path.of("..", "shared");

    private final Map<Path, Document> documents = new TreeMap<>();
    private final Map<Path, GearSheet> sheets = new TreeMap<>();

    ShippedGear() {
        Binder binder = new Binder();
        for (Path file : yaml(SHARED.resolve("gear"))) {
            Document document = YamlReader.read(file.toString(), text(file));
            documents.put(file, document);
            sheets.put(file, binder.bind(document, GearSheet.class));
        }
    }

    /** Each file with its text's tree. */
    Map<Path, Document> documents() {
        return documents;
    }

    /** Each file with what it binds to. */
    Map<Path, GearSheet> sheets() {
        return sheets;
    }

    /** Everything of one kind, by id; the same id twice is an error. */
    <T> Map<String, T> all(Function<GearSheet, Map<String, T>> kind) {
        return sheets.values().stream()
                .flatMap(sheet -> kind.apply(sheet).entrySet().stream())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, ShippedGear::twice, TreeMap::new));
    }

    private static <T> T twice(T first, T second) {
        throw new IllegalStateException("the same id twice: " + first + " and " + second);
    }

    /** The ids in the list of gamuts. */
    static Set<String> gamuts() {
        Path file = SHARED.resolve("gamuts.yaml");
        Document document = YamlReader.read(file.toString(), text(file));
        Node.Items items = (Node.Items) document.at("gamuts").orElseThrow();
        return items.items().stream()
                .map(item -> (Node.Fields) item)
                .map(fields -> (Node.Scalar)
                        java.util.Objects.requireNonNull(fields.fields().get("id"))
                                .value())
                .map(Node.Scalar::text)
                .collect(Collectors.toSet());
    }

    static List<Path> yaml(Path folder) {
        try (Stream<Path> tree = Files.walk(folder)) {
            return tree.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
