package akin.engine.report.html;

import akin.engine.assess.Assessment;
import akin.engine.assess.Numbers;
import akin.engine.assess.Verdict;
import akin.engine.report.Card;
import akin.engine.report.Gap;
import akin.engine.report.Meaning;
import akin.engine.report.OnTheDay;
import akin.engine.report.picture.Figure;
import akin.model.finding.Severity;
import akin.model.finding.Value;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the template of the page is given: the assessment, ordered and counted as the page shows it.
 *
 * @param assessment the assessment
 * @param figures the pictures of its rig
 * @param days what test shots say of each unit; empty when none were read
 * @param tables names of look-up tables, by unit
 * @param baseline what became of the baseline, in words; empty when there was none
 * @param version version of Akin
 * @param font the font of the page, in base 64
 */
public record Page(
        Assessment assessment,
        List<Figure> figures,
        List<OnTheDay> days,
        List<Card.Line> tables,
        List<String> baseline,
        String version,
        String font) {

    private static final String NONE = "–";

    /** Copies the list. */
    public Page {
        figures = List.copyOf(figures);
        days = List.copyOf(days);
        tables = List.copyOf(tables);
        baseline = List.copyOf(baseline);
    }

    /** Findings of one severity. */
    public record Group(Severity severity, String meaning, List<Item> items) {}

    /** A finding with its number in the report. */
    public record Item(int number, Assessment.Entry entry) {}

    /** The evidence of a finding: a row for each value, a column for each unit, and one for what belongs to no unit. */
    public record Evidence(List<String> columns, List<Row> rows) {}

    /** A value by unit. */
    public record Row(String name, List<String> cells) {}

    /** A source, and the rules that rest on it. */
    public record Source(String words, List<String> rules) {}

    /** The findings by severity, most urgent first; none that is empty. */
    public List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        int number = 1;
        for (Severity severity : Severity.values()) {
            List<Item> items = new ArrayList<>();
            for (Assessment.Entry entry : assessment.findings()) {
                if (entry.severity() == severity) {
                    items.add(new Item(number++, entry));
                }
            }
            if (!items.isEmpty()) {
                groups.add(new Group(severity, Meaning.of(severity), items));
            }
        }
        return groups;
    }

    /** What it comes to, in a sentence. */
    public String verdict() {
        return switch (assessment.verdict()) {
            case PASSES -> "Nothing stands in the way of cutting these units together.";
            case FAILS -> "As planned, these units will not cut together.";
            case INCOMPLETE -> "Nothing failed, but not everything could be checked.";
        };
    }

    /** The halves of the mark of the verdict: they meet, they are apart, or one is not there yet. */
    public String verdictMark() {
        return assessment.verdict() == Verdict.FAILS
                ? "M12 3 A10 10 0 0 0 12 23 M20 9 A10 10 0 0 1 20 29"
                : "M16 6 A10 10 0 0 0 16 26 M16 6 A10 10 0 0 1 16 26";
    }

    /** How many findings have a severity. */
    public long count(Severity severity) {
        return assessment.count(severity);
    }

    /** The evidence of a finding; no row when it has none. */
    public static Evidence evidence(Assessment.Entry entry) {
        Set<String> owners = new LinkedHashSet<>();
        boolean common = false;
        Map<String, Map<String, String>> rows = new LinkedHashMap<>();
        for (String unit : entry.units()) {
            if (entry.values().stream().anyMatch(value -> unit.equals(value.unitOf()))) {
                owners.add(unit);
            }
        }
        for (Value value : entry.values()) {
            common |= value.unitOf() == null;
            rows.computeIfAbsent(value.name().replace('-', ' '), name -> new LinkedHashMap<>())
                    .put(owner(value.unitOf()), written(value));
            if (value.unitOf() != null) {
                owners.add(value.unitOf());
            }
        }
        List<String> columns = new ArrayList<>(owners);
        if (common) {
            columns.add(owner(null));
        }
        return new Evidence(
                columns.stream()
                        .map(column -> column.isEmpty() ? (owners.isEmpty() ? "value" : "together") : column)
                        .toList(),
                rows.entrySet().stream()
                        .map(row -> new Row(
                                row.getKey(),
                                columns.stream()
                                        .map(column -> row.getValue().getOrDefault(column, NONE))
                                        .toList()))
                        .toList());
    }

    private static String owner(@Nullable String unit) {
        return unit == null ? "" : unit;
    }

    private static String written(Value value) {
        return value instanceof Value.Quantity quantity
                ? Numbers.spoken(quantity.value(), quantity.unit())
                : ((Value.Word) value).text();
    }

    /** What is missing, each fact once. */
    public List<Gap> gaps() {
        return Gap.of(assessment.unchecked());
    }

    /** The sources of all findings, each once, in the order in which findings name them. */
    public List<Source> sources() {
        Map<String, Set<String>> rules = new LinkedHashMap<>();
        Stream.of(
                        assessment.findings().stream(),
                        assessment.waived().stream().map(Assessment.Waived::entry),
                        assessment.known().stream())
                .flatMap(entries -> entries)
                .forEach(entry -> entry.sources()
                        .forEach(source -> rules.computeIfAbsent(source, s -> new LinkedHashSet<>())
                                .add(entry.rule())));
        return rules.entrySet().stream()
                .map(source -> new Source(source.getKey(), copy(source.getValue())))
                .toList();
    }

    private static List<String> copy(Collection<String> words) {
        return List.copyOf(words);
    }
}
