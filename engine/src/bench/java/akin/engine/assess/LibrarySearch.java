package akin.engine.assess;

import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.constructionheuristic.ConstructionHeuristicPhaseConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveListFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchType;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import akin.engine.book.CompiledBook;
import akin.engine.book.RuleBook;
import akin.engine.edit.Edits;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.model.derived.Room;
import akin.model.derived.StartingPlan;
import akin.model.finding.Finding;
import akin.model.gear.Profile;
import akin.model.rig.FittedLens;
import akin.model.rig.Knob;
import akin.model.rig.Rig;
import akin.model.rig.Settings;
import akin.model.rig.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * A general solver library beside our search: how many plans each has the rules judge until it holds an answer as good as
 * ours. The library is given what our search has: the same starts, the same turns of one knob and of two, and the score from
 * the rules; it goes about them in its own ways.
 */
public final class LibrarySearch {

    /** Severities have two levels each in a score: how many, and how far. */
    static final int LEVELS = 8;

    private static final int SEEDS = 5;

    /** Scores that the library may ask for before it is stopped; it asks for some plans again, which costs nothing here. */
    private static final long MOST_ASKED = 20_000;

    private static final long MOST_SECONDS = 60;

    private static final int COMPARED = 2_000;

    private static final List<LocalSearchType> WAYS =
            List.of(LocalSearchType.HILL_CLIMBING, LocalSearchType.LATE_ACCEPTANCE, LocalSearchType.TABU_SEARCH);

    private LibrarySearch() {}

    /**
     * Prints a table for each rig file.
     *
     * @param args paths of rig files
     * @throws IOException when a rig file cannot be read
     * @throws IllegalStateException when the library's score would rank two plans otherwise than ours
     */
    public static void main(String[] args) throws IOException {
        Binder binder = new Binder();
        Catalogue catalogue = Catalogue.builtIn(binder);
        RuleBook book = CompiledBook.load();
        Checker checker = new Checker(RuleBase.builtIn(), book, binder, catalogue);
        // Cold, as a command would start it: the classes of the library are loaded here for the first time.
        long before = System.nanoTime();
        SolverFactory.create(config(LocalSearchType.HILL_CLIMBING, 0, null)).buildSolver();
        say("the library is ready after %.0f ms (first use in a Java that runs)", (System.nanoTime() - before) / 1e6);
        for (String file : args) {
            Document document = YamlReader.read(file, Files.readString(Path.of(file)));
            compare(file, document, checker, catalogue);
        }
    }

    private static void compare(String file, Document document, Checker checker, Catalogue catalogue) {
        Rig rig = checker.equip(document, Terms.OF_THE_RIG);
        Question question = Question.of(checker, catalogue, rig);
        Solution ours = ours(document, checker, catalogue, Integer.MAX_VALUE);
        BendableLongScore target = question.score(answer(document, checker, ours));
        // How few of its plans it needs to hold that answer; it goes on to show that no turn is better, and to find
        // others.
        int few = 0;
        int enough = ours.tried();
        while (enough - few > 1) {
            int half = (few + enough) / 2;
            Settings held = answer(document, checker, ours(document, checker, catalogue, half));
            if (question.score(held).compareTo(target) >= 0) {
                enough = half;
            } else {
                few = half;
            }
        }
        say("");
        say(
                "%s, unit %s: of %d plans ours has its answer after %d, and its end after %d",
                Path.of(file).getFileName(), ours.unit(), ours.room(), enough, ours.tried());
        question.agrees(new Random(1));
        say("  %-16s %6s %22s %12s %8s", "way", "as good", "plans judged, median", "fewest", "seconds");
        for (LocalSearchType way : WAYS) {
            List<Integer> judged = new ArrayList<>();
            List<Double> took = new ArrayList<>();
            int found = 0;
            for (int seed = 0; seed < SEEDS; seed++) {
                question.forget();
                Question.put(question);
                long start = System.nanoTime();
                PlannedShoot best = SolverFactory.<PlannedShoot>create(config(way, seed, target))
                        .buildSolver()
                        .solve(new PlannedShoot(new PlannedUnit(), new AnyPlan(question.starts())));
                took.add((System.nanoTime() - start) / 1e9);
                judged.add(question.judged());
                if (Objects.requireNonNull(best.score()).compareTo(target) >= 0) {
                    found++;
                }
            }
            judged.sort(Comparator.naturalOrder());
            took.sort(Comparator.naturalOrder());
            say(
                    "  %-16s %3d of %d %22d %12d %8.1f",
                    way.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    found,
                    SEEDS,
                    judged.get(SEEDS / 2),
                    judged.get(0),
                    took.get(SEEDS / 2));
        }
    }

