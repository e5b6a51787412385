package akin.engine.cli;

import akin.engine.assess.Checked;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.baseline.Baseline;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.report.Batch;
import akin.engine.report.Format;
import akin.engine.report.Style;
import akin.model.finding.WhereFound;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.jspecify.annotations.Nullable;

/** {@code akin check}: the main job. */
final class CheckCommand implements Command {

    private static final String QUIET = "quiet";
    private static final String BASELINE = "baseline";
    private static final String CI = "ci";

    @Override
    public String name() {
        return "check";
    }

    @Override
    public String arguments() {
        return "RIG...";
    }

    @Override
    public String purpose() {
        return "Assesses planned rigs and reports what will not match, most urgent first. A folder stands for every rig"
                + " file in it: *.yaml or *.yml with the keys akin and units.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(Call.format(String.join(", ", Format.words())
                        + " (default: text); takes the --out behind it," + " and may be given again with another"))
                .addOption(Call.value(
                        Call.OUT, "FILE", "write the report of the --format before it to this file, not to the screen"))
                .addOption(Call.failOn("the least urgent thing"))
                .addOption(Call.tolerance())
                .addOption(Call.gear())
                .addOption(Call.rules())
                .addOption(Call.lensfunGear())
                .addOption(Call.on())
                .addOption(Call.readings())
                .addOption(Call.value(
                        BASELINE,
                        "FILE",
                        "findings in this file, which akin baseline writes, are reported as known and do not fail"))
                .addOption(Option.builder()
                        .longOpt(CI)
                        .desc("nobody is watching: a baseline that is missing or outdated fails")
                        .build())
                .addOption(Option.builder()
                        .longOpt(QUIET)
                        .desc("print no report, only write files and set the exit code")
                        .build());
    }

    @Override
    public Set<String> repeatable() {
        return Set.of(Call.FORMAT, Call.OUT, Call.RULES);
    }

    @Override
    public int run(Call call) {
        RigFiles rigs = RigFiles.of(call.rigs());
        Outputs outputs = Outputs.of(call);
        if (!rigs.one() && outputs.all().stream().anyMatch(output -> output.format() == Format.HTML)) {
            throw new BadInput(call.command(), "--format html makes one page of one rig file; name one");
        }
        FailOn failOn = call.failOn();
        String baselineFile = call.value(BASELINE);
        for (Outputs.Output output : outputs.all()) {
            if (output.file() != null) {
                call.refuseToOverwrite(output.file(), rigs.names());
                call.refuseToOverwrite(
                        output.file(), baselineFile == null ? List.of() : List.of(baselineFile), "the baseline");
            }
        }
        Terms terms = call.terms();
        BaselineOption baseline = baselineFile == null ? null : BaselineOption.read(baselineFile);
        Checker checker = call.checker();
        List<Batch.Part> parts = parts(call, checker, rigs, terms, failOn, baseline);
        Baseline.Comparison comparison = baseline == null ? null : baseline.compare(parts, call.has(CI));
        Batch batch =
                new Batch(Version.number(), checker.book(), failOn, rigs.one(), parts, rigs.passedOver(), comparison);
        boolean written = deliver(call, outputs, batch);
        complain(call, batch);
        return written ? exitCode(batch) : Akin.BAD_INPUT;
    }

    /** Each rig file by itself, on all cores: one that is wrong does not take the others along. */
    static List<Batch.Part> parts(
            Call call, Checker checker, RigFiles rigs, Terms terms, FailOn failOn, @Nullable BaselineOption baseline) {
        Stream<String> names = rigs.one() ? rigs.names().stream() : rigs.names().parallelStream();
        return names.map(rig -> part(call, checker, rig, terms, failOn, baseline))
                .toList();
    }

    private static Batch.Part part(
            Call call, Checker checker, String rig, Terms terms, FailOn failOn, @Nullable BaselineOption baseline) {
        try {
            Checked checked = checker.examine(call.read(rig), terms, failOn);
            return new Batch.Read(
                    baseline == null ? checked : checked.with(baseline.apply(checked.assessment(), failOn)));
        } catch (BadInput e) {
            if (!e.file().equals(rig)) {
                // What is wrong is an option, not this file.
                throw e;
            }
            return new Batch.Unread(rig, e.line(), e.column(), e.problem());
        }
    }

    /** True when every report was delivered. One file that cannot be written does not keep the others from being. */
    private static boolean deliver(Call call, Outputs outputs, Batch batch) {
        boolean all = true;
        for (Outputs.Output output : outputs.all()) {
            if (output.file() == null) {
                if (!call.has(QUIET)) {
                    call.print(output.format().render(batch, Call.style()));
                }
                continue;
            }
            try {
                call.write(output.file(), output.format().render(batch, Style.PLAIN));
            } catch (BadInput e) {
                call.say(e.file() + ": " + e.problem());
                all = false;
            }
        }
        return all;
    }

    /** What is wrong with the input is said where nobody can take it for a report. */
    private static void complain(Call call, Batch batch) {
        for (Batch.Part part : batch.parts()) {
            if (part instanceof Batch.Unread unread) {
                call.say(unread.place() + ": " + unread.problem());
            } else if (part instanceof Batch.Read read) {
                read.assessment().unchecked().stream()
                        .filter(gap -> gap.where() == WhereFound.RULE)
                        .forEach(gap -> call.say(part.file() + ": a rule failed, all others ran: " + gap.missing()));
            }
        }
        Baseline.Comparison baseline = batch.baseline();
        if (baseline != null && baseline.trouble() != null) {
            call.say(baseline.file() + ": " + baseline.trouble());
        }
    }

    /** The worst of all. */
    private static int exitCode(Batch batch) {
        Baseline.Comparison baseline = batch.baseline();
        if (!batch.allRead()) {
            return Akin.BAD_INPUT;
        }
        if (baseline != null && baseline.fails()) {
            return baseline.trouble() == null ? Akin.FAILS : Akin.BAD_INPUT;
        }
        return batch.passes() ? Akin.PASSES : Akin.FAILS;
    }
}
