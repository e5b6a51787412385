package akin.engine.assess;

import akin.engine.book.Examples;
import akin.engine.book.Pages;
import akin.engine.book.RulePage;
import akin.engine.edit.Edits;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.model.finding.Edit;
import akin.model.finding.Severity;
import akin.model.finding.Target;
import akin.model.footage.Clip;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Proves a rule's page: each example gives what it says, each fix does what it promises, and together they show every
 * severity and every fix of the front matter.
 */
public final class ExampleProof {

    /** Rules that give aims, and the level that each of them is for. */
    private static final Map<String, String> AIMED =
            Map.of("exposure/grey-target", Target.MIDDLE_GREY, "exposure/clip-level", Target.CLIP);

    private static final Pattern FINDS = Pattern.compile("# finds: (baked-in|lossy|fixable|advice)");
    private static final Pattern AIMS = Pattern.compile("# aims: (.+)");
    private static final Pattern SAYS = Pattern.compile("# says: (.+)");
    private static final Pattern UNCHECKED = Pattern.compile("# unchecked");

    /** Waivers in examples end around this day. */
    private static final Terms TERMS = new Terms(null, LocalDate.of(2027, 1, 1));

    private final Checker checker;
    private final Document pair;

    /**
     * A proof by a checker.
     *
     * @param pair the rig that examples are changes to
     */
    public ExampleProof(Checker checker, Document pair) {
        this.checker = checker;
        this.pair = pair;
    }

    /** What is wrong with an example of a rule; empty when it gives what it says. */
    public List<String> of(String id, Pages.Example example) {
        List<String> wrong = new ArrayList<>();
        try {
            prove(id, example, wrong);
        } catch (BadInput e) {
            wrong.add(e.line() > 0 ? "line " + (example.line() + e.line() - 1) + ": " + e.problem() : e.problem());
        }
        return wrong;
    }

    private void prove(String id, Pages.Example example, List<String> wrong) {
        Document changes = YamlReader.read(id + ".md", example.text());
        Document rig = Examples.lay(changes, pair);
        Assessment assessment = checker.check(rig, TERMS.with(Examples.clips(changes)), FailOn.LOSSY);
        Map<Integer, String> expected = marked(FINDS, example);
        Map<Integer, String> found = new TreeMap<>();
        of(id, assessment)
                .forEach(f -> found.merge(line(changes, f), f.severity().word(), ExampleProof::and));
        same("finds", lines(example, expected), lines(example, found), wrong);
        List<Unchecked> gaps = assessment.unchecked().stream()
                .filter(gap -> gap.rule().equals(id))
                .toList();
        if (gaps.isEmpty() == UNCHECKED.matcher(example.text()).find()) {
            wrong.add(
                    gaps.isEmpty()
                            ? "it says '# unchecked', but everything was known"
                            : "it could not be checked for want of "
                                    + gaps.stream().map(Unchecked::missing).collect(Collectors.joining(", "))
                                    + "; say '# unchecked' where that is meant");
        }
        if (id.startsWith("caution/")) {
            proveCautions(id, example, changes, assessment, wrong);
        } else if (page(id).severities().isEmpty()) {
            proveAims(id, example, changes, assessment, wrong);
        } else if (example.fires() && expected.isEmpty()) {
            wrong.add("under Fires, '# finds: severity' belongs on the line of the cause");
        }
        for (Assessment.Entry entry : of(id, assessment)) {
            for (Assessment.Remedy fix : entry.fixes()) {
                proveFix(rig, entry, fix, assessment, wrong);
            }
        }
    }

    /** The line of the last clip that a finding names, else that of the setting that caused it. */
    private static int line(Document changes, Assessment.Entry finding) {
        List<String> names = Examples.clips(changes).stream().map(Clip::name).toList();
        int last = finding.clips().stream().mapToInt(names::indexOf).max().orElse(-1);
        return changes.placeOf(last < 0 ? finding.path() : "clips." + last).line();
    }

    private RulePage page(String id) {
        return checker.book().page(id);
    }

    /** A rule that gives no severity gives aims: for the units that an example names, exactly those that it says. */
    private static void proveAims(
            String id, Pages.Example example, Document changes, Assessment assessment, List<String> wrong) {
        Set<String> expected = new TreeSet<>();
        Matcher aims = AIMS.matcher(example.text());
        while (aims.find()) {
            expected.add(aims.group(1).strip());
        }
        String level = AIMED.get(id);
        Set<String> found = assessment.targets().stream()
                .filter(target -> target.name().equals(level))
                .filter(target -> changes.at("units." + target.unit()).isPresent())
                .map(t -> t.unit() + " " + Numbers.spoken(t))
                .collect(Collectors.toCollection(TreeSet::new));
        same("aims", String.join("; ", expected), String.join("; ", found), wrong);
        if (found.isEmpty() == example.fires()) {
            wrong.add("an example under Fires has an aim, one that stays quiet has none");
        }
    }

