package akin.engine.report;

import akin.engine.assess.Numbers;
import akin.engine.assess.Ranking;
import akin.engine.assess.Unchecked;
import akin.model.finding.Severity;
import akin.model.quantity.NeutralDensity;
import akin.model.rig.FittedLens;
import akin.model.rig.Setting;
import akin.model.rig.SyncPlan;
import akin.model.rig.Unit;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The reports of a survey: a table with reasons, comma-separated values, and JSON. */
public final class SurveyReport {

    private static final int WIDTH = 80;
    private static final String INDENT = "    ";
    private static final String AUTO = "auto";
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    /**
     * What is surveyed.
     *
     * @param file the rig file as it was named
     * @param production name of the production
     * @param hero name of the hero
     * @param tolerance name of the tolerance profile
     * @param list what the kit list holds, in words
     * @param assumed what was assumed of the candidates, in sentences
     */
    public record Subject(
            String file, String production, String hero, String tolerance, String list, List<String> assumed) {

        /** Copies the list. */
        public Subject {
            assumed = List.copyOf(assumed);
        }
    }

    private SurveyReport() {}

    /** The table, best first; then why, then what was assumed. */
    public static String text(Subject subject, Ranking ranking) {
        List<String> out = new ArrayList<>();
        wrapped(
                out,
                Wrap.clean(subject.production()) + ": " + Wrap.clean(subject.file()) + ", candidates beside "
                        + subject.hero() + " for " + subject.tolerance());
        wrapped(
                out,
                subject.list() + ": " + counted(ranking.size(), "candidate") + ", " + grouped(ranking.sound())
                        + " of them with nothing baked in" + shown(ranking));
        out.add("");
        out.add("   #  baked-in  lossy  fixable  advice  unchecked  candidate");
        for (Ranking.Place place : ranking.best()) {
            String numbers = String.format(
                    Locale.ROOT,
                    "%4d%10d%7d%9d%8d%11d  ",
                    place.rank(),
                    place.count(Severity.BAKED_IN),
                    place.count(Severity.LOSSY),
                    place.count(Severity.FIXABLE),
                    place.count(Severity.ADVICE),
                    place.unchecked());
            out.addAll(Wrap.lines(gear(place.unit()), numbers, " ".repeat(numbers.length()), WIDTH));
        }
        for (Ranking.Place place : ranking.best()) {
            out.add("");
            why(out, place);
        }
        out.add("");
        out.add("ASSUMED");
        subject.assumed().forEach(sentence -> out.addAll(Wrap.lines(sentence, "  - ", INDENT, WIDTH)));
        return String.join("\n", out) + "\n";
    }

    private static void wrapped(List<String> out, String text) {
        out.addAll(Wrap.lines(text, "", "", WIDTH));
    }

    private static String shown(Ranking ranking) {
        return ranking.best().size() < ranking.size()
                ? "; the best " + grouped(ranking.best().size()) + " are shown"
                : "";
    }

    private static String counted(int count, String what) {
        return grouped(count) + " " + what + (count == 1 ? "" : "s");
    }

    private static String grouped(int count) {
        return String.format(Locale.ROOT, "%,d", count);
    }

    private static String gear(Unit unit) {
        FittedLens lens = unit.lens();
        return Wrap.clean(unit.body().id() + " " + unit.mode().id()
                + (unit.profile() == null ? "" : " " + unit.profile().id())
                + (lens == null ? ", no lens" : ", " + lens.lens().id()));
    }

    private static void why(List<String> out, Ranking.Place place) {
        out.addAll(Wrap.lines(gear(place.unit()), String.format(Locale.ROOT, "%2d. ", place.rank()), INDENT, WIDTH));
        out.addAll(Wrap.lines("Set to " + Wrap.clean(set(place.unit())) + ".", INDENT, INDENT, WIDTH));
        for (Ranking.Reason reason : place.reasons()) {
            out.addAll(Wrap.lines(
                    reason.severity() + ": " + Wrap.clean(reason.title()) + " [" + reason.rule() + "]",
                    INDENT,
                    INDENT + "  ",
                    WIDTH));
        }
        if (place.reasons().isEmpty()) {
            out.add(INDENT + "Nothing is found.");
        }
        if (place.unchecked() > 0) {
            String facts =
                    place.gaps().stream().map(Unchecked::missing).distinct().collect(Collectors.joining(", "));
            out.addAll(Wrap.lines(
                    "unchecked: " + counted(place.unchecked(), "check") + " for want of " + Wrap.clean(facts),
                    INDENT,
                    INDENT + "  ",
                    WIDTH));
        }
    }

