package akin.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.book.CompiledBook;
import akin.engine.edit.Edits;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.model.finding.Edit;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** On rigs that nobody wrote a page for: a fix removes its finding, and brings no other that it does not announce. */
class FixesHoldTest {

    private static final Binder BINDER = new Binder();
    private static final Checker CHECKER =
            new Checker(RuleBase.builtIn(), CompiledBook.load(), BINDER, Catalogue.builtIn(BINDER));
    private static final int RIGS = 40;

    private static int tried;

    static java.util.stream.LongStream seeds() {
        return java.util.stream.LongStream.range(1000, 1000 + RIGS);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyFixOfEveryFindingHolds(long seed) {
        Document rig = RandomRigs.of(seed);
        Assessment before = check(rig);
        Set<String> known = subjects(before);
        for (Assessment.Entry entry : before.findings()) {
            for (Assessment.Remedy fix : entry.fixes()) {
                if (fix.edits().isEmpty()) {
                    continue;
                }
                List<Edit> edits = fix.edits().stream()
                        .map(c -> new Edit(c.path(), c.to()))
                        .toList();
                Set<String> after = subjects(check(YamlReader.read(rig.file(), Edits.apply(rig, edits))));
                assertThat(after)
                        .as("seed %d, %s: %s", seed, entry.rule(), fix.effect())
                        .doesNotContain(entry.rule() + entry.units());
                long fresh = after.stream().filter(key -> !known.contains(key)).count();
                assertThat(fix.sideEffects())
                        .as("seed %d, side effects of: %s", seed, fix.effect())
                        .hasSize((int) fresh);
                tried++;
            }
        }
    }

    @AfterAll
    static void thereWereFixesToTry() {
        assertThat(tried).isGreaterThan(RIGS);
    }

    private static Assessment check(Document rig) {
        return CHECKER.check(rig, Terms.OF_THE_RIG, FailOn.LOSSY);
    }

    private static Set<String> subjects(Assessment assessment) {
        return assessment.findings().stream().map(f -> f.rule() + f.units()).collect(Collectors.toSet());
    }
}
