package akin.engine.book;

import akin.engine.read.Binder;
import akin.model.finding.Severity;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The front matter of every page in one file, written when Akin is built, so that a check need not read dozens of
 * pages to word a few findings.
 */
public final class CompiledBook {

    private static final String FILE = "/akin/book.json";

    private CompiledBook() {}

    /** The rule book that was compiled into this build. Read as a stream: a tree would cost a start several times more. */
    public static RuleBook load() {
        try (InputStream in = CompiledBook.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the rule book is missing; build Akin again");
            }
            List<RulePage> pages = new ArrayList<>();
            try (JsonParser json = new JsonFactory().createParser(ObjectReadContext.empty(), in)) {
                json.nextToken();
                while (json.nextToken() != JsonToken.END_ARRAY) {
                    pages.add(page(json));
                }
            }
            return new RuleBook(pages);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The build step: reads every page below a folder and writes the compiled book.
     *
     * @param args the folder of pages, and the file to write
     */
    public static void main(String[] args) throws IOException {
        Binder binder = new Binder();
        List<RulePage> pages = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of(args[0]))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".md")).sorted().toList()) {
                pages.add(Pages.front(file.toString(), Files.readString(file, StandardCharsets.UTF_8), binder));
            }
        }
        JsonMapper mapper = new JsonMapper();
        ArrayNode all = mapper.createArrayNode();
        new RuleBook(pages).pages().forEach(page -> all.add(json(mapper, page)));
        Path target = Path.of(args[1]);
        Files.createDirectories(target.toAbsolutePath().getParent());
        Files.writeString(target, mapper.writerWithDefaultPrettyPrinter().writeValueAsString(all));
    }

    private static ObjectNode json(JsonMapper mapper, RulePage page) {
        ObjectNode node = mapper.createObjectNode();
        node.put("id", page.id());
        node.put("title", page.title());
        node.put("because", page.because());
        node.put("scope", page.scope().word());
        strings(
                node.putArray("severities"),
                page.severities().stream().map(Severity::word).toList());
        strings(node.putArray("needs"), page.needs());
        ObjectNode fixes = node.putObject("fixes");
        page.fixes().forEach(fixes::put);
        strings(node.putArray("sources"), page.sources());
        return node;
    }

    private static void strings(ArrayNode array, List<String> values) {
        values.forEach(array::add);
    }

    private static RulePage page(JsonParser json) {
        Map<String, String> words = new HashMap<>();
        Map<String, List<String>> lists = new HashMap<>();
        Map<String, String> fixes = new LinkedHashMap<>();
        while (json.nextToken() != JsonToken.END_OBJECT) {
            String key = json.currentName();
            switch (json.nextToken()) {
                case START_ARRAY -> lists.put(key, strings(json));
                case START_OBJECT -> {
                    while (json.nextToken() != JsonToken.END_OBJECT) {
                        String fix = json.currentName();
                        json.nextToken();
                        fixes.put(fix, json.getString());
                    }
                }
                default -> words.put(key, json.getString());
            }
        }
        return new RulePage(
                word(words, "id"),
                word(words, "title"),
                word(words, "because"),
                list(lists, "severities").stream().map(Severity::of).toList(),
                RulePage.Scope.of(word(words, "scope")),
                list(lists, "needs"),
                fixes,
                list(lists, "sources"));
    }

    private static String word(Map<String, String> words, String key) {
        return Objects.requireNonNull(words.get(key), key);
    }

    private static List<String> list(Map<String, List<String>> lists, String key) {
        return Objects.requireNonNull(lists.get(key), key);
    }

    private static List<String> strings(JsonParser json) {
        List<String> values = new ArrayList<>();
        while (json.nextToken() != JsonToken.END_ARRAY) {
            values.add(json.getString());
        }
        return List.copyOf(values);
    }
}
