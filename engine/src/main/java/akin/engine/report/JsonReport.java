package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Numbers;
import akin.engine.assess.Unchecked;
import akin.engine.read.Place;
import akin.model.finding.Severity;
import akin.model.finding.Target;
import akin.model.finding.Value;
import java.io.StringWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** The report for programs; its schema is {@code shared/schema/report.schema.json}. */
public final class JsonReport {

    private static final JsonFactory JSON = new JsonFactory();

    private JsonReport() {}

    /**
     * Renders an assessment.
     *
     * @param version version of Akin
     */
    public static String render(Assessment a, String version) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(indented(), out)) {
            json.writeStartObject();
            json.writeStringProperty("akin", version);
            json.writeStringProperty("rig", a.file());
            json.writeStringProperty("production", a.production());
            json.writeStringProperty("tolerance", a.tolerance());
            json.writeStringProperty("verdict", a.verdict().word());
            json.writeObjectPropertyStart("counts");
            for (Severity severity : Severity.values()) {
                json.writeNumberProperty(severity.word(), a.count(severity));
            }
            json.writeNumberProperty("unchecked", a.unchecked().size());
            json.writeNumberProperty("waived", a.waived().size());
            json.writeNumberProperty("checks", a.checks());
            json.writeEndObject();
            json.writeArrayPropertyStart("findings");
            for (Assessment.Entry entry : a.findings()) {
                finding(json, a, entry, null);
            }
            json.writeEndArray();
            json.writeArrayPropertyStart("waived");
            for (Assessment.Waived waived : a.waived()) {
                finding(json, a, waived.entry(), waived);
            }
            json.writeEndArray();
            json.writeArrayPropertyStart("unchecked");
            for (Unchecked line : a.unchecked()) {
                json.writeStartObject();
                json.writeStringProperty("rule", line.rule());
                json.writeStringProperty("unit", line.unit());
                json.writeStringProperty("missing", line.missing());
                json.writeStringProperty("where", line.where().words());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayPropertyStart("targets");
            for (Target target : a.targets()) {
                json.writeStartObject();
                json.writeStringProperty("unit", target.unit());
                json.writeStringProperty("name", target.name());
                json.writeNumberProperty("value", Numbers.exact(target.value()));
                json.writeStringProperty("scale", target.scale());
                json.writeStringProperty("aid", target.aid());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayPropertyStart("cautions");
            for (Assessment.Caution caution : a.cautions()) {
                caution(json, a, caution);
            }
            json.writeEndArray();
            if (!a.notes().isEmpty()) {
                strings(json, "notes", a.notes());
            }
            json.writeEndObject();
        }
        return out.append('\n').toString();
    }

    private static void finding(
            JsonGenerator json, Assessment a, Assessment.Entry entry, Assessment.@Nullable Waived waived) {
        json.writeStartObject();
        json.writeStringProperty("rule", entry.rule());
        json.writeStringProperty("severity", entry.severity().word());
        json.writeNumberProperty("magnitude", Numbers.exact(entry.magnitude()));
        strings(json, "units", entry.units());
        json.writeStringProperty("title", entry.title());
        json.writeStringProperty("because", entry.because());
        json.writeArrayPropertyStart("values");
        entry.values().forEach(value -> value(json, value));
        json.writeEndArray();
        json.writeArrayPropertyStart("fixes");
        for (Assessment.Remedy fix : entry.fixes()) {
            json.writeStartObject();
            json.writeArrayPropertyStart("edits");
            for (Assessment.Change change : fix.edits()) {
                json.writeStartObject();
                json.writeStringProperty("path", change.path());
                nullable(json, "from", change.from());
                nullable(json, "to", change.to());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeStringProperty("effect", fix.effect());
            strings(json, "side-effects", fix.sideEffects());
            json.writeEndObject();
        }
        json.writeEndArray();
        at(json, a, entry.place(), entry.path());
        strings(json, "sources", entry.sources());
        if (waived != null) {
            json.writeObjectPropertyStart("waiver");
            json.writeStringProperty("because", waived.because());
            nullable(
                    json,
                    "until",
                    waived.until() == null ? null : waived.until().toString());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private static void caution(JsonGenerator json, Assessment a, Assessment.Caution caution) {
        json.writeStartObject();
        json.writeStringProperty("rule", caution.rule());
        json.writeStringProperty("caution", caution.sentence());
        json.writeArrayPropertyStart("reasons");
        for (Assessment.Reason reason : caution.reasons()) {
            json.writeStartObject();
            json.writeStringProperty("because", reason.words());
            if (reason.unit() != null) {
                json.writeStringProperty("unit", reason.unit());
            }
            if (reason.scene() != null) {
                json.writeStringProperty("scene", reason.scene());
            }
            at(json, a, reason.place(), reason.path());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void at(JsonGenerator json, Assessment a, Place place, String path) {
        json.writeObjectPropertyStart("at");
        json.writeStringProperty("file", a.file());
        json.writeNumberProperty("line", place.line());
        json.writeNumberProperty("column", place.column());
        json.writeStringProperty("path", path);
        json.writeEndObject();
    }

    private static void value(JsonGenerator json, Value value) {
        json.writeStartObject();
        json.writeStringProperty("name", value.name());
        if (value.unitOf() != null) {
            json.writeStringProperty("unit-of", value.unitOf());
        }
        if (value instanceof Value.Quantity q) {
            if (Double.isInfinite(q.value())) {
                json.writeStringProperty("value", Numbers.spoken(q.value(), ""));
            } else {
                json.writeNumberProperty("value", Numbers.exact(q.value()));
            }
            json.writeStringProperty("unit", q.unit());
        } else if (value instanceof Value.Word word) {
            json.writeStringProperty("value", word.text());
        }
        json.writeEndObject();
    }

    private static void strings(JsonGenerator json, String name, List<String> values) {
        json.writeArrayPropertyStart(name);
        values.forEach(json::writeString);
        json.writeEndArray();
    }

    private static void nullable(JsonGenerator json, String name, @Nullable String value) {
        if (value == null) {
            json.writeNullProperty(name);
        } else {
            json.writeStringProperty(name, value);
        }
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
