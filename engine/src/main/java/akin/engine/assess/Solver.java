package akin.engine.assess;

import static java.util.Objects.requireNonNull;

import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.read.Say;
import akin.model.colour.Gamut;
import akin.model.derived.CollectedLight;
import akin.model.derived.Room;
import akin.model.derived.StartingPlan;
import akin.model.finding.Edit;
import akin.model.finding.Finding;
import akin.model.gear.Profile;
import akin.model.rig.FittedLens;
import akin.model.rig.Knob;
import akin.model.rig.Rig;
import akin.model.rig.Settings;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Finds settings that match: for each unit beside the hero the best that its gear and the van allow, with what the crew keeps as
 * it is planned.
 *
 * <p>What is best the rules say, all of them, of every plan that is tried; there is no second opinion here. First come the
 * plans that take the hero's picture over into each mode, profile and lens. From the best of them, and from the plan as it is,
 * one knob after the other is turned to the best of its settings, then two at a time so that the light stays; until no such turn
 * is better any more. Of plans that are equally good the one with the fewest changes stays.
 */
public final class Solver {

    /** How many different starts are followed to their end; each that ends elsewhere is another answer. */
    private static final int FOLLOWED = 3;

    private static final int MOST_ANSWERS = 3;

    /** Knobs that a change of is tried alone; the lens as a whole is not one. */
    private static final List<Knob> KNOBS =
            Stream.of(Knob.values()).filter(knob -> knob != Knob.LENS).toList();

    private final Checker checker;
    private final Terms terms;
    private final Function<String, Catalogue> catalogues;
    private final FailOn failOn;
    private final Consumer<Progress> progress;
    private final BooleanSupplier stop;

    /**
     * How far a search is.
     *
     * @param unit the unit that settings are looked for
     * @param judged how many of its plans were judged so far
     */
    public record Progress(String unit, int judged) {}

    /**
     * A solver.
     *
     * @param failOn what an answer must not have
     * @param progress told of every plan that was judged, by any thread
     * @param stop asked often; once true, the best so far is given
     */
    public Solver(
            Checker checker,
            Terms terms,
            Function<String, Catalogue> catalogues,
            FailOn failOn,
            Consumer<Progress> progress,
            BooleanSupplier stop) {
        this.checker = checker;
        this.terms = terms;
        this.catalogues = catalogues;
        this.failOn = failOn;
        this.progress = progress;
        this.stop = stop;
    }

    /**
     * Solves a rig document, unit after unit by name; each is judged beside what was found for those before.
     *
     * @param keeps what stays as it is planned beside what the file says, by unit
     * @throws BadInput at the first thing in the document that is wrong, or when a kept unit is none
     */
    public List<Solution> solve(Document document, Map<String, Set<Knob>> keeps, boolean moveHero) {
        Rig rig = checker.equip(document, terms);
        List<String> names = rig.units().stream().map(Unit::name).toList();
        for (String unit : keeps.keySet()) {
            if (!names.contains(unit)) {
                throw new BadInput(
                        "--keep",
                        "no unit is called " + Say.quote(unit) + "." + Say.nearest(unit, names) + " Allowed: "
                                + Say.list(names));
            }
        }
        Catalogue catalogue = catalogues.apply(document.file());
        Ways ways = new Ways(document, catalogue, rig, keeps);
        Way plain = ways.others(rig, List.of());
        return moveHero ? ways.withHero(plain) : plain.told();
    }

    /** A search with where it ended. */
    private record Step(Search search, Found found) {
        Solution told() {
            return search.told(found);
        }

        int changes() {
            return found.best().changes();
        }
    }

    /** Units solved one after the other, the last one beside all others as they were found. */
    private record Way(List<Step> steps) implements Comparable<Way> {
        Step last() {
            return steps.get(steps.size() - 1);
        }

        /** The rig with what was found for every unit. */
        Rig rig() {
            return with(last().search().rig, last().found().best().settings().on(last().search().unit));
        }

        List<Solution> told() {
            return steps.stream().map(Step::told).toList();
        }

        @Override
        public int compareTo(Way other) {
            int order = last().found()
                    .best()
                    .score()
                    .compareTo(other.last().found().best().score());
            return order != 0
                    ? order
                    : Integer.compare(
                            steps.stream().mapToInt(Step::changes).sum(),
                            other.steps.stream().mapToInt(Step::changes).sum());
        }
    }

