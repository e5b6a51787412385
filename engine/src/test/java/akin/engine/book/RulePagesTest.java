package akin.engine.book;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.Numbers;
import akin.engine.assess.RuleBase;
import akin.engine.edit.Edits;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.model.finding.Edit;
import akin.model.finding.Target;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.kie.api.KieBase;

/** Every rule has a page, every page a rule, and every example on a page gives what it says. */
class RulePagesTest {

    private static final Path RULES = Path.of("..", "rules", "src", "main", "resources", "akin", "rules");
    private static final Pattern FINDS = Pattern.compile("# finds: (baked-in|lossy|fixable|advice)");
    private static final Pattern AIMS = Pattern.compile("# aims: (.+)");
    private static final Pattern SAYS = Pattern.compile("# says: (.+)");
    private static final Pattern UNCHECKED = Pattern.compile("# unchecked");

    /** Rules that give aims, and the level that each of them is for. */
    private static final Map<String, String> AIMED =
            Map.of("exposure/grey-target", Target.MIDDLE_GREY, "exposure/clip-level", Target.CLIP);

    private static final Terms TERMS = new Terms(null, LocalDate.of(2027, 1, 1));

    // Loaded once for all examples: mutation tests run each example by itself, thousands of times.
    private static final Binder BINDER = new Binder();
    private static final KieBase LOADED = RuleBase.builtIn();
    private static final Map<String, Path> FILES = pageFiles();
    private static final Map<String, RulePage> PAGES = FILES.entrySet().stream()
            .collect(toMap(Map.Entry::getKey, e -> Pages.front(e.getKey() + ".md", read(e.getValue()), BINDER)));
    private static final Checker CHECKER =
            new Checker(LOADED, new RuleBook(List.copyOf(PAGES.values())), BINDER, Catalogue.builtIn(BINDER));
    private static final Document PAIR = YamlReader.read("matched-pair.yaml", read(RULES.resolve("matched-pair.yaml")));