    /** What is set, in words. */
    private static String set(Unit unit) {
        List<String> all = new ArrayList<>();
        Map<String, Object> settings = settings(unit);
        FittedLens lens = unit.lens();
        if (lens != null) {
            all.add(
                    lens.focal() == null
                            ? "a focal length still open"
                            : lens.focal().toString());
            Object stop = automatic(unit, Setting.STOP, lens.stop());
            all.add(stop == null ? "a stop still open" : stop.toString());
            if (lens.adapter() != null) {
                all.add("adapter " + lens.adapter().id());
            }
        }
        for (String key : List.of("rate", "shutter", "iso", "white", "tint", "codec")) {
            if (settings.containsKey(key)) {
                all.add((key.equals("shutter") || key.equals("white") ? "" : said(key)) + settings.get(key));
            }
        }
        List<NeutralDensity> filters = unit.filters();
        if (filters != null) {
            all.add(filters.isEmpty() ? "no filter" : joined(filters, " + "));
        }
        return String.join(", ", all);
    }

    private static String said(String key) {
        return key.equals("iso") ? "ISO " : key + " ";
    }

    private static String joined(List<?> parts, String with) {
        return parts.stream().map(Object::toString).collect(Collectors.joining(with));
    }

    private static @Nullable Object automatic(Unit unit, Setting setting, @Nullable Object value) {
        return unit.leaves(setting) ? AUTO : value;
    }

