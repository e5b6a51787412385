package akin.engine.assess;

import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.engine.equip.Candidates;
import akin.engine.equip.Catalogue;
import akin.engine.read.BadInput;
import akin.engine.read.Say;
import akin.model.colour.Gamut;
import akin.model.derived.StartingPlan;
import akin.model.finding.Finding;
import akin.model.finding.Severity;
import akin.model.gear.Adapter;
import akin.model.quantity.Length;
import akin.model.rig.Kit;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import akin.model.rig.Waiver;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSessionsPool;

/**
 * Judges every candidate of a kit list beside the hero, each alone with it in a rule session of its own, and ranks them.
 *
 * <p>What is found of a candidate is what a check finds in a rig whose units are the hero and this candidate; only fixes are
 * not worked out. A finding that a waiver covers does not count. Neither does one about the hero alone: no choice of another
 * unit mends it.
 *
 * <p>The order: fewest {@code baked-in} first, then the least of them, all their tolerances together; then the same of
 * {@code lossy}, {@code fixable} and {@code advice}. A check that could not run since a fact of the candidate is not known
 * counts among the most urgent that its rule can find: what is unknown is never taken for good. Where all that is equal, the
 * order of ids.
 */
public final class Survey {

    private static final String NAME = "candidate";
    private static final List<Severity> SEVERITIES = List.of(Severity.values());

    private final RuleBook book;
    private final Rig rig;
    private final Unit hero;
    private final String name;
    private final Candidates candidates;
    private final StartingPlan plan;
    private final List<Scene> scenes;
    private final List<Waiver> waivers;
    private final KieSessionsPool sessions;

    /** By rule: the most urgent that it can find. */
    private final Map<String, Severity> worst;

    /**
     * A survey.
     *
     * @param rules the rules
     * @param book their pages
     * @param catalogue where encodings and gamuts of the candidates are looked up
     * @param rig gives production, match, scenes, kit, waivers and the hero
     * @param replaced the unit in whose place the candidates stand, with its settings; null: they start from the hero's
     * @param candidates the kit list
     */
    public Survey(
            KieBase rules,
            RuleBook book,
            Catalogue catalogue,
            Rig rig,
            @Nullable Unit replaced,
            Candidates candidates) {
        this.book = book;
        this.rig = rig;
        this.hero = rig.units().stream().filter(Unit::hero).findFirst().orElseThrow();
        this.name = replaced != null ? replaced.name() : hero.name().equals(NAME) ? NAME + "-2" : NAME;
        this.candidates = candidates;
        this.scenes = rig.scenes().stream()
                .filter(scene -> scene.shotBy(hero.name()) || (replaced != null && scene.shotBy(name)))
                .map(scene -> replaced == null ? besideHero(scene) : inPlace(scene))
                .toList();
        Set<String> names = Set.of(hero.name(), name);
        this.waivers = rig.waivers().stream()
                .filter(waiver -> names.containsAll(waiver.units()))
                .toList();
        Map<String, Encoding> encodings = new ConcurrentHashMap<>();
        Map<String, Gamut> gamuts = catalogue.gamuts();
        this.plan = new StartingPlan(
                withAdapters(rig, candidates.adapters()),
                replaced,
                name,
                id -> encodings.computeIfAbsent(
                        id,
                        word -> catalogue
                                .encoding(word)
                                .orElseThrow(() -> unknown("encoding", word, catalogue.ids("encodings")))),
                id -> {
                    Gamut gamut = gamuts.get(id);
                    if (gamut == null) {
                        throw unknown("gamut", id, new TreeSet<>(gamuts.keySet()));
                    }
                    return gamut;
                });
        this.sessions = rules.newKieSessionsPool(Runtime.getRuntime().availableProcessors());
        this.worst = new HashMap<>();
        for (RulePage page : book.pages()) {
            page.severities().stream().sorted().findFirst().ifPresent(severity -> worst.put(page.id(), severity));
        }
    }

    private static BadInput unknown(String what, String word, Collection<String> words) {
        return new BadInput(
                "candidates",
                "no " + what + " is called " + Say.quote(word) + "." + Say.nearest(word, words) + " Allowed: "
                        + Say.list(words));
    }

    /** Candidates use the adapters that come with them like those on the van. */
    private static Rig withAdapters(Rig rig, List<Adapter> more) {
        Kit kit = rig.kit();
        List<Adapter> adapters = new ArrayList<>(kit.adapters() == null ? List.of() : kit.adapters());
        adapters.addAll(more);
        return new Rig(
                rig.production(),
                rig.match(),
                rig.scenes(),
                new Kit(kit.filters(), kit.lenses(), adapters),
                rig.mounts(),
                rig.units(),
                rig.waivers());
    }

    /** A scene that the hero shoots, with the candidate at the same place. */
    private Scene besideHero(Scene scene) {
        Length own = scene.distances().get(hero.name());
        return with(scene, own == null ? Map.of() : Map.of(hero.name(), own, name, own), List.of());
    }