    /** The ways to solve a rig, with the hero as it is planned and without. */
    private final class Ways {
        private final Document document;
        private final Catalogue catalogue;
        private final Rig rig;
        private final Map<String, Set<Knob>> keeps;

        Ways(Document document, Catalogue catalogue, Rig rig, Map<String, Set<Knob>> keeps) {
            this.document = document;
            this.catalogue = catalogue;
            this.rig = rig;
            this.keeps = keeps;
        }

        /** All units but the hero, by name, each beside what was found for those before. */
        Way others(Rig start, List<Step> before) {
            List<Step> steps = new ArrayList<>(before);
            Rig now = start;
            for (Unit unit : rig.units()) {
                if (!unit.hero()) {
                    Search search = search(now, unit, finding -> true);
                    Found found = search.all();
                    steps.add(new Step(search, found));
                    now = with(now, found.best().settings().on(unit));
                }
            }
            return new Way(steps);
        }

        /**
         * The best of three: the hero as it is planned; the hero moved for what is then left; the hero first rid of what is wrong
         * with it alone. It is never moved towards the others as they are planned: they are to come to it.
         */
        List<Solution> withHero(Way plain) {
            Unit hero = rig.units().get(0);
            Way best = plain;
            for (Way way : List.of(
                    moved(hero, plain.rig(), finding -> true),
                    moved(hero, rig, finding -> finding.units().equals(List.of(hero.name()))))) {
                best = way.compareTo(best) < 0 ? way : best;
            }
            // What is said of the hero is said beside the others as they were found.
            Search search = search(best.rig(), hero, finding -> true);
            Judged stands = search.judge(Settings.of(
                    best.rig().units().stream().filter(Unit::hero).findFirst().orElseThrow()));
            List<Solution> told = new ArrayList<>();
            told.add(search.told(new Found(List.of(stands))));
            best.steps().stream()
                    .filter(step -> !step.search().unit.hero())
                    .map(Step::told)
                    .forEach(told::add);
            return told;
        }

        private Way moved(Unit hero, Rig beside, Predicate<Finding> heard) {
            Search search = search(beside, hero, heard);
            Step step = new Step(search, search.all());
            return others(with(rig, step.found().best().settings().on(hero)), List.of(step));
        }

        private Search search(Rig now, Unit unit, Predicate<Finding> heard) {
            Set<Knob> kept = EnumSet.noneOf(Knob.class);
            kept.addAll(unit.keeps());
            kept.addAll(keeps.getOrDefault(unit.name(), Set.of()));
            return new Search(document, catalogue, now, unit, kept, heard, new ConcurrentHashMap<>());
        }
    }

    private static Rig with(Rig rig, Unit unit) {
        List<Unit> units = new ArrayList<>();
        rig.units().forEach(one -> units.add(one.name().equals(unit.name()) ? unit : one));
        return new Rig(rig.production(), rig.match(), rig.scenes(), rig.kit(), rig.mounts(), units, rig.waivers());
    }

    /**
     * A plan with what the rules say of it.
     *
     * @param changes how many settings are not as planned
     */
    private record Judged(Settings settings, Score score, int changes, List<Finding> findings, List<Unchecked> gaps)
            implements Comparable<Judged> {
        @Override
        public int compareTo(Judged other) {
            int order = score.compareTo(other.score);
            return order != 0 ? order : Integer.compare(changes, other.changes);
        }
    }

    /** Where a search ended: different places that no single turn makes better, the best first. */
    private record Found(List<Judged> ends) {
        Judged best() {
            return ends.get(0);
        }
    }

    /** The search for one unit. */
    private final class Search {
        private final Document document;
        private final Catalogue catalogue;
        private final Rig rig;
        private final Unit unit;
        private final Set<Knob> keeps;
        /** Findings that count. */
        private final Predicate<Finding> heard;

        private final Room room;
        /** What this search has judged, by the value of each knob: whole settings would be slow keys. */
        private final Map<List<Object>, Judged> judged = new ConcurrentHashMap<>();

        /** What any search for this unit has judged: what is kept has no say in how good a plan is. */
        private final Map<List<Object>, Judged> known;

        private final Map<String, Encoding> encodings = new ConcurrentHashMap<>();