    /** The settings as a unit of a rig file writes them; what is not said is left out. */
    private static Map<String, Object> settings(Unit unit) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("body", unit.body().id());
        all.put("mode", unit.mode().id());
        put(all, "profile", unit.profile() == null ? null : unit.profile().id());
        put(all, "rate", unit.rate());
        FittedLens fitted = unit.lens();
        if (fitted != null) {
            Map<String, Object> lens = new LinkedHashMap<>();
            lens.put("use", fitted.lens().id());
            put(lens, "focal", fitted.focal());
            put(lens, "stop", automatic(unit, Setting.STOP, fitted.stop()));
            put(
                    lens,
                    "adapter",
                    fitted.adapter() == null ? null : fitted.adapter().id());
            all.put("lens", lens);
        }
        put(all, "shutter", automatic(unit, Setting.SHUTTER, unit.shutter()));
        if (unit.leaves(Setting.ISO)) {
            all.put("iso", AUTO);
        } else if (unit.iso() != null) {
            all.put("iso", unit.iso().value());
        }
        if (unit.filters() != null) {
            all.put("filters", unit.filters().stream().map(Object::toString).toList());
        }
        put(all, "white", automatic(unit, Setting.WHITE, unit.white()));
        put(all, "tint", unit.tint());
        put(all, "stabilisation", unit.stabilisation());
        if (!unit.recording().external()) {
            put(
                    all,
                    "codec",
                    unit.recording().codec() == null
                            ? null
                            : unit.recording().codec().id());
        }
        SyncPlan sync = unit.sync();
        Map<String, Object> timecode = new LinkedHashMap<>();
        put(timecode, "source", sync.source());
        put(timecode, "counting", sync.counting());
        if (sync.boxPpm() != null) {
            timecode.put("box-ppm", sync.boxPpm());
        }
        if (!timecode.isEmpty()) {
            all.put("timecode", timecode);
        }
        Map<String, Object> sound = new LinkedHashMap<>();
        put(sound, "rate", sync.soundRate());
        if (sync.scratch() != null) {
            sound.put("scratch", sync.scratch());
        }
        if (!sound.isEmpty()) {
            all.put("sound", sound);
        }
        put(all, "clock", sync.clock());
        put(all, "clock-date", sync.clockDate());
        return all;
    }

    private static void put(Map<String, Object> in, String key, @Nullable Object value) {
        if (value != null) {
            in.put(key, value.toString());
        }
    }

    /** One line a candidate, after a line of headings, as RFC 4180 has it but with line feeds alone. */
    public static String csv(Ranking ranking) {
        StringBuilder out = new StringBuilder();
        row(
                out,
                "rank",
                "body",
                "mode",
                "profile",
                "lens",
                "adapter",
                "focal",
                "stop",
                "shutter",
                "iso",
                "filters",
                "white",
                "baked-in",
                "lossy",
                "fixable",
                "advice",
                "unchecked",
                "reasons");
        for (Ranking.Place place : ranking.best()) {
            Unit unit = place.unit();
            FittedLens lens = unit.lens();
            row(
                    out,
                    place.rank(),
                    unit.body().id(),
                    unit.mode().id(),
                    unit.profile() == null ? null : unit.profile().id(),
                    lens == null ? null : lens.lens().id(),
                    lens == null || lens.adapter() == null
                            ? null
                            : lens.adapter().id(),
                    lens == null ? null : lens.focal(),
                    lens == null ? null : automatic(unit, Setting.STOP, lens.stop()),
                    automatic(unit, Setting.SHUTTER, unit.shutter()),
                    automatic(unit, Setting.ISO, unit.iso()),
                    unit.filters() == null ? null : joined(unit.filters(), " + "),
                    automatic(unit, Setting.WHITE, unit.white()),
                    place.count(Severity.BAKED_IN),
                    place.count(Severity.LOSSY),
                    place.count(Severity.FIXABLE),
                    place.count(Severity.ADVICE),
                    place.unchecked(),
                    place.reasons().stream()
                            .map(reason -> reason.severity() + " " + reason.rule() + ": " + reason.title())
                            .collect(Collectors.joining("; ")));
        }
        return out.toString();
    }

    private static void row(StringBuilder out, @Nullable Object... cells) {
        for (int i = 0; i < cells.length; i++) {
            String cell = Wrap.clean(Objects.toString(cells[i], ""));
            boolean quoted = cell.indexOf(',') >= 0 || cell.indexOf('"') >= 0;
            out.append(i == 0 ? "" : ",").append(quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
        }
        out.append('\n');
    }

    /**
     * The survey for programs. The {@code settings} of a candidate are those of a unit in a rig file.
     *
     * @param version version of Akin
     */
    public static String json(Subject subject, Ranking ranking, String version) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("akin", version);
        all.put("rig", subject.file());
        all.put("production", subject.production());
        all.put("hero", subject.hero());
        all.put("tolerance", subject.tolerance());
        all.put("list", subject.list());
        all.put("size", ranking.size());
        all.put("nothing-baked-in", ranking.sound());
        all.put("assumed", subject.assumed());
        all.put(
                "candidates",
                ranking.best().stream().map(SurveyReport::candidate).toList());
        StringWriter out = new StringWriter();
        JSON.writeValue(out, all);
        return out.append('\n').toString();
    }

    private static Map<String, Object> candidate(Ranking.Place place) {
        Map<String, Object> counts = new LinkedHashMap<>();
        for (Severity severity : Severity.values()) {
            counts.put(severity.word(), place.count(severity));
        }
        counts.put("unchecked", place.unchecked());
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("rank", place.rank());
        one.put("unit", place.unit().name());
        one.put("settings", settings(place.unit()));
        one.put("counts", counts);
        one.put("findings", place.reasons().stream().map(SurveyReport::reason).toList());
        one.put("unchecked", place.gaps().stream().map(SurveyReport::gap).toList());
        return one;
    }

    private static Map<String, Object> reason(Ranking.Reason reason) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("rule", reason.rule());
        one.put("severity", reason.severity().word());
        one.put("magnitude", Numbers.exact(reason.magnitude()));
        one.put("title", reason.title());
        one.put("because", reason.because());
        return one;
    }

    private static Map<String, Object> gap(Unchecked gap) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("rule", gap.rule());
        one.put("missing", gap.missing());
        one.put("where", gap.where().words());
        return one;
    }
}
