package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Numbers;
import akin.engine.assess.Unchecked;
import akin.engine.baseline.Baseline;
import akin.engine.read.Place;
import akin.model.finding.Severity;
import akin.model.finding.Target;
import akin.model.finding.Value;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;

/** The report for programs; its schema is {@code shared/schema/report.schema.json}. */
public final class JsonReport {

    private JsonReport() {}

    /** Renders a call: the report of one rig file, or the summary and the reports of several. */
    static String render(Batch batch) {
        if (batch.one() && batch.allRead()) {
            return JsonText.write(
                    json -> report(json, batch.read().get(0).assessment(), batch.version(), batch.baseline()));
        }
        return JsonText.write(json -> {
            json.writeStartObject();
            json.writeStringProperty("akin", batch.version());
            json.writeStringProperty("verdict", batch.verdict());
            counts(json, Tally.of(batch));
            baseline(json, batch.baseline());
            json.writeArrayPropertyStart("rigs");
            for (Batch.Part part : batch.parts()) {
                json.writeStartObject();
                json.writeStringProperty("rig", part.file());
                json.writeStringProperty("verdict", part.verdict());
                if (part instanceof Batch.Unread unread) {
                    json.writeStringProperty("problem", unread.problem());
                    json.writeNumberProperty("line", unread.line());
                    json.writeNumberProperty("column", unread.column());
                }
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeNumberProperty("passed-over", batch.passedOver());
            json.writeArrayPropertyStart("reports");
            batch.read().forEach(part -> report(json, part.assessment(), batch.version(), null));
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    /**
     * Renders an assessment.
     *
     * @param version version of Akin
     */
    public static String render(Assessment a, String version) {
        return JsonText.write(json -> report(json, a, version, null));
    }

    static void report(JsonGenerator json, Assessment a, String version, Baseline.@Nullable Comparison baseline) {
        json.writeStartObject();
        json.writeStringProperty("akin", version);
        json.writeStringProperty("rig", a.file());
        json.writeStringProperty("production", a.production());
        json.writeStringProperty("tolerance", a.tolerance());
        json.writeStringProperty("verdict", a.verdict().word());
        counts(json, Tally.of(a));
        baseline(json, baseline);
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
        if (!a.known().isEmpty()) {
            json.writeArrayPropertyStart("known");
            for (Assessment.Entry entry : a.known()) {
                finding(json, a, entry, null);
            }
            json.writeEndArray();
        }
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
            JsonText.strings(json, "notes", a.notes());
        }
        json.writeEndObject();
    }

    private static void counts(JsonGenerator json, Tally tally) {
        json.writeObjectPropertyStart("counts");
        for (Severity severity : Severity.values()) {
            json.writeNumberProperty(severity.word(), tally.count(severity));
        }
        json.writeNumberProperty("unchecked", tally.unchecked());
        json.writeNumberProperty("waived", tally.waived());
        if (tally.known() > 0) {
            json.writeNumberProperty("known", tally.known());
        }
        json.writeNumberProperty("checks", tally.checks());
        json.writeEndObject();
    }

    private static void baseline(JsonGenerator json, Baseline.@Nullable Comparison baseline) {
        if (baseline == null) {
            return;
        }
        json.writeObjectPropertyStart("baseline");
        json.writeStringProperty("file", baseline.file());
        json.writeNumberProperty("known", baseline.known());
        json.writeNumberProperty("new", baseline.fresh());
        json.writeArrayPropertyStart("gone");
        for (Baseline.Gone gone : baseline.gone()) {
            json.writeStartObject();
            json.writeStringProperty("rig", gone.rig());
            BaselineFile.key(json, gone.key());
            json.writeEndObject();
        }
        json.writeEndArray();
        nullable(json, "trouble", baseline.trouble());
        json.writeEndObject();
    }

    private static void finding(
            JsonGenerator json, Assessment a, Assessment.Entry entry, Assessment.@Nullable Waived waived) {
        json.writeStartObject();
        json.writeStringProperty("rule", entry.rule());
        json.writeStringProperty("severity", entry.severity().word());
        json.writeNumberProperty("magnitude", Numbers.exact(entry.magnitude()));
        JsonText.strings(json, "units", entry.units());
        if (!entry.clips().isEmpty()) {
            JsonText.strings(json, "clips", entry.clips());
        }
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
            JsonText.strings(json, "side-effects", fix.sideEffects());
            json.writeEndObject();
        }
        json.writeEndArray();
        at(json, a, entry.place(), entry.path());
        JsonText.strings(json, "sources", entry.sources());
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

    private static void nullable(JsonGenerator json, String name, @Nullable String value) {
        if (value == null) {
            json.writeNullProperty(name);
        } else {
            json.writeStringProperty(name, value);
        }
    }
}