        Search(
                Document document,
                Catalogue catalogue,
                Rig rig,
                Unit unit,
                Set<Knob> keeps,
                Predicate<Finding> heard,
                Map<List<Object>, Judged> known) {
            this.document = document;
            this.catalogue = catalogue;
            this.rig = rig;
            this.unit = unit;
            this.keeps = keeps;
            this.heard = heard;
            this.known = known;
            StartingPlan matched = new StartingPlan(rig, null, unit.name(), this::encoding, this::gamut);
            this.room = new Room(rig, unit, keeps, matched, this::profiled);
        }

        private Encoding encoding(String id) {
            return encodings.computeIfAbsent(
                    id,
                    word -> catalogue
                            .encoding(word)
                            .orElseThrow(
                                    () -> new BadInput(document.file(), "no encoding is called " + Say.quote(word))));
        }

        private Gamut gamut(String id) {
            Gamut gamut = catalogue.gamuts().get(id);
            if (gamut == null) {
                throw new BadInput(document.file(), "no gamut is called " + Say.quote(id));
            }
            return gamut;
        }

        private Settings profiled(Profile profile) {
            Settings plan = Settings.of(unit);
            String encoding = unit.recording().encodingWith(profile);
            String gamut = unit.recording().gamutWith(profile);
            return new Settings(
                    plan.mode(),
                    profile,
                    encoding == null ? null : encoding(encoding),
                    gamut == null ? null : gamut(gamut),
                    plan.codec(),
                    plan.lens(),
                    plan.shutter(),
                    plan.iso(),
                    plan.filters(),
                    plan.white(),
                    plan.automatic());
        }

        /** From the best starts to where nothing gets better. */
        Found all() {
            List<Judged> starts = judge(room.starts()).stream().sorted().toList();
            List<Judged> followed = new ArrayList<>();
            Set<List<Object>> places = new HashSet<>();
            Judged plan = judge(room.plan());
            for (Judged start : starts) {
                // One of each mode and lens: others would end where it does.
                if (followed.size() < FOLLOWED && places.add(place(start.settings()))) {
                    followed.add(start);
                }
            }
            if (places.add(place(plan.settings())) || !followed.contains(plan)) {
                followed.add(plan);
            }
            List<Judged> ends = new ArrayList<>();
            for (Judged end : descend(followed)) {
                if (ends.stream().noneMatch(other -> other.settings().equals(end.settings()))) {
                    ends.add(end);
                }
            }
            // The plan leads nowhere else than others do, unless it is good: ends that lose are no answers.
            ends.sort(Comparator.naturalOrder());
            return new Found(List.copyOf(ends));
        }

        private static List<Object> place(Settings settings) {
            FittedLens fitted = settings.lens();
            return List.of(
                    settings.mode().id(), fitted == null ? "" : fitted.lens().id());
        }

        /**
         * Turns what makes each of the starts better until nothing does. They go side by side, one step each, so that there is
         * always enough to judge at once; none looks at another's, so each ends where it would alone.
         */
        private List<Judged> descend(List<Judged> starts) {
            List<Descent> all = starts.stream().map(Descent::new).toList();
            List<Descent> going = all;
            while (!going.isEmpty() && !stop.getAsBoolean()) {
                List<List<Settings>> ahead =
                        going.parallelStream().map(Descent::ahead).toList();
                judge(ahead.stream().flatMap(List::stream).toList());
                for (int i = 0; i < going.size(); i++) {
                    going.get(i).go(ahead.get(i));
                }
                going = going.stream().filter(descent -> !descent.ended).toList();
            }
            return all.stream().map(descent -> descent.here).toList();
        }

        /** The way from one start: a round of all knobs, again as long as one was turned, then two at a time. */
        private final class Descent {
            private Judged here;
            private int step;
            private boolean turned;
            private boolean ended;

            Descent(Judged start) {
                this.here = start;
            }

            /** What could be better than where it is. */
            List<Settings> ahead() {
                List<Settings> turns = step < KNOBS.size()
                        ? room.turns(here.settings(), KNOBS.get(step))
                        : room.balanced(here.settings());
                // Of plans of which nothing at all is found only one with fewer changes is better; that needs no rules.
                return here.score().flawless()
                        ? turns.stream()
                                .filter(one -> changed(one).size() < here.changes())
                                .toList()
                        : turns;
            }

            void go(List<Settings> turns) {
                Judged next = turns.stream()
                        .map(one -> judged.get(key(one)))
                        .filter(Objects::nonNull)
                        .min(Comparator.naturalOrder())
                        .filter(one -> one.compareTo(here) < 0)
                        .orElse(here);
                turned |= next.compareTo(here) < 0;
                here = next;
                step++;
                if (step > KNOBS.size() || (step == KNOBS.size() && turned)) {
                    ended = !turned;
                    step = 0;
                    turned = false;
                }
            }
        }

