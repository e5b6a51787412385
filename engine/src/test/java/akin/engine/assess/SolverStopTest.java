package akin.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.book.CompiledBook;
import akin.engine.book.RuleBook;
import akin.engine.edit.Edits;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.model.rig.Knob;
import akin.model.rig.Rig;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A search that is broken off after so many plans. */
class SolverStopTest {

    private static final Binder BINDER = new Binder();
    private static final RuleBook BOOK = CompiledBook.load();
    private static final Catalogue CATALOGUE = Catalogue.builtIn(BINDER);
    private static final Checker CHECKER = new Checker(RuleBase.builtIn(), BOOK, BINDER, CATALOGUE);

    private static Document kit() throws IOException {
        return YamlReader.read("usual-kit.yaml", Files.readString(Path.of("bench/usual-kit.yaml")));
    }

    private static Solution solve(Document document, Map<String, Set<Knob>> keeps, int most) {
        AtomicInteger judged = new AtomicInteger();
        List<Solution> solutions = new Solver(
                        CHECKER,
                        Terms.OF_THE_RIG,
                        file -> CATALOGUE,
                        FailOn.LOSSY,
                        progress -> judged.incrementAndGet(),
                        () -> judged.get() >= most)
                .solve(document, keeps, false);
        assertThat(solutions).hasSize(1);
        return solutions.get(0);
    }

    private static Score score(Document document) {
        Rig rig = CHECKER.equip(document, Terms.OF_THE_RIG);
        Outcome outcome = CHECKER.outcome(rig);
        return Score.of(
                BOOK,
                List.copyOf(outcome.findings()),
                Coverage.of(BOOK, rig, outcome).unchecked());
    }

    private static Score answered(Document document, Solution solution) {
        return score(YamlReader.read(
                document.file(),
                Edits.apply(document, Solver.edits(solution.answers().get(0)))));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 10, 60, 100, 150, 300})
    void theBestSoFarIsNoWorseThanThePlan(int most) throws IOException {
        Document document = kit();
        Solution solution = solve(document, Map.of(), most);
        assertThat(solution.stopped()).isTrue();
        assertThat(answered(document, solution)).isLessThanOrEqualTo(score(document));
    }

    @Test
    void whatWasFoundBeforeIsKept() throws IOException {
        Document document = kit();
        assertThat(answered(document, solve(document, Map.of(), 150))).isLessThan(score(document));
    }

    @Test
    void aWholeSearchIsNotCalledStopped() throws IOException {
        Document document = kit();
        Solution solution = solve(document, Map.of(), Integer.MAX_VALUE);
        assertThat(solution.stopped()).isFalse();
        assertThat(solution.tried()).isLessThan((int) Math.min(solution.room(), 10_000));
        assertThat(answered(document, solution).flawless()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 5, 100, 250})
    void whatWasNotSearchedIsNotSaidToBeImpossible(int most) throws IOException {
        Map<String, Set<Knob>> keeps = Map.of("B", Set.of(Knob.SHUTTER));
        assertThat(solve(kit(), keeps, Integer.MAX_VALUE).conflict()).containsExactly("shutter");
        Solution solution = solve(kit(), keeps, most);
        assertThat(solution.stopped()).isTrue();
        assertThat(solution.conflict()).isEmpty();
        assertThat(solution.relaxations()).isEmpty();
    }
}
