package akin.engine.cli;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.Solution;
import akin.engine.assess.Solver;
import akin.engine.assess.Verdict;
import akin.engine.edit.Edits;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Say;
import akin.engine.read.YamlReader;
import akin.engine.report.SolveReport;
import akin.model.finding.Edit;
import akin.model.rig.Knob;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;

/** {@code akin solve}: the settings that match, all of a unit at once. */
final class SolveCommand implements Command {

    private static final String KEEP = "keep";
    private static final String WRITE = "write";
    private static final String MOVE_HERO = "move-hero";
    private static final String JSON = "json";

    /** How long the end of an interrupted search may take, in seconds. */
    private static final long GRACE = 10;

    @Override
    public String name() {
        return "solve";
    }

    @Override
    public String arguments() {
        return "RIG";
    }

    @Override
    public String purpose() {
        return "Finds the settings of each unit beside the hero that match best on its own gear: mode, profile, codec, lens,"
                + " stop, shutter, ISO, filters, white balance. What a unit lists under keep: stays as it is planned.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(Call.value(
                        KEEP,
                        "UNIT.SETTING",
                        "keep this as it is planned, such as B.lens or B.shutter; may be given more than once"))
                .addOption(Option.builder()
                        .longOpt(MOVE_HERO)
                        .desc("set the hero as well, where that leaves less; its exposure stays")
                        .build())
                .addOption(Option.builder()
                        .longOpt(WRITE)
                        .desc(
                                "write the first answer of each unit into the rig file, of an interrupted search the best so"
                                        + " far; comments stay")
                        .build())
                .addOption(Call.format("text (the default) or json, which has all answers"))
                .addOption(Call.out())
                .addOption(Call.failOn("the least urgent thing left"))
                .addOption(Call.tolerance())
                .addOption(Call.gear())
                .addOption(Call.rules())
                .addOption(Call.on());
    }

    @Override
    public Set<String> repeatable() {
        return Set.of(KEEP, Call.RULES);
    }

    @Override
    public int run(Call call) {
        String format = call.format(List.of(Call.TEXT, JSON));
        String rig = call.rig();
        FailOn failOn = call.failOn();
        Terms terms = call.terms();
        Map<String, Set<Knob>> keeps = keeps(call.values(KEEP));
        Checker checker = call.checker();
        Binder binder = new Binder();
        Document before = call.read(rig);
        AtomicBoolean stop = new AtomicBoolean();
        CountDownLatch done = new CountDownLatch(1);
        Thread interrupted = new Thread(() -> {
            stop.set(true);
            try {
                // Whoever interrupts gets the best so far; Java ends when this does.
                done.await(GRACE, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        Runtime.getRuntime().addShutdownHook(interrupted);
        try {
            List<Solution> solutions = searched(progress -> new Solver(
                            checker, terms, file -> call.catalogue(binder, file), failOn, progress, stop::get)
                    .solve(before, keeps, call.has(MOVE_HERO)));
            List<Edit> edits = new ArrayList<>();
            solutions.forEach(
                    solution -> edits.addAll(Solver.edits(solution.answers().get(0))));
            String text = Edits.apply(before, edits);
            boolean written = call.has(WRITE) && !text.equals(before.text());
            if (written) {
                InPlace.replace(rig, before.text(), text);
            }
            Document after = written ? call.read(rig) : YamlReader.read(rig, text);
            Assessment assessment = checker.check(after, terms, failOn);
            call.deliver(
                    format.equals(JSON)
                            ? SolveReport.json(solutions, assessment, Version.number())
                            : SolveReport.text(solutions, assessment, written));
            call.flush();
            return assessment.verdict() == Verdict.PASSES ? Akin.PASSES : Akin.FAILS;
        } finally {
            done.countDown();
            try {
                Runtime.getRuntime().removeShutdownHook(interrupted);
            } catch (IllegalStateException e) {
                // Java is ending already, and the hook has seen that this is done: nothing is left to undo.
            }
        }
    }

    /** Searches, on a terminal with a word on how far it is that is gone when this returns. */
    private static List<Solution> searched(Function<Consumer<Solver.Progress>, List<Solution>> search) {
        if (!Boolean.getBoolean(SurveyCommand.PROGRESS)) {
            return search.apply(progress -> {});
        }
        SearchLine line = new SearchLine(new PrintWriter(System.err, false, StandardCharsets.UTF_8), System::nanoTime);
        try {
            return search.apply(line);
        } finally {
            line.clear();
        }
    }

    private Map<String, Set<Knob>> keeps(List<String> written) {
        Map<String, Set<Knob>> keeps = new TreeMap<>();
        List<String> words = Arrays.stream(Knob.values()).map(Knob::word).toList();
        for (String one : written) {
            int dot = one.indexOf('.');
            String setting = dot < 0 ? "" : one.substring(dot + 1);
            Knob knob = Arrays.stream(Knob.values())
                    .filter(k -> k.word().equals(setting))
                    .findFirst()
                    .orElseThrow(() -> new BadInput(
                            name(),
                            "--" + KEEP + ": read " + Say.quote(one) + "; a unit and a setting belong here, such as"
                                    + " B.lens." + Say.nearest(setting, words) + " Settings: " + Say.list(words)));
            keeps.computeIfAbsent(one.substring(0, dot), unit -> EnumSet.noneOf(Knob.class))
                    .add(knob);
        }
        return keeps;
    }
}