        /** Judges those that are not judged yet, on all cores; gives those that were, which are all unless it was stopped. */
        private List<Judged> judge(Collection<Settings> settings) {
            Map<List<Object>, Settings> wanted = new LinkedHashMap<>();
            settings.stream().filter(this::allowed).forEach(one -> wanted.putIfAbsent(key(one), one));
            List<Map.Entry<List<Object>, Settings>> fresh = wanted.entrySet().stream()
                    .filter(one -> !judged.containsKey(one.getKey()))
                    .toList();
            AtomicInteger next = new AtomicInteger();
            // One plan after the other from one list: halves of a short list are seldom equally much work.
            IntStream.range(0, Runtime.getRuntime().availableProcessors())
                    .parallel()
                    .forEach(core -> {
                        for (int i = next.getAndIncrement();
                                i < fresh.size() && !stop.getAsBoolean();
                                i = next.getAndIncrement()) {
                            judge(fresh.get(i).getKey(), fresh.get(i).getValue());
                        }
                    });
            return wanted.keySet().stream()
                    .map(judged::get)
                    .filter(Objects::nonNull)
                    .toList();
        }

        /** The hero's exposure is its crew's: no rule could tell where it belongs, so it stays where it is planned. */
        private boolean allowed(Settings settings) {
            return !unit.hero()
                    || !(CollectedLight.derive(unit).get(0) instanceof CollectedLight planned)
                    || !(CollectedLight.derive(settings.on(unit)).get(0) instanceof CollectedLight light)
                    || Math.abs(light.stopsFrom(planned))
                            <= rig.match().tolerances().of(Tolerance.EXPOSURE);
        }

        private Judged judge(Settings settings) {
            return judge(key(settings), settings);
        }

        private Judged judge(List<Object> key, Settings settings) {
            // Not computed inside the map: that would hold up others that only want a place near this one.
            Judged found = known.get(key);
            if (found == null) {
                found = judgedAnew(settings);
                known.put(key, found);
                progress.accept(new Progress(unit.name(), known.size()));
            }
            judged.put(key, found);
            return found;
        }

        private Judged judgedAnew(Settings settings) {
            Rig tried = with(rig, settings.on(unit));
            Outcome outcome = checker.outcome(tried);
            List<Finding> open = outcome.findings().stream()
                    .filter(heard)
                    .filter(finding -> rig.waivers().stream().noneMatch(waiver -> waiver.covers(finding)))
                    .sorted(Checker.URGENCY)
                    .toList();
            List<Unchecked> gaps = Coverage.of(checker.book(), tried, outcome).unchecked();
            return new Judged(
                    settings,
                    Score.of(checker.book(), open, gaps),
                    changed(settings).size(),
                    open,
                    gaps);
        }

        private List<Object> key(Settings settings) {
            return KNOBS.stream()
                    .map(knob -> Objects.requireNonNullElse(value(settings, knob), ""))
                    .toList();
        }

        /** The knobs that are not as planned. */
        private List<Knob> changed(Settings settings) {
            return KNOBS.stream()
                    .filter(knob -> !Objects.equals(value(settings, knob), value(room.plan(), knob)))
                    .toList();
        }

        private @Nullable Object value(Settings settings, Knob knob) {
            FittedLens fitted = settings.lens();
            return switch (knob) {
                case MODE -> settings.mode().id();
                case PROFILE ->
                    settings.profile() == null ? null : settings.profile().id();
                case CODEC -> settings.codec() == null ? null : settings.codec().id();
                case LENS, LENS_USE -> fitted == null ? null : fitted.lens().id();
                // A prime's focal length is no setting; another lens brings its own.
                case FOCAL -> fitted == null || fitted.lens().prime() ? null : fitted.focal();
                case STOP -> fitted == null ? null : fitted.stop();
                case SHUTTER -> settings.shutter();
                case ISO -> settings.iso();
                case FILTERS -> settings.filters();
                case WHITE -> settings.white();
            };
        }

