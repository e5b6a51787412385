package akin.engine.book;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.ExampleProof;
import akin.engine.assess.FailOn;
import akin.engine.assess.RuleBase;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
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
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.kie.api.KieBase;

/** Every rule has a page, every page a rule, and every example on a page gives what it says. */
class RulePagesTest {

    private static final Path RULES = Path.of("..", "rules", "src", "main", "resources", "akin", "rules");

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

    private static final ExampleProof PROOF = new ExampleProof(CHECKER, PAIR);

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
        return ids().stream().filter(id -> id.startsWith(topic)).map(id -> {
            List<Pages.Example> examples = examples(id);
            List<DynamicNode> tests = new ArrayList<>();
            for (Pages.Example example : examples) {
                String name = (example.fires() ? "fires, line " : "stays quiet, line ") + example.line();
                tests.add(dynamicTest(name, () -> prove(id, example)));
            }
            tests.add(dynamicTest(
                    "has examples of both kinds, of every severity and every fix of its front matter",
                    () -> assertThat(PROOF.complete(id, examples)).as(id).isEmpty()));
            return dynamicContainer(id, tests);
        });
    }

    /** Every rule's id. */
    static List<String> ids() {
        return PAGES.keySet().stream().sorted().toList();
    }

    /** The examples on the page of a rule. */
    static List<Pages.Example> examples(String id) {
        return Pages.examples(id + ".md", read(FILES.get(id)));
    }

    /** The rig of an example, checked. */
    static Assessment assessed(String id, Pages.Example example) {
        Document changes = YamlReader.read(id + ".md", example.text());
        return CHECKER.check(Examples.lay(changes, PAIR), TERMS.with(Examples.clips(changes)), FailOn.LOSSY);
    }

    /** Fails unless an example gives what it says. */
    static void prove(String id, Pages.Example example) {
        assertThat(PROOF.of(id, example))
                .as("%s, example of line %d", id, example.line())
                .isEmpty();
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