    /** A scene without the units that are left aside. */
    private Scene inPlace(Scene scene) {
        Map<String, Length> distances = new HashMap<>(scene.distances());
        distances.keySet().retainAll(Set.of(hero.name(), name));
        return with(
                scene,
                Map.copyOf(distances),
                scene.units().stream()
                        .filter(unit -> unit.equals(hero.name()) || unit.equals(name))
                        .toList());
    }

    private static Scene with(Scene scene, Map<String, Length> distances, List<String> units) {
        return new Scene(
                scene.index(),
                scene.name(),
                scene.subjectDistance(),
                distances,
                scene.lights(),
                scene.pan(),
                scene.mains(),
                scene.screens(),
                scene.dimming(),
                scene.flashes(),
                scene.takes(),
                units);
    }

    /** The name that a candidate goes by. */
    public String candidate() {
        return name;
    }

    /**
     * What a candidate has of one severity.
     *
     * @param found how many findings
     * @param magnitude how far they are, all tolerances together
     * @param unchecked how many checks could not run of which this is the most urgent that they can find
     */
    private record Weight(int found, double magnitude, int unchecked) {
        static final Comparator<Weight> LIGHTEST = Comparator.comparingInt(
                        (Weight weight) -> weight.found + weight.unchecked)
                .thenComparingInt(Weight::found)
                .thenComparingDouble(Weight::magnitude);
    }

    /**
     * A candidate's place, as far as it takes to rank it.
     *
     * @param number its number in the kit list
     * @param weights what it has of each severity, the most urgent first
     */
    private record Standing(int number, List<Weight> weights) {

        private static int compare(Standing a, Standing b) {
            for (int i = 0; i < SEVERITIES.size(); i++) {
                int order = Weight.LIGHTEST.compare(a.weights.get(i), b.weights.get(i));
                if (order != 0) {
                    return order;
                }
            }
            return Integer.compare(a.number, b.number);
        }

        private boolean sound() {
            return weights.get(0).found() == 0;
        }
    }

    /**
     * Judges and ranks all candidates, on all cores.
     *
     * @param top how many to tell about, the best first
     * @param progress told from time to time how many are done, by any thread
     */
    public Ranking rank(int top, IntConsumer progress) {
        AtomicInteger done = new AtomicInteger();
        Standing[] all = IntStream.range(0, Math.toIntExact(candidates.size()))
                .parallel()
                .mapToObj(number -> {
                    Standing standing = standing(number, judge(plan.unit(candidates.get(number))));
                    progress.accept(done.incrementAndGet());
                    return standing;
                })
                .toArray(Standing[]::new);
        Arrays.parallelSort(all, Standing::compare);
        List<Ranking.Place> places = IntStream.range(0, Math.min(top, all.length))
                .parallel()
                .mapToObj(i -> place(i + 1, all[i]))
                .toList();
        long sound = Arrays.stream(all).filter(Standing::sound).count();
        return new Ranking(all.length, Math.toIntExact(sound), places);
    }

    /** What the rules say of the hero and one other unit. */
    private Judged judge(Unit unit) {
        Rig pair =
                new Rig(rig.production(), rig.match(), scenes, rig.kit(), rig.mounts(), List.of(hero, unit), waivers);
        Outcome outcome = RuleSession.run(sessions::newKieSession, book.ids(), pair);
        List<Finding> findings = outcome.findings().stream()
                .filter(finding -> finding.units().contains(name))
                .filter(finding -> waivers.stream().noneMatch(waiver -> waiver.covers(finding)))
                .toList();
        List<Unchecked> gaps = Coverage.of(book, pair, outcome).unchecked().stream()
                .filter(gap -> gap.unit().equals(name))
                .toList();
        return new Judged(findings, gaps);
    }

    private record Judged(List<Finding> findings, List<Unchecked> gaps) {}

    private Standing standing(int number, Judged judged) {
        List<Weight> weights = new ArrayList<>(SEVERITIES.size());
        for (Severity severity : SEVERITIES) {
            // Added up in one order, since sums of rounded numbers hang on it.
            double[] magnitudes = judged.findings().stream()
                    .filter(finding -> finding.severity() == severity)
                    .mapToDouble(Finding::magnitude)
                    .sorted()
                    .toArray();
            long unchecked = judged.gaps().stream()
                    .map(Unchecked::rule)
                    .distinct()
                    .filter(rule -> worst.getOrDefault(rule, Severity.ADVICE) == severity)
                    .count();
            weights.add(new Weight(magnitudes.length, Arrays.stream(magnitudes).sum(), Math.toIntExact(unchecked)));
        }
        return new Standing(number, List.copyOf(weights));
    }

    private Ranking.Place place(int rank, Standing standing) {
        Unit unit = plan.unit(candidates.get(standing.number()));
        Judged judged = judge(unit);
        return new Ranking.Place(
                rank,
                unit,
                judged.findings().stream()
                        .sorted(Checker.URGENCY)
                        .map(finding -> new Ranking.Reason(
                                finding.rule(),
                                finding.severity(),
                                finding.magnitude(),
                                Wording.of(book.page(finding.rule()).title(), finding),
                                Wording.of(book.page(finding.rule()).because(), finding)))
                        .toList(),
                judged.gaps(),
                standing.weights().stream().mapToInt(Weight::unchecked).sum());
    }
}