        /** A search in words. */
        Solution told(Found found) {
            Judged plan = judge(room.plan());
            Judged best = found.best();
            List<Solution.Answer> answers = new ArrayList<>();
            for (Judged end : found.ends()) {
                boolean asGood = end.compareTo(best) == 0 || worst(end) >= worst(best);
                if (answers.size() < MOST_ANSWERS && asGood) {
                    answers.add(answer(end, best));
                }
            }
            boolean fails = fails(best);
            int tried = judged.size();
            List<String> conflict = fails ? conflict() : List.of();
            List<Solution.Relaxation> relaxations = fails ? relaxations() : List.of();
            boolean stopped = stop.getAsBoolean();
            return new Solution(
                    unit.name(),
                    tried,
                    room.size(),
                    stopped,
                    reasons(plan.findings()),
                    answers,
                    // What a broken-off search did not find may be there all the same.
                    stopped ? List.of() : conflict,
                    stopped ? List.of() : relaxations,
                    fails ? deadlocks(best) : List.of());
        }

        /** The place of the most urgent severity that it has; the number of severities when it has none. */
        private int worst(Judged plan) {
            List<Integer> counts = plan.score().counts();
            for (int i = 0; i < counts.size(); i++) {
                if (counts.get(i) > 0) {
                    return i;
                }
            }
            return counts.size();
        }

        /** True when something of this unit is left that must not be; what is wrong elsewhere it cannot mend. */
        private boolean fails(Judged plan) {
            return failOn.verdict(
                            plan.findings().stream()
                                    .filter(this::concerns)
                                    .map(Finding::severity)
                                    .toList(),
                            plan.gaps().stream().anyMatch(gap -> gap.unit().equals(unit.name())))
                    != Verdict.PASSES;
        }

        private boolean concerns(Finding finding) {
            return finding.units().contains(unit.name());
        }

        private Solution.Answer answer(Judged end, Judged first) {
            return new Solution.Answer(
                    changes(end),
                    reasons(end.findings()),
                    end.gaps().size(),
                    reasons(only(end, first)),
                    reasons(only(first, end)));
        }

        /** What is found in a plan and not in one that it is held against. */
        private List<Finding> only(Judged plan, Judged against) {
            Set<String> there = against.findings().stream().map(this::subject).collect(Collectors.toSet());
            return plan.findings().stream()
                    .filter(finding -> !there.contains(subject(finding)))
                    .toList();
        }

        private String subject(Finding finding) {
            return Checker.subject(finding) + finding.severity();
        }

        /** What is set otherwise, each with what it is for: what the rules find when it alone is put back. */
        private List<Solution.Change> changes(Judged end) {
            List<Solution.Change> changes = new ArrayList<>();
            for (Knob knob : changed(end.settings())) {
                if (knob == Knob.FOCAL && changed(end.settings()).contains(Knob.LENS_USE)) {
                    continue;
                }
                List<Finding> back = List.of();
                List<Finding> more = List.of();
                Settings without = put(end.settings(), knob);
                if (without != null) {
                    Judged put = judge(without);
                    back = only(put, end);
                    more = put.findings().stream()
                            .filter(finding -> end.findings().stream()
                                    .anyMatch(f ->
                                            subject(f).equals(subject(finding)) && f.magnitude() < finding.magnitude()))
                            .toList();
                }
                changes.add(new Solution.Change(edits(end.settings(), knob), reasons(back), reasons(more)));
            }
            return changes;
        }

        /** The same with one knob as it was planned; null where that cannot be. */
        private @Nullable Settings put(Settings settings, Knob knob) {
            Object planned = value(room.plan(), knob);
            return room.turns(settings, knob).stream()
                    .filter(one -> Objects.equals(value(one, knob), planned))
                    .findFirst()
                    .orElse(null);
        }

        private List<Assessment.Change> edits(Settings settings, Knob knob) {
            List<Edit> edits = new ArrayList<>();
            FittedLens fitted = settings.lens();
            switch (knob) {
                case CODEC ->
                    edits.add(new Edit(
                            unit.path(unit.recording().external() ? "recorder.codec" : knob.word()),
                            text(value(settings, knob))));
                case LENS_USE -> {
                    FittedLens lens = requireNonNull(fitted);
                    edits.add(new Edit(unit.path(knob.word()), lens.lens().id()));
                    String focal = unit.path(Knob.FOCAL.word());
                    if (!lens.lens().prime()) {
                        edits.add(new Edit(focal, text(lens.focal())));
                    } else if (document.at(focal).isPresent()) {
                        edits.add(new Edit(focal, null));
                    }
                }
                case FILTERS ->
                    edits.add(new Edit(
                            unit.path(knob.word()),
                            requireNonNull(settings.filters()).stream()
                                    .map(Object::toString)
                                    .collect(Collectors.joining(", ", "[", "]"))));
                default -> edits.add(new Edit(unit.path(knob.word()), text(value(settings, knob))));
            }
            return Checker.changes(document, edits);
        }

