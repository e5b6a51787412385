package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checked;
import akin.engine.assess.Numbers;
import akin.engine.assess.Unchecked;
import akin.engine.baseline.Baseline;
import akin.engine.book.Pages;
import akin.engine.book.RulePage;
import akin.engine.book.Shelf;
import akin.engine.read.Place;
import akin.model.finding.Severity;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;

/**
 * The report as SARIF 2.1.0 (OASIS Standard with Errata 01, 28 August 2023): one run, a result for each finding, the waived
 * and the known among them, and an open one for each check that lacked a fact.
 */
final class SarifReport {

    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
    private static final String VERSION = "2.1.0";

    /** Names what the fingerprint is made of; another recipe takes another number. */
    private static final String FINGERPRINT = "ruleUnitsPath/v1";

    private static final String UNRESERVED = "-._~/";

    private final Batch batch;
    private final JsonGenerator json;
    private final Map<String, Integer> rules = new HashMap<>();

    private SarifReport(Batch batch, JsonGenerator json) {
        this.batch = batch;
        this.json = json;
    }

    static String render(Batch batch) {
        return JsonText.write(json -> new SarifReport(batch, json).log());
    }

    private void log() {
        json.writeStartObject();
        json.writeStringProperty("$schema", SCHEMA);
        json.writeStringProperty("version", VERSION);
        json.writeArrayPropertyStart("runs");
        json.writeStartObject();
        tool();
        invocation();
        // Columns count characters, not halves of them: the SARIF default would be UTF-16 code units.
        json.writeStringProperty("columnKind", "unicodeCodePoints");
        artifacts();
        json.writeArrayPropertyStart("results");
        batch.read().forEach(this::results);
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
    }

