package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checked;
import akin.engine.assess.Numbers;
import akin.model.derived.ColourMatch;
import akin.model.derived.MeasuredColour;
import akin.model.derived.MeasuredFloor;
import akin.model.derived.MeasuredGrey;
import akin.model.derived.MeasuredHeadroom;
import akin.model.derived.MeasuredRoom;
import akin.model.derived.MeasuredWhite;
import akin.model.rig.Reading;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JsonGenerator;

/** What {@code akin prove} says: what was measured, how sure that is, what it comes to, and the corrections. */
public final class ProofReport {

    private static final int WIDTH = 80;
    private static final String INDENT = "    ";
    private static final int LABEL = 13;
    private static final String MEASURED = "MEASURED: what the readings say, and by how much they may be off";
    private static final String FILES = "CORRECTIONS";

    private ProofReport() {}

    /**
     * A unit that no correction could be made for.
     *
     * @param unit name of the unit
     * @param why what is missing
     */
    public record None(String unit, String why) {}

    /**
     * The report for people.
     *
     * @param readings the file of readings as it was named
     * @param files corrections that were written
     * @param none units that none could be made for
     */
    public static String text(Checked proof, String readings, List<String> files, List<None> none, Style style) {
        Assessment a = proof.assessment();
        List<String> out = new ArrayList<>();
        wrapped(out, "", Story.head(a) + ", proven by " + readings);
        out.add("");
        out.add(style.strong(MEASURED));
        for (OnTheDay day : OnTheDay.of(proof.rig())) {
            out.add(INDENT + Wrap.clean(day.unit()) + (day.lines().isEmpty() ? ": nothing read" : ""));
            for (Card.Line line : day.lines()) {
                String label = INDENT
                        + INDENT
                        + line.label()
                        + " ".repeat(Math.max(1, LABEL - line.label().length()));
                out.addAll(Wrap.lines(Wrap.clean(line.value()), label, " ".repeat(label.length()), WIDTH));
            }
        }
        if (!files.isEmpty() || !none.isEmpty()) {
            out.add("");
            out.add(style.strong(FILES));
            files.forEach(file -> wrapped(out, INDENT, file));
            none.forEach(one -> wrapped(out, INDENT, one.unit() + ": none written; " + one.why()));
        }
        TextReport.body(out, a, style);
        return String.join("\n", out) + "\n";
    }

    /**
     * The report for programs; its schema is {@code shared/schema/proof.schema.json}.
     *
     * @param version version of Akin
     */
    public static String json(Checked proof, String readings, List<String> files, List<None> none, String version) {
        Rig rig = proof.rig();
        return JsonText.write(json -> {
            json.writeStartObject();
            json.writeStringProperty("akin", version);
            json.writeStringProperty("rig", proof.assessment().file());
            json.writeStringProperty("readings", readings);
            if (rig.readings() != null && rig.readings().chart() != null) {
                json.writeStringProperty("chart", rig.readings().chart().id());
            }
            json.writeArrayPropertyStart("measured");
            rig.units().forEach(unit -> unit(json, rig, unit));
            json.writeEndArray();
            json.writeArrayPropertyStart("matches");
            for (ColourMatch match : rig.units().stream()
                    .flatMap(unit -> OnTheDay.match(rig, unit).stream())
                    .toList()) {
                json.writeStartObject();
                json.writeStringProperty("hero", match.hero());
                json.writeStringProperty("unit", match.name());
                apart(json, "before", match.before());
                apart(json, "balanced", match.balanced());
                if (match.matrix() != null) {
                    apart(json, "after", match.after());
                    json.writeArrayPropertyStart("matrix");
                    for (int i = 0; i < 9; i++) {
                        json.writeNumber(Numbers.exact(match.matrix().at(i / 3, i % 3)));
                    }
                    json.writeEndArray();
                }
                json.writeEndObject();
            }
            json.writeEndArray();
            JsonText.strings(json, "files", files);
            json.writeArrayPropertyStart("uncorrected");
            for (None one : none) {
                json.writeStartObject();
                json.writeStringProperty("unit", one.unit());
                json.writeStringProperty("why", one.why());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeName("report");
            JsonReport.report(json, proof.assessment(), version, null);
            json.writeEndObject();
        });
    }

    private static void unit(JsonGenerator json, Rig rig, Unit unit) {
        json.writeStartObject();
        json.writeStringProperty("unit", unit.name());
        OnTheDay.fact(MeasuredGrey.derive(rig, unit), MeasuredGrey.class)
                .ifPresent(grey -> quantity(json, "grey", grey.stops(), grey.give(), "stops"));
        OnTheDay.fact(MeasuredWhite.derive(rig, unit), MeasuredWhite.class).ifPresent(white -> {
            quantity(json, "white", white.shift().mired(), white.miredGive(), "mired");
            quantity(json, "tint", white.shift().duv(), white.duvGive(), "duv");
        });
        OnTheDay.fact(MeasuredRoom.derive(rig, unit), MeasuredRoom.class)
                .ifPresent(room -> quantity(json, "room", room.stops(), room.give(), "stops"));
        OnTheDay.fact(MeasuredHeadroom.derive(rig, unit), MeasuredHeadroom.class)
                .ifPresent(read -> quantity(json, "headroom", read.stops(), read.give(), "stops"));
        OnTheDay.fact(MeasuredFloor.derive(rig, unit), MeasuredFloor.class)
                .ifPresent(read -> quantity(json, "footroom", read.stops(), read.give(), "stops"));
        Reading reading = rig.reading(unit);
        if (reading != null && reading.spread() != null) {
            json.writeNumberProperty("spread", Numbers.exact(reading.spread()));
        }
        json.writeEndObject();
    }

    private static void quantity(JsonGenerator json, String name, double value, double give, String unit) {
        json.writeObjectPropertyStart(name);
        json.writeNumberProperty("value", Numbers.exact(value));
        json.writeNumberProperty("give", Numbers.exact(give));
        json.writeStringProperty("unit", unit);
        json.writeEndObject();
    }

    private static void apart(JsonGenerator json, String name, MeasuredColour.Apart apart) {
        json.writeObjectPropertyStart(name);
        json.writeNumberProperty("mean", Numbers.exact(apart.mean()));
        json.writeNumberProperty("mean-give", Numbers.exact(apart.meanGive()));
        json.writeNumberProperty("worst", Numbers.exact(apart.worst()));
        json.writeNumberProperty("worst-give", Numbers.exact(apart.worstGive()));
        json.writeStringProperty("patch", apart.patch());
        json.writeEndObject();
    }

    private static void wrapped(List<String> out, String indent, String text) {
        out.addAll(Wrap.lines(Wrap.clean(text), indent, indent + INDENT, WIDTH));
    }
}