        private static String text(@Nullable Object value) {
            return requireNonNull(value).toString();
        }

        private List<Solution.Reason> reasons(List<Finding> findings) {
            return findings.stream()
                    .map(finding -> new Solution.Reason(
                            finding.rule(),
                            finding.severity(),
                            finding.magnitude(),
                            checker.title(finding),
                            checker.because(finding)))
                    .toList();
        }

        /** The best with less kept. */
        private Judged loosened(Search other) {
            return other.all().best();
        }

        private Search keeping(Set<Knob> fewer) {
            return new Search(document, catalogue, rig, unit, fewer, heard, known);
        }

        /** A smallest set of what is kept that together keeps every answer from passing: leave out any one, and one passes. */
        private List<String> conflict() {
            if (keeps.isEmpty() || fails(loosened(keeping(Set.of())))) {
                return List.of();
            }
            Set<Knob> needed = EnumSet.copyOf(keeps);
            for (Knob keep : keeps) {
                Set<Knob> fewer = EnumSet.copyOf(needed);
                fewer.remove(keep);
                if (fails(loosened(keeping(fewer)))) {
                    needed = fewer;
                }
            }
            return needed.stream().map(Knob::word).toList();
        }

        private List<Solution.Relaxation> relaxations() {
            List<Solution.Relaxation> all = new ArrayList<>();
            Judged here =
                    judged.values().stream().min(Comparator.naturalOrder()).orElseThrow();
            for (Knob keep : keeps) {
                Set<Knob> fewer = new HashSet<>(keeps);
                fewer.remove(keep);
                Search search = keeping(fewer);
                Judged found = loosened(search);
                if (found.score().compareTo(here.score()) < 0) {
                    all.add(new Solution.Relaxation(keep.word(), search.changes(found), !fails(found)));
                }
            }
            all.sort(Comparator.comparing((Solution.Relaxation relaxation) -> !relaxation.passes())
                    .thenComparing(relaxation -> relaxation.changes().size())
                    .thenComparing(Solution.Relaxation::keep));
            return all;
        }

        /** What stays and would fail, with the mildest of all tried plans that does not have it. */
        private List<Solution.Deadlock> deadlocks(Judged best) {
            List<Solution.Deadlock> deadlocks = new ArrayList<>();
            Map<String, Finding> failing = new LinkedHashMap<>();
            for (Finding finding : best.findings()) {
                if (concerns(finding) && failOn.fails(finding.severity())) {
                    failing.put(Checker.subject(finding), finding);
                }
            }
            failing.forEach((subject, finding) -> {
                Optional<Judged> without = judged.values().stream()
                        .filter(plan -> allowed(plan.settings()))
                        .filter(plan -> plan.findings().stream()
                                .noneMatch(f -> Checker.subject(f).equals(subject)))
                        .min(Comparator.naturalOrder());
                List<Finding> instead = without.map(plan -> only(plan, best)).orElse(List.of());
                List<String> unknown = without.map(plan -> plan.gaps().stream()
                                .map(Unchecked::rule)
                                .filter(rule -> best.gaps().stream()
                                        .noneMatch(gap -> gap.rule().equals(rule)))
                                .distinct()
                                .toList())
                        .orElse(List.of());
                deadlocks.add(new Solution.Deadlock(
                        reasons(List.of(finding)).get(0),
                        reasons(instead.stream()
                                .filter(f -> failOn.fails(f.severity()))
                                .toList()),
                        unknown));
            });
            return deadlocks;
        }
    }

    /** The changes of an answer as edits. */
    public static List<Edit> edits(Solution.Answer answer) {
        Map<String, Edit> edits = new HashMap<>();
        List<Edit> all = new ArrayList<>();
        for (Solution.Change change : answer.changes()) {
            for (Assessment.Change one : change.edits()) {
                if (edits.putIfAbsent(one.path(), new Edit(one.path(), one.to())) == null) {
                    all.add(new Edit(one.path(), one.to()));
                }
            }
        }
        return all;
    }
}