    /** Our search of the first unit that is not the hero, stopped after so many plans. */
    private static Solution ours(Document document, Checker checker, Catalogue catalogue, int plans) {
        AtomicInteger judged = new AtomicInteger();
        return new Solver(
                        checker,
                        Terms.OF_THE_RIG,
                        one -> catalogue,
                        FailOn.LOSSY,
                        progress -> judged.incrementAndGet(),
                        () -> judged.get() >= plans)
                .solve(document, Map.of(), false)
                .get(0);
    }

    private static Settings answer(Document document, Checker checker, Solution solution) {
        Document answered = YamlReader.read(
                document.file(),
                Edits.apply(document, Solver.edits(solution.answers().get(0))));
        return checker.equip(answered, Terms.OF_THE_RIG).units().stream()
                .filter(unit -> unit.name().equals(solution.unit()))
                .map(Settings::of)
                .findFirst()
                .orElseThrow();
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }

    private static SolverConfig config(LocalSearchType way, long seed, BendableLongScore target) {
        TerminationConfig end = new TerminationConfig()
                .withScoreCalculationCountLimit(MOST_ASKED)
                .withSecondsSpentLimit(MOST_SECONDS);
        if (target != null) {
            end.withBestScoreLimit(target.toString());
        }
        return new SolverConfig()
                .withSolutionClass(PlannedShoot.class)
                .withEntityClasses(PlannedUnit.class)
                .withRandomSeed(seed)
                .withScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(RuleScore.class))
                .withPhases(
                        new ConstructionHeuristicPhaseConfig(),
                        new LocalSearchPhaseConfig()
                                .withLocalSearchType(way)
                                .withMoveSelectorConfig(
                                        new MoveListFactoryConfig().withMoveListFactoryClass(Turns.class)))
                .withTerminationConfig(end);
    }

    /** What is looked for: the settings of one unit of a rig, by the score that the rules give. */
    static final class Question {
        /** The library makes its own scorer and moves, without arguments. */
        private static Question current;

        private final Checker checker;
        private final Rig rig;
        private final Unit unit;
        private final Room room;
        private final Map<Settings, Score> known = new HashMap<>();

        private Question(Checker checker, Rig rig, Unit unit, Room room) {
            this.checker = checker;
            this.rig = rig;
            this.unit = unit;
            this.room = room;
        }

        static Question of(Checker checker, Catalogue catalogue, Rig rig) {
            Unit unit =
                    rig.units().stream().filter(one -> !one.hero()).findFirst().orElseThrow();
            StartingPlan matched = new StartingPlan(
                    rig,
                    null,
                    unit.name(),
                    id -> catalogue.encoding(id).orElseThrow(),
                    id -> catalogue.gamuts().get(id));
            return new Question(
                    checker,
                    rig,
                    unit,
                    new Room(rig, unit, unit.keeps(), matched, profile -> profiled(catalogue, unit, profile)));
        }

        private static Settings profiled(Catalogue catalogue, Unit unit, Profile profile) {
            Settings plan = Settings.of(unit);
            String encoding = unit.recording().encodingWith(profile);
            String gamut = unit.recording().gamutWith(profile);
            return new Settings(
                    plan.mode(),
                    profile,
                    encoding == null ? null : catalogue.encoding(encoding).orElseThrow(),
                    gamut == null ? null : catalogue.gamuts().get(gamut),
                    plan.codec(),
                    plan.lens(),
                    plan.shutter(),
                    plan.iso(),
                    plan.filters(),
                    plan.white(),
                    plan.automatic());
        }

        static void put(Question question) {
            current = question;
        }

        static Question current() {
            return current;
        }

        List<Settings> starts() {
            return Stream.concat(room.starts().stream(), Stream.of(room.plan()))
                    .distinct()
                    .toList();
        }

        List<Settings> turns(Settings from) {
            return Stream.concat(
                            Arrays.stream(Knob.values())
                                    .filter(knob -> knob != Knob.LENS)
                                    .flatMap(knob -> room.turns(from, knob).stream()),
                            room.balanced(from).stream())
                    .filter(one -> !one.equals(from))
                    .distinct()
                    .toList();
        }

        void forget() {
            known.clear();
        }

        int judged() {
            return known.size();
        }

        /** The score of the rules as the library counts: more is better, level by level, and changes last. */
        BendableLongScore score(Settings settings) {
            Score score = known.computeIfAbsent(settings, this::judge);
            return BendableLongScore.of(
                    Stream.iterate(0, i -> i + 1)
                            .limit(score.counts().size())
                            .flatMapToLong(i -> LongStream.of(
                                    -score.counts().get(i), -score.magnitudes().get(i)))
                            .toArray(),
                    new long[] {-changes(settings)});
        }

        private Score judge(Settings settings) {
            List<Unit> units = rig.units().stream()
                    .map(one -> one.name().equals(unit.name()) ? settings.on(unit) : one)
                    .toList();
            Rig tried =
                    new Rig(rig.production(), rig.match(), rig.scenes(), rig.kit(), rig.mounts(), units, rig.waivers());
            Outcome outcome = checker.outcome(tried);
            List<Finding> open = outcome.findings().stream()
                    .filter(finding -> rig.waivers().stream().noneMatch(waiver -> waiver.covers(finding)))
                    .toList();
            return Score.of(
                    checker.book(),
                    open,
                    Coverage.of(checker.book(), tried, outcome).unchecked());
        }

        private long changes(Settings settings) {
            List<Object> mine = values(settings);
            List<Object> planned = values(room.plan());
            return Stream.iterate(0, i -> i + 1)
                    .limit(mine.size())
                    .filter(i -> !mine.get(i).equals(planned.get(i)))
                    .count();
        }

        private static List<Object> values(Settings settings) {
            FittedLens fitted = settings.lens();
            return Stream.of(
                            settings.mode().id(),
                            settings.profile() == null
                                    ? null
                                    : settings.profile().id(),
                            settings.codec() == null ? null : settings.codec().id(),
                            fitted == null ? null : fitted.lens().id(),
                            fitted == null || fitted.lens().prime() ? null : fitted.focal(),
                            fitted == null ? null : fitted.stop(),
                            settings.shutter(),
                            settings.iso(),
                            settings.filters(),
                            settings.white())
                    .map(value -> Objects.requireNonNullElse(value, ""))
                    .collect(Collectors.toList());
        }

        /** Makes sure that the library's score ranks as ours does, on pairs of plans found at random. */
        void agrees(Random random) {
            List<Settings> some = new ArrayList<>(starts());
            while (some.size() < 300) {
                List<Settings> turns = turns(some.get(random.nextInt(some.size())));
                some.add(turns.get(random.nextInt(turns.size())));
            }
            int different = 0;
            for (int i = 0; i < COMPARED; i++) {
                Settings one = some.get(random.nextInt(some.size()));
                Settings other = some.get(random.nextInt(some.size()));
                int theirs = Integer.signum(score(other).compareTo(score(one)));
                int order = known.get(one).compareTo(known.get(other));
                int mine = Integer.signum(order != 0 ? order : Long.compare(changes(one), changes(other)));
                if (theirs != mine) {
                    throw new IllegalStateException("ranked otherwise: " + one + " and " + other);
                }
                different += mine == 0 ? 0 : 1;
            }
            say("  %d of %d random pairs rank differently, all alike in both scores", different, COMPARED);
        }
    }
}
