package akin.engine.cli;

import akin.engine.assess.FailOn;
import akin.engine.baseline.Baseline;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Place;
import akin.engine.report.BaselineFile;
import akin.engine.report.Batch;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.cli.Options;

/** {@code akin baseline}: writes down the findings there are, so that checks from now on fail for new ones only. */
final class BaselineCommand implements Command {

    @Override
    public String name() {
        return "baseline";
    }

    @Override
    public String arguments() {
        return "RIG...";
    }

    @Override
    public String purpose() {
        return "Writes the findings there are now to a file; akin check --baseline FILE then fails for new ones only.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(Call.value(Call.OUT, "FILE", "the baseline file to write"))
                .addOption(Call.tolerance())
                .addOption(Call.gear())
                .addOption(Call.rules())
                .addOption(Call.on());
    }

    @Override
    public Set<String> repeatable() {
        return Set.of(Call.RULES);
    }

    @Override
    public int run(Call call) {
        RigFiles rigs = RigFiles.of(call.rigs());
        String file = call.value(Call.OUT);
        if (file == null) {
            throw new BadInput(name(), "the option --out is missing: the baseline file to write");
        }
        call.refuseToOverwrite(file, rigs.names());
        BaselineOption before = BaselineOption.read(file);
        Terms terms = call.terms();
        SortedMap<String, SortedMap<Baseline.Key, Integer>> counts = new TreeMap<>();
        for (Batch.Part part : CheckCommand.parts(call, call.checker(), rigs, terms, FailOn.LOSSY, null)) {
            // A rig file that cannot be read stops this: a baseline without it would make all of its findings new.
            if (part instanceof Batch.Unread unread) {
                throw unread.line() == 0
                        ? new BadInput(unread.file(), unread.problem())
                        : new BadInput(
                                unread.file(), new Place(unread.line(), unread.column(), 0, 0), unread.problem());
            }
            counts.put(BaselineOption.name(file, part.file()), Baseline.count(((Batch.Read) part).assessment()));
        }
        Baseline now = new Baseline(counts);
        call.write(file, BaselineFile.render(now));
        call.print(file + ": " + size(now) + change(before, now) + "\n");
        return Akin.PASSES;
    }

    private static String size(Baseline baseline) {
        int rigs = baseline.rigs().size();
        return baseline.size()
                + (baseline.size() == 1 ? " finding in " : " findings in ")
                + rigs
                + (rigs == 1 ? " rig file" : " rig files");
    }

    private static String change(BaselineOption before, Baseline now) {
        if (before.trouble() != null) {
            return "";
        }
        return "; " + missing(before.baseline(), now) + " more than before, " + missing(now, before.baseline())
                + " gone";
    }

    /** How many findings of the second are not in the first. */
    private static int missing(Baseline from, Baseline of) {
        return of.rigs().keySet().stream()
                .map(rig -> of.gone(rig, from.rigs().getOrDefault(rig, new TreeMap<>())))
                .mapToInt(List::size)
                .sum();
    }
}