    private void tool() {
        json.writeObjectPropertyStart("tool");
        json.writeObjectPropertyStart("driver");
        json.writeStringProperty("name", "Akin");
        json.writeStringProperty("version", batch.version());
        json.writeStringProperty("semanticVersion", batch.version());
        json.writeArrayPropertyStart("rules");
        Set<String> used = used();
        for (RulePage page : batch.book().pages()) {
            if (used.contains(page.id())) {
                rules.put(page.id(), rules.size());
                rule(page);
            }
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndObject();
    }

    /** The rules that have a result; a rule without one need not be explained. */
    private Set<String> used() {
        Set<String> used = new LinkedHashSet<>();
        for (Batch.Read part : batch.read()) {
            Assessment a = part.assessment();
            a.findings().forEach(entry -> used.add(entry.rule()));
            a.waived().forEach(waived -> used.add(waived.entry().rule()));
            a.known().forEach(entry -> used.add(entry.rule()));
            a.unchecked().forEach(line -> used.add(line.rule()));
            a.cautions().forEach(caution -> used.add(caution.rule()));
        }
        return used;
    }

    private void rule(RulePage page) {
        json.writeStartObject();
        json.writeStringProperty("id", page.id());
        message("shortDescription", PageReport.inWords(page.title()));
        message("fullDescription", PageReport.inWords(page.because()));
        json.writeObjectPropertyStart("defaultConfiguration");
        json.writeStringProperty(
                "level",
                page.severities().stream()
                        .min(Severity::compareTo)
                        .map(SarifReport::level)
                        .orElse("none"));
        json.writeEndObject();
        String body =
                Shelf.page(page.id()).map(text -> Pages.body(page.id(), text)).orElse(page.title());
        json.writeObjectPropertyStart("help");
        json.writeStringProperty("text", body);
        json.writeStringProperty("markdown", body);
        json.writeEndObject();
        json.writeObjectPropertyStart("properties");
        JsonText.strings(json, "tags", List.of(page.topic()));
        JsonText.strings(
                json,
                "severities",
                page.severities().stream().map(Severity::word).toList());
        JsonText.strings(json, "sources", page.sources());
        json.writeEndObject();
        json.writeEndObject();
    }

    private void invocation() {
        json.writeArrayPropertyStart("invocations");
        json.writeStartObject();
        json.writeBooleanProperty("executionSuccessful", batch.allRead());
        List<String> baseline = Story.baseline(batch);
        List<String> notes = batch.read().stream()
                .flatMap(read -> read.assessment().notes().stream().map(note -> read.file() + ": " + note))
                .toList();
        if (!batch.allRead() || !baseline.isEmpty() || !notes.isEmpty()) {
            json.writeArrayPropertyStart("toolExecutionNotifications");
            for (Batch.Unread unread : batch.unread()) {
                json.writeStartObject();
                json.writeStringProperty("level", "error");
                message("message", unread.problem());
                json.writeArrayPropertyStart("locations");
                json.writeStartObject();
                json.writeObjectPropertyStart("physicalLocation");
                artifact(unread.file());
                if (unread.line() > 0) {
                    json.writeObjectPropertyStart("region");
                    json.writeNumberProperty("startLine", unread.line());
                    json.writeNumberProperty("startColumn", unread.column());
                    json.writeEndObject();
                }
                json.writeEndObject();
                json.writeEndObject();
                json.writeEndArray();
                json.writeEndObject();
            }
            for (String line : baseline) {
                json.writeStartObject();
                json.writeStringProperty("level", batch.baselineFails() ? "error" : "note");
                message("message", line);
                json.writeEndObject();
            }
            for (String note : notes) {
                json.writeStartObject();
                json.writeStringProperty("level", "note");
                message("message", note);
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        json.writeEndObject();
        json.writeEndArray();
    }

    /** Every rig file that was looked at, those without a result among them. */
    private void artifacts() {
        json.writeArrayPropertyStart("artifacts");
        for (Batch.Part part : batch.parts()) {
            json.writeStartObject();
            json.writeObjectPropertyStart("location");
            json.writeStringProperty("uri", uri(part.file()));
            json.writeEndObject();
            JsonText.strings(json, "roles", List.of("analysisTarget"));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void results(Batch.Read part) {
        Assessment a = part.assessment();
        boolean compared = batch.baseline() != null && batch.baseline().trouble() == null;
        a.findings().forEach(entry -> finding(part.checked(), entry, null, compared ? "new" : null));
        a.waived().forEach(waived -> finding(part.checked(), waived.entry(), waived, null));
        a.known().forEach(entry -> finding(part.checked(), entry, null, "unchanged"));
        a.unchecked().forEach(line -> unchecked(part.checked(), line));
        a.cautions().forEach(caution -> caution(part.checked(), caution));
    }

    private void finding(
            Checked checked,
            Assessment.Entry entry,
            Assessment.@Nullable Waived waived,
            @Nullable String baselineState) {
        json.writeStartObject();
        ruleOf(entry.rule());
        json.writeStringProperty("kind", "fail");
        json.writeStringProperty("level", level(entry.severity()));
        List<String> words = new ArrayList<>();
        words.add(sentence(entry.title()) + " " + entry.because());
        entry.fixes().forEach(fix -> words.add((words.size() == 1 ? "Do: " : "Or: ") + fix.effect()));
        message("message", words);
        location(checked, entry.place(), entry.path());
        fingerprint(new Baseline.Key(entry.rule(), entry.units(), entry.path()));
        if (waived != null) {
            json.writeArrayPropertyStart("suppressions");
            json.writeStartObject();
            // The waiver stands in the rig file itself.
            json.writeStringProperty("kind", "inSource");
            json.writeStringProperty("status", "accepted");
            json.writeStringProperty("justification", Wrap.clean(Story.agreed(waived)));
            json.writeEndObject();
            json.writeEndArray();
        }
        if (baselineState != null) {
            json.writeStringProperty("baselineState", baselineState);
        }
        fixes(checked, entry);
        json.writeObjectPropertyStart("properties");
        json.writeStringProperty("severity", entry.severity().word());
        json.writeNumberProperty("magnitude", Numbers.exact(entry.magnitude()));
        JsonText.strings(json, "units", entry.units());
        json.writeEndObject();
        json.writeEndObject();
    }

    private void fixes(Checked checked, Assessment.Entry entry) {
        List<Assessment.Remedy> fixes =
                entry.fixes().stream().filter(fix -> !fix.edits().isEmpty()).toList();
        if (fixes.isEmpty()) {
            return;
        }
        json.writeArrayPropertyStart("fixes");
        for (Assessment.Remedy fix : fixes) {
            List<String> words = new ArrayList<>();
            words.add(fix.effect());
            fix.sideEffects().forEach(effect -> words.add(Story.BRINGS + effect));
            json.writeStartObject();
            message("description", words);
            json.writeArrayPropertyStart("artifactChanges");
            json.writeStartObject();
            artifact(checked.assessment().file());
            json.writeArrayPropertyStart("replacements");
            for (Checked.Replacement replacement : checked.replacements(fix)) {
                json.writeStartObject();
                region("deletedRegion", replacement.from(), replacement.to());
                json.writeObjectPropertyStart("insertedContent");
                json.writeStringProperty("text", replacement.text());
                json.writeEndObject();
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A check that could not run is open, and an open result has no level. */
    private void unchecked(Checked checked, Unchecked line) {
        json.writeStartObject();
        ruleOf(line.rule());
        json.writeStringProperty("kind", "open");
        json.writeStringProperty("level", "none");
        message("message", "Not checked for " + line.unit() + ", since this is not known: " + Story.missing(line));
        String unit = "units." + line.unit();
        location(checked, checked.placeOf(line.missing().startsWith(unit) ? line.missing() : unit), line.missing());
        fingerprint(new Baseline.Key(line.rule(), List.of(line.unit()), line.missing()));
        json.writeObjectPropertyStart("properties");
        JsonText.strings(json, "units", List.of(line.unit()));
        json.writeEndObject();
        json.writeEndObject();
    }

    /** A caution is no fault, so it has no level either: one result for each place that calls for it. */
    private void caution(Checked checked, Assessment.Caution caution) {
        for (Assessment.Reason reason : caution.reasons()) {
            String where = reason.unit() != null ? reason.unit() : String.valueOf(reason.scene());
            json.writeStartObject();
            ruleOf(caution.rule());
            json.writeStringProperty("kind", "informational");
            json.writeStringProperty("level", "none");
            message("message", List.of(caution.sentence() + " Here: " + reason.words(), Story.CARE));
            location(checked, reason.place(), reason.path());
            fingerprint(new Baseline.Key(caution.rule(), List.of(where), reason.path()));
            json.writeEndObject();
        }
    }

    private void ruleOf(String rule) {
        json.writeStringProperty("ruleId", rule);
        Integer index = rules.get(rule);
        if (index != null) {
            json.writeNumberProperty("ruleIndex", index);
        }
    }

    private void location(Checked checked, Place place, String path) {
        json.writeArrayPropertyStart("locations");
        json.writeStartObject();
        json.writeObjectPropertyStart("physicalLocation");
        artifact(checked.assessment().file());
        region("region", place, checked.behind(place));
        json.writeEndObject();
        json.writeArrayPropertyStart("logicalLocations");
        json.writeStartObject();
        json.writeStringProperty("fullyQualifiedName", path);
        json.writeStringProperty("kind", "property");
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndArray();
    }

    private void artifact(String file) {
        json.writeObjectPropertyStart("artifactLocation");
        json.writeStringProperty("uri", uri(file));
        json.writeEndObject();
    }

    private void region(String name, Place from, Place to) {
        json.writeObjectPropertyStart(name);
        json.writeNumberProperty("startLine", from.line());
        json.writeNumberProperty("startColumn", from.column());
        json.writeNumberProperty("endLine", to.line());
        json.writeNumberProperty("endColumn", to.column());
        json.writeEndObject();
    }

    private void message(String name, String text) {
        message(name, List.of(text));
    }

    private void message(String name, List<String> lines) {
        json.writeObjectPropertyStart(name);
        json.writeStringProperty(
                "text",
                String.join(
                        "\n",
                        lines.stream().map(line -> literal(Wrap.clean(line))).toList()));
        json.writeEndObject();
    }

    /** The same finding has the same fingerprint wherever its setting moves to in the file. */
    private void fingerprint(Baseline.Key key) {
        StringBuilder text = new StringBuilder();
        List<String> parts = new ArrayList<>(List.of(key.rule(), key.path()));
        parts.addAll(key.units());
        // With their lengths, so that no two lists run together into the same text.
        parts.forEach(part -> text.append(part.length()).append(':').append(part));
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            json.writeObjectPropertyStart("partialFingerprints");
            json.writeStringProperty(FINGERPRINT, HexFormat.of().formatHex(digest));
            json.writeEndObject();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** What cannot be put right in post is an error; what costs time a warning; a habit a note. */
    private static String level(Severity severity) {
        return switch (severity) {
            case BAKED_IN, LOSSY -> "error";
            case FIXABLE -> "warning";
            case ADVICE -> "note";
        };
    }

    private static String sentence(String title) {
        return title.endsWith(".") || title.endsWith("?") || title.endsWith("!") ? title : title + ".";
    }

    /**
     * Text that a reader of SARIF shows as it is: braces are doubled since single ones are placeholders (section 3.11.5), and
     * what would be a link is none (3.11.6).
     */
    private static String literal(String text) {
        return text.replace("{", "{{").replace("}", "}}").replace("](", "\\](");
    }

    /** A file name as a relative reference, or an absolute one as a file URI (RFC 3986, RFC 8089). */
    private static String uri(String file) {
        StringBuilder out = new StringBuilder(file.startsWith("/") ? "file://" : "");
        for (byte b : file.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xFF);
            boolean plain = (c >= 'a' && c <= 'z')
                    || (c >= 'A' && c <= 'Z')
                    || (c >= '0' && c <= '9')
                    || UNRESERVED.indexOf(c) >= 0;
            if (plain) {
                out.append(c);
            } else {
                out.append('%').append(HexFormat.of().withUpperCase().toHexDigits(b));
            }
        }
        return out.toString();
    }
}
