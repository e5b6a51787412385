package akin.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.book.CompiledBook;
import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.engine.edit.Edits;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.model.finding.Edit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Which of two units is the hero makes no difference to whether they match. */
class MirrorTest {

    private static final RuleBook BOOK = CompiledBook.load();
    private static final Binder BINDER = new Binder();
    private static final Checker CHECKER = new Checker(RuleBase.builtIn(), BOOK, BINDER, Catalogue.builtIn(BINDER));
    private static final int RIGS = 150;

    /** Rules about a pairing whose answer depends on which unit follows the other, and why. */
    private static final Map<String, String> ONE_SIDED = Map.of(
            "exposure/mismatch", "more light than the hero's may clip, less never does",
            "focus/stop-not-reachable", "asks how far the lens of the unit that follows opens and closes",
            "view/focal-not-in-kit", "asks what the lens of the unit that follows can frame");

    @Test
    void aPairingIsJudgedAlikeFromBothSides() {
        Set<String> mirrored = new TreeSet<>();
        Set<String> oneSided = new TreeSet<>();
        for (long seed = 0; seed < RIGS; seed++) {
            Document rig = RandomRigs.of(seed);
            Map<String, String> one = judged(rig);
            Map<String, String> other = judged(withHero(rig, "B"));
            Set<String> rules = new TreeSet<>(one.keySet());
            rules.addAll(other.keySet());
            for (String rule : rules) {
                if (!ONE_SIDED.containsKey(rule)) {
                    assertThat(other.get(rule))
                            .as("%s on the rig of seed %d with the other hero", rule, seed)
                            .isEqualTo(one.get(rule));
                    mirrored.add(rule);
                } else if (!Objects.equals(one.get(rule), other.get(rule))) {
                    oneSided.add(rule);
                }
            }
        }
        assertThat(mirrored).as("rules that had something to mirror").hasSizeGreaterThan(9);
        assertThat(oneSided).as("an exception that is not needed").isEqualTo(ONE_SIDED.keySet());
    }

    /** What each rule about pairings finds; of those found, the severity and how far it is off. */
    private static Map<String, String> judged(Document rig) {
        return CHECKER.check(rig, Terms.OF_THE_RIG, FailOn.LOSSY).findings().stream()
                .filter(f -> BOOK.page(f.rule()).scope() == RulePage.Scope.PAIRING)
                .collect(Collectors.toMap(
                        Assessment.Entry::rule,
                        f -> String.format(
                                Locale.ROOT, "%s %s %.9g", f.severity(), new TreeSet<>(f.units()), f.magnitude()),
                        (a, b) -> a + ", " + b));
    }

    private static Document withHero(Document rig, String hero) {
        return YamlReader.read(rig.file(), Edits.apply(rig, List.of(new Edit("match.hero", hero))));
    }
}
