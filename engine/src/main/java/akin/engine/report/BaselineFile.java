package akin.engine.report;

import akin.engine.baseline.Baseline;
import tools.jackson.core.JsonGenerator;

/** A baseline as a file; its schema is {@code shared/schema/baseline.schema.json}. */
public final class BaselineFile {

    private BaselineFile() {}

    /** The text of the file, sorted, so that what a change of it changes can be read. */
    public static String render(Baseline baseline) {
        return JsonText.write(json -> {
            json.writeStartObject();
            json.writeNumberProperty(Baseline.FORMAT, Baseline.VERSION);
            json.writeArrayPropertyStart("rigs");
            baseline.rigs().forEach((rig, counts) -> {
                json.writeStartObject();
                json.writeStringProperty("rig", rig);
                json.writeArrayPropertyStart("findings");
                counts.forEach((key, count) -> {
                    json.writeStartObject();
                    key(json, key);
                    if (count > 1) {
                        json.writeNumberProperty("count", count);
                    }
                    json.writeEndObject();
                });
                json.writeEndArray();
                json.writeEndObject();
            });
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    static void key(JsonGenerator json, Baseline.Key key) {
        json.writeStringProperty("rule", key.rule());
        JsonText.strings(json, "units", key.units());
        json.writeStringProperty("path", key.path());
    }
}
