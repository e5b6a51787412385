package akin.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.book.CompiledBook;
import akin.engine.book.Examples;
import akin.engine.book.Pages;
import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.engine.book.Shelf;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Equipper;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.model.finding.Finding;
import akin.model.finding.Value;
import akin.model.rig.Match;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.kie.api.KieBase;

/**
 * Every limit that a rule heeds has an example just over it and one just under it on the rule's page, so that no limit can
 * move, and no comparison turn round, without an example that says so.
 *
 * <p>Nobody marks which examples those are; they are found by nudging. What a rule heeds shows when a tolerance is moved a
 * thousandfold and an example changes its findings. An example is at the edge when a tenth is enough.
 */
class EdgeExamplesTest {

    private static final double TENTH = 0.1;
    private static final double FAR = 1000;
    private static final int GROUPS = 3;
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])\\d+(?:\\.\\d+)?");
    private static final Set<Tolerance> COUNTS = EnumSet.of(Tolerance.ND_STACK);

    /** Rules that give numbers and yet have no edge to be near: what they compare is the same, or offered, or it is not. */
    private static final Set<String> SAME_OR_NOT = Set.of(
            "cadence/conform-from-delivery",
            "cadence/off-speed",
            "cadence/rate-differs",
            "cadence/rate-not-the-productions",
            "tone/display-look-recorded",
            "lut/size-not-accepted",
            "record/bit-depth",
            "sync/counting-differs",
            "footage/rate-differs",
            "footage/bit-depth",
            "footage/record-run");

    private final KieBase rules = RuleBase.builtIn();
    private final RuleBook book = CompiledBook.load();
    private final Binder binder = new Binder();
    private final Catalogue catalogue = Catalogue.builtIn(binder);
    private final Document pair = Shelf.matchedPair();

    /** An example of a rule's page, equipped. */
    private record Case(String rule, boolean fires, String text, Rig rig, Set<String> outcome) {}

    @TestFactory
    Stream<DynamicTest> everyLimitHasAnExampleOnEachSide() {
        String topic = System.getProperty("akin.topic", "");
        return book.pages().stream()
                .filter(page -> page.scope() != RulePage.Scope.RIG)
                .filter(page -> page.id().startsWith(topic))
                .map(page -> DynamicTest.dynamicTest(page.id(), () -> prove(page)));
    }

    /** The test itself would be worthless if moving tolerances changed nothing. */
    @Test
    void manyRulesHeedATolerance() {
        assertThat(book.pages().stream()
                        .filter(page -> !heeded(cases(page)).isEmpty())
                        .count())
                .isGreaterThan(20);
        assertThat(book.pages()).extracting(RulePage::id).containsAll(SAME_OR_NOT);
    }

    private void prove(RulePage page) {
        List<Case> cases = cases(page);
        Set<Tolerance> heeded = heeded(cases);
        List<String> open = new ArrayList<>();
        for (Tolerance tolerance : heeded) {
            if (cases.stream().noneMatch(one -> moves(one, tolerance, larger(tolerance)))) {
                open.add("no example gives something else with a larger " + tolerance.key());
            }
            if (cases.stream().noneMatch(one -> moves(one, tolerance, smaller(tolerance)))) {
                open.add("no example gives something else with a smaller " + tolerance.key());
            }
        }
        if (heeded.isEmpty()
                && !SAME_OR_NOT.contains(page.id())
                && cases.stream().anyMatch(this::measured)) {
            if (cases.stream().noneMatch(one -> one.fires() && nearby(one))) {
                open.add("no example under Fires falls quiet when one of its numbers is moved by a tenth");
            }
            if (cases.stream().noneMatch(one -> !one.fires() && nearby(one))) {
                open.add("no example under Stays quiet fires when one of its numbers is moved by a tenth");
            }
        }
        assertThat(open).as("%s, within a tenth of the limit", page.id()).isEmpty();
    }

    private List<Case> cases(RulePage page) {
        String text = Shelf.page(page.id()).orElseThrow();
        List<Case> cases = new ArrayList<>();
        for (Pages.Example example : Pages.examples(page.id(), text)) {
            Rig rig = rig(page.id(), example.text());
            cases.add(new Case(page.id(), example.fires(), example.text(), rig, outcome(page.id(), rig)));
        }
        return cases;
    }

    private Rig rig(String rule, String text) {
        Document changes = YamlReader.read(rule, text);
        return Equipper.equip(
                Examples.lay(changes, pair), binder, catalogue, Terms.OF_THE_RIG.with(Examples.clips(changes)));
    }

    /** What a rule finds, by severity and units. */
    private Set<String> outcome(String rule, Rig rig) {
        return findings(rule, rig)
                .map(finding -> finding.severity() + " " + finding.units())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Stream<Finding> findings(String rule, Rig rig) {
        return RuleSession.run(rules, book.ids(), rig).findings().stream()
                .filter(finding -> finding.rule().equals(rule));
    }

    /**
     * The tolerances that change what a rule finds in any of its examples. Moved in groups first, since most change nothing;
     * neighbours, which may undo each other, are in different groups.
     */
    private Set<Tolerance> heeded(List<Case> cases) {
        Set<Tolerance> heeded = EnumSet.noneOf(Tolerance.class);
        for (Case one : cases) {
            for (Set<Tolerance> together : groups()) {
                if (movesFar(one, together)) {
                    together.stream()
                            .filter(tolerance -> movesFar(one, EnumSet.of(tolerance)))
                            .forEach(heeded::add);
                }
            }
        }
        return heeded;
    }

    private static List<Set<Tolerance>> groups() {
        List<Set<Tolerance>> groups = new ArrayList<>();
        int next = 0;
        for (Tolerance tolerance : Tolerance.values()) {
            if (groups.size() < GROUPS) {
                groups.add(EnumSet.noneOf(Tolerance.class));
            }
            groups.get(next % GROUPS).add(tolerance);
            next++;
        }
        return groups;
    }

    private boolean movesFar(Case one, Set<Tolerance> tolerances) {
        return moves(one, tolerances, limit -> limit * FAR) || moves(one, tolerances, limit -> limit / FAR);
    }

    private boolean moves(Case one, Tolerance tolerance, DoubleUnaryOperator nudge) {
        return moves(one, EnumSet.of(tolerance), nudge);
    }

    private boolean moves(Case one, Set<Tolerance> tolerances, DoubleUnaryOperator nudge) {
        Match match = one.rig().match();
        Map<Tolerance, Double> limits = new EnumMap<>(match.tolerances().limits());
        tolerances.forEach(tolerance -> limits.put(
                tolerance, Math.min(nudge.applyAsDouble(match.tolerances().of(tolerance)), tolerance.most())));
        Rig rig = one.rig();
        Rig nudged = new Rig(
                rig.production(),
                new Match(match.hero(), new Tolerances(match.tolerances().profile(), limits), match.view()),
                rig.scenes(),
                rig.kit(),
                rig.mounts(),
                rig.units(),
                rig.waivers(),
                rig.footage(),
                rig.readings());
        return !outcome(one.rule(), nudged).equals(one.outcome());
    }

    private static DoubleUnaryOperator larger(Tolerance tolerance) {
        return limit -> COUNTS.contains(tolerance) ? limit + 1 : limit * (1 + TENTH);
    }

    private static DoubleUnaryOperator smaller(Tolerance tolerance) {
        return limit -> COUNTS.contains(tolerance) ? limit - 1 : limit * (1 - TENTH);
    }

    /** True when the rule gives numbers: without a tolerance, its limit is then one of gear or of a standard. */
    private boolean measured(Case one) {
        return findings(one.rule(), one.rig())
                .anyMatch(finding -> finding.values().stream().anyMatch(Value.Quantity.class::isInstance));
    }

    /** True when one of the example's own numbers, moved by a tenth, turns firing into quiet or quiet into firing. */
    private boolean nearby(Case one) {
        for (String text : moved(one.text())) {
            Optional<Set<String>> outcome = tryOutcome(one.rule(), text);
            if (outcome.isPresent() && outcome.get().isEmpty() != one.outcome().isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private Optional<Set<String>> tryOutcome(String rule, String text) {
        try {
            return Optional.of(outcome(rule, rig(rule, text)));
        } catch (BadInput e) {
            // Not every number may be another: that of a rate or of a format version.
            return Optional.empty();
        }
    }

    private static List<String> moved(String text) {
        List<String> moved = new ArrayList<>();
        Matcher numbers = NUMBER.matcher(text.replaceAll("#[^\n]*", ""));
        String bare = text.replaceAll("#[^\n]*", "");
        while (numbers.find()) {
            BigDecimal number = new BigDecimal(numbers.group());
            for (double factor : new double[] {1 - TENTH, 1 + TENTH}) {
                double value = number.doubleValue() * factor;
                for (String other :
                        List.of(String.valueOf(Math.round(value)), String.format(Locale.ROOT, "%.4f", value))) {
                    moved.add(bare.substring(0, numbers.start()) + other + bare.substring(numbers.end()));
                }
            }
        }
        return moved;
    }
}
