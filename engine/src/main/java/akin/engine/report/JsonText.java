package akin.engine.report;

import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** How JSON is written: indented, the same on every machine, and harmless when somebody prints it on a terminal. */
final class JsonText {

    private static final JsonFactory JSON = new JsonFactory();

    /** The start of what a build server would take for a command in its log, as it can only stand in a string. */
    private static final Pattern COMMAND = Pattern.compile("##(?=\\[)");

    private JsonText() {}

    static String write(Consumer<JsonGenerator> content) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(indented(), out)) {
            content.accept(json);
        }
        return tame(out.append('\n').toString());
    }

    static void strings(JsonGenerator json, String name, List<String> values) {
        json.writeArrayPropertyStart(name);
        values.forEach(json::writeString);
        json.writeEndArray();
    }

    /** Characters that steer a terminal, written as JSON's own escapes: the value stays what it was. */
    private static String tame(String text) {
        if (text.codePoints().noneMatch(c -> c != '\n' && Wrap.steers(c)) && !text.contains("##[")) {
            // Nearly always; a large report is not copied.
            return text;
        }
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (c == '\n' || !Wrap.steers(c)) {
                out.appendCodePoint(c);
                return;
            }
            for (char unit : Character.toChars(c)) {
                out.append(String.format(Locale.ROOT, "\\u%04X", (int) unit));
            }
        });
        return COMMAND.matcher(out).replaceAll("#\\\\u0023");
    }

    private static ObjectWriteContext indented() {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        PrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
        return new ObjectWriteContext.Base() {
            @Override
            public PrettyPrinter getPrettyPrinter() {
                return printer;
            }

            @Override
            public boolean hasPrettyPrinter() {
                return true;
            }
        };
    }
}
