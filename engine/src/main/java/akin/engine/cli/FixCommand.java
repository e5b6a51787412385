package akin.engine.cli;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.Mender;
import akin.engine.assess.Mending;
import akin.engine.assess.Verdict;
import akin.engine.equip.Terms;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.engine.report.DiffReport;
import akin.engine.report.MendReport;
import java.util.Set;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;

/** {@code akin fix}: makes the fixes that are safe, in the rig file itself. */
final class FixCommand implements Command {

    private static final String RULE = "rule";
    private static final String UNIT = "unit";
    private static final String DRY_RUN = "dry-run";

    @Override
    public String name() {
        return "fix";
    }

    @Override
    public String arguments() {
        return "RIG";
    }

    @Override
    public String purpose() {
        return "Makes the fixes that are safe in the rig file itself, and says what is left and why."
                + " A fix is safe when its finding goes and nothing as urgent comes.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(
                        Call.value(
                                RULE,
                                "ID",
                                "mend only findings of this rule, on the kit list and in scenes too; may be given more than once"))
                .addOption(Call.value(UNIT, "NAME", "change only settings of this unit; may be given more than once"))
                .addOption(Option.builder()
                        .longOpt(DRY_RUN)
                        .desc("change nothing; show what would change, as a unified diff at the end")
                        .build())
                .addOption(Call.failOn("the least urgent thing left"))
                .addOption(Call.tolerance())
                .addOption(Call.gear())
                .addOption(Call.rules())
                .addOption(Call.on());
    }

    @Override
    public Set<String> repeatable() {
        return Set.of(RULE, UNIT, Call.RULES);
    }

    @Override
    public int run(Call call) {
        String rig = call.rig();
        FailOn failOn = call.failOn();
        Terms terms = call.terms();
        Mender.Choosing chosen = new Mender.Choosing(Set.copyOf(call.values(RULE)), Set.copyOf(call.values(UNIT)));
        Checker checker = call.checker();
        Document before = call.read(rig);
        Mending mending = new Mender(checker, terms).mend(before, chosen);
        boolean changes = !mending.text().equals(before.text());
        boolean write = changes && !call.has(DRY_RUN);
        if (write) {
            InPlace.replace(rig, before.text(), mending.text());
        }
        // What was written is read again: the verdict is that of the file as it stands.
        Document after = write ? call.read(rig) : YamlReader.read(rig, mending.text());
        Assessment assessment = checker.check(after, terms, failOn);
        call.print(MendReport.render(mending, assessment, write, Call.style()));
        if (changes && !write) {
            call.print("\n"
                    + (Call.terminal()
                            ? DiffReport.shown(rig, before.text(), mending.text())
                            : DiffReport.render(rig, before.text(), mending.text())));
        }
        return assessment.verdict() == Verdict.PASSES ? Akin.PASSES : Akin.FAILS;
    }
}