    /** A caution is said once, with exactly the reasons that an example says, each on the line of what calls for it. */
    private static void proveCautions(
            String id, Pages.Example example, Document changes, Assessment assessment, List<String> wrong) {
        List<Assessment.Caution> said =
                assessment.cautions().stream().filter(c -> c.rule().equals(id)).toList();
        if (said.size() != (example.fires() ? 1 : 0)) {
            wrong.add("it is said " + said.size() + " times");
        }
        Map<Integer, String> found = new TreeMap<>();
        said.stream()
                .flatMap(caution -> caution.reasons().stream())
                .forEach(reason ->
                        found.merge(changes.placeOf(reason.path()).line(), reason.words(), ExampleProof::and));
        same("says", lines(example, marked(SAYS, example)), lines(example, found), wrong);
    }

    /** A fix that edits removes its finding, and brings no other that it did not announce. */
    private void proveFix(
            Document rig, Assessment.Entry entry, Assessment.Remedy fix, Assessment before, List<String> wrong) {
        if (fix.edits().isEmpty()) {
            return;
        }
        List<Edit> edits =
                fix.edits().stream().map(c -> new Edit(c.path(), c.to())).toList();
        Document mended = YamlReader.read(rig.file(), Edits.apply(rig, edits));
        Assessment after = checker.check(mended, TERMS, FailOn.LOSSY);
        if (after.findings().stream()
                .anyMatch(f -> f.rule().equals(entry.rule()) && f.units().equals(entry.units()))) {
            wrong.add("its finding is still there after the fix: " + fix.effect());
        }
        Set<String> known =
                before.findings().stream().map(f -> f.rule() + f.units()).collect(Collectors.toSet());
        long fresh = after.findings().stream()
                .map(f -> f.rule() + f.units())
                .filter(key -> !known.contains(key))
                .distinct()
                .count();
        if (fix.sideEffects().size() != fresh) {
            wrong.add("the fix brings " + fresh + " other findings and announces "
                    + fix.sideEffects().size() + ": " + fix.effect());
        }
    }

    /** What a page's examples together leave out; empty when they show all of its front matter. */
    public List<String> complete(String id, List<Pages.Example> examples) {
        List<String> wrong = new ArrayList<>();
        if (examples.stream().noneMatch(Pages.Example::fires)) {
            wrong.add("no example is under Fires");
        }
        if (examples.stream().allMatch(Pages.Example::fires)) {
            wrong.add("no example is under Stays quiet");
        }
        Set<Severity> severities = new TreeSet<>();
        Set<String> effects = new TreeSet<>();
        for (Pages.Example example : examples) {
            Document changes = YamlReader.read(id + ".md", example.text());
            Document rig = Examples.lay(changes, pair);
            Terms terms = TERMS.with(Examples.clips(changes));
            for (Assessment.Entry entry : of(id, checker.check(rig, terms, FailOn.LOSSY))) {
                severities.add(entry.severity());
                entry.fixes().forEach(fix -> effects.add(fix.effect()));
            }
        }
        page(id).severities().stream()
                .filter(severity -> !severities.contains(severity))
                .forEach(severity -> wrong.add("no example gives the severity " + severity.word()));
        severities.stream()
                .filter(severity -> !page(id).severities().contains(severity))
                .forEach(severity -> wrong.add("its front matter does not have the severity " + severity.word()));
        page(id).fixes().forEach((key, template) -> {
            String pattern = "\\Q" + template.replaceAll("\\{[a-z0-9:-]+}", "\\\\E.*\\\\Q") + "\\E";
            if (effects.stream().noneMatch(e -> e.matches(pattern))) {
                wrong.add("no example gives the fix " + key);
            }
        });
        return wrong;
    }

    private static void same(String what, String expected, String found, List<String> wrong) {
        if (!Objects.equals(expected, found)) {
            wrong.add(what + ": the example says " + spoken(expected) + ", the rule " + spoken(found));
        }
    }

    private static String spoken(String words) {
        return words.isEmpty() ? "nothing" : words;
    }

    /** What is marked in an example, by its lines. */
    private static Map<Integer, String> marked(Pattern mark, Pages.Example example) {
        Map<Integer, String> marked = new TreeMap<>();
        int number = 1;
        for (String line : example.text().split("\n", -1)) {
            Matcher marks = mark.matcher(line);
            while (marks.find()) {
                marked.merge(number, marks.group(1).strip(), ExampleProof::and);
            }
            number++;
        }
        return marked;
    }

    /** By the lines of the page. */
    private static String lines(Pages.Example example, Map<Integer, String> byLine) {
        return byLine.entrySet().stream()
                .map(line -> line.getValue() + " on line " + (example.line() + line.getKey() - 1))
                .collect(Collectors.joining("; "));
    }

    private static String and(String a, String b) {
        return a + " and " + b;
    }

    private static List<Assessment.Entry> of(String id, Assessment assessment) {
        return assessment.findings().stream().filter(f -> f.rule().equals(id)).toList();
    }
}