    @Test
    void everyRuleHasAPageAndEveryPageARule() {
        Set<String> named = LOADED.getKiePackages().stream()
                .flatMap(p -> p.getRules().stream())
                .map(rule -> rule.getName().replaceAll(":.*", ""))
                .filter(name -> name.contains("/"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(PAGES.keySet()).containsExactlyInAnyOrderElementsOf(named);
        PAGES.forEach((file, page) ->
                assertThat(page.id()).as("id on the page of %s", file).isEqualTo(file));
    }

    @Test
    void theMatchedPairItselfPassesWithEverythingChecked() {
        Assessment assessment = CHECKER.check(PAIR, TERMS, FailOn.UNCHECKED);
        assertThat(assessment.findings()).isEmpty();
        assertThat(assessment.unchecked()).isEmpty();
        assertThat(assessment.checks()).isPositive();
    }

    @Test
    void theCompiledBookIsThePages() {
        assertThat(CompiledBook.load().pages()).isEqualTo(new RuleBook(List.copyOf(PAGES.values())).pages());
    }

    @TestFactory
    Stream<DynamicNode> everyExampleGivesWhatItSays() {
        // A narrow loop while one topic is written: -Dakin.topic=record. Without it every page is proven.
        String topic = System.getProperty("akin.topic", "");
        return PAGES.keySet().stream()
                .filter(id -> id.startsWith(topic))
                .sorted()
                .map(id -> {
                    List<Pages.Example> examples = Pages.examples(id + ".md", read(FILES.get(id)));
                    List<DynamicNode> tests = new ArrayList<>();
                    tests.add(dynamicTest("has examples of both kinds", () -> {
                        assertThat(examples.stream().filter(Pages.Example::fires))
                                .as("under Fires")
                                .isNotEmpty();
                        assertThat(examples.stream().filter(e -> !e.fires()))
                                .as("under Stays quiet")
                                .isNotEmpty();
                    }));
                    for (Pages.Example example : examples) {
                        String name = (example.fires() ? "fires, line " : "stays quiet, line ") + example.line();
                        tests.add(dynamicTest(name, () -> prove(id, example)));
                    }
                    tests.add(dynamicTest(
                            "shows every severity and every fix of its front matter", () -> complete(id, examples)));
                    return dynamicContainer(id, tests);
                });
    }

    private void prove(String id, Pages.Example example) {
        Document changes = YamlReader.read(id + ".md", example.text());
        Document rig = Examples.lay(changes, PAIR);
        Assessment assessment = CHECKER.check(rig, TERMS, FailOn.LOSSY);
        Map<Integer, String> expected = expected(example);
        Map<Integer, String> found = new TreeMap<>();
        of(id, assessment)
                .forEach(f -> found.merge(
                        changes.placeOf(f.path()).line(), f.severity().word(), (a, b) -> a + " and " + b));
        assertThat(found).as("findings of %s by line of the example", id).isEqualTo(expected);
        boolean unchecked =
                assessment.unchecked().stream().anyMatch(u -> u.rule().equals(id));
        assertThat(unchecked)
                .as("%s could not be checked; say '# unchecked' where that is meant", id)
                .isEqualTo(UNCHECKED.matcher(example.text()).find());
        if (id.startsWith("caution/")) {
            proveCautions(id, example, changes, assessment);
        } else if (PAGES.get(id).severities().isEmpty()) {
            proveAims(id, example, changes, assessment);
        } else if (example.fires()) {
            assertThat(expected)
                    .as("a '# finds: severity' on the line of the cause")
                    .isNotEmpty();
        }
        for (Assessment.Entry entry : of(id, assessment)) {
            for (Assessment.Remedy fix : entry.fixes()) {
                proveFix(rig, entry, fix, assessment);
            }
        }
    }

    /** A rule that gives no severity gives aims: for the units that an example names, exactly those that it says. */
    private static void proveAims(String id, Pages.Example example, Document changes, Assessment assessment) {
        Set<String> expected = new TreeSet<>();
        Matcher aims = AIMS.matcher(example.text());
        while (aims.find()) {
            expected.add(aims.group(1).strip());
        }
        String level = AIMED.get(id);
        Set<String> found = assessment.targets().stream()
                .filter(target -> target.name().equals(level))
                .filter(target -> changes.at("units." + target.unit()).isPresent())
                .map(t -> t.unit() + " " + Numbers.spoken(t.value(), t.scale()) + " on the " + t.aid())
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(found).as("aims of %s", id).isEqualTo(expected);
        assertThat(found.isEmpty())
                .as("an example under Fires has an aim; one that stays quiet has none")
                .isEqualTo(!example.fires());
    }

    /** A caution is said once, with exactly the reasons that an example says, each on the line of what calls for it. */
    private static void proveCautions(String id, Pages.Example example, Document changes, Assessment assessment) {
        Map<Integer, String> expected = new TreeMap<>();
        int number = 1;
        for (String line : example.text().split("\n", -1)) {
            Matcher says = SAYS.matcher(line);
            if (says.find()) {
                expected.put(number, says.group(1).strip());
            }
            number++;
        }
        List<Assessment.Caution> said =
                assessment.cautions().stream().filter(c -> c.rule().equals(id)).toList();
        assertThat(said).as("%s, said once", id).hasSize(example.fires() ? 1 : 0);
        Map<Integer, String> found = said.stream()
                .flatMap(caution -> caution.reasons().stream())
                .collect(toMap(
                        reason -> changes.placeOf(reason.path()).line(),
                        Assessment.Reason::words,
                        (a, b) -> a + " and " + b,
                        TreeMap::new));
        assertThat(found).as("reasons of %s by line of the example", id).isEqualTo(expected);
    }

    /** A fix that edits removes its finding, and brings no other that it did not announce. */
    private void proveFix(Document rig, Assessment.Entry entry, Assessment.Remedy fix, Assessment before) {
        if (fix.edits().isEmpty()) {
            return;
        }
        List<Edit> edits =
                fix.edits().stream().map(c -> new Edit(c.path(), c.to())).toList();
        Document mended = YamlReader.read(rig.file(), Edits.apply(rig, edits));
        Assessment after = CHECKER.check(mended, TERMS, FailOn.LOSSY);
        assertThat(after.findings())
                .as("%s after the fix: %s", entry.rule(), fix.effect())
                .noneMatch(f -> f.rule().equals(entry.rule()) && f.units().equals(entry.units()));
        Set<String> known =
                before.findings().stream().map(f -> f.rule() + f.units()).collect(Collectors.toSet());
        long fresh = after.findings().stream()
                .map(f -> f.rule() + f.units())
                .filter(key -> !known.contains(key))
                .distinct()
                .count();
        assertThat(fix.sideEffects()).as("side effects of: %s", fix.effect()).hasSize((int) fresh);
    }

    private void complete(String id, List<Pages.Example> examples) {
        RulePage page = PAGES.get(id);
        Set<String> severities = new TreeSet<>();
        Set<String> effects = new TreeSet<>();
        for (Pages.Example example : examples) {
            Document rig = Examples.lay(YamlReader.read(id + ".md", example.text()), PAIR);
            for (Assessment.Entry entry : of(id, CHECKER.check(rig, TERMS, FailOn.LOSSY))) {
                severities.add(entry.severity().word());
                entry.fixes().forEach(fix -> effects.add(fix.effect()));
            }
        }
        assertThat(severities)
                .as("severities that examples give")
                .containsExactlyInAnyOrderElementsOf(
                        page.severities().stream().map(s -> s.word()).toList());
        page.fixes().forEach((key, template) -> {
            String pattern = "\\Q" + template.replaceAll("\\{[a-z0-9:-]+}", "\\\\E.*\\\\Q") + "\\E";
            assertThat(effects).as("an example that gives the fix %s", key).anyMatch(e -> e.matches(pattern));
        });
    }

    private static List<Assessment.Entry> of(String id, Assessment assessment) {
        return assessment.findings().stream().filter(f -> f.rule().equals(id)).toList();
    }

    private static Map<Integer, String> expected(Pages.Example example) {
        Map<Integer, String> expected = new TreeMap<>();
        int number = 1;
        for (String line : example.text().split("\n", -1)) {
            Matcher finds = FINDS.matcher(line);
            while (finds.find()) {
                expected.merge(number, finds.group(1), (a, b) -> a + " and " + b);
            }
            number++;
        }
        return expected;
    }

    private static Map<String, Path> pageFiles() {
        try (Stream<Path> all = Files.walk(RULES)) {
            return all.filter(f -> f.toString().endsWith(".md"))
                    .collect(toMap(
                            f -> RULES.relativize(f)
                                    .toString()
                                    .replace('\\', '/')
                                    .replaceAll("\\.md$", ""),
                            f -> f,
                            (a, b) -> a,
                            TreeMap::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
