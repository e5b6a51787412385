package akin.engine.cli;

import akin.engine.assess.Checked;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.Verdict;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.report.ProofReport;
import akin.engine.report.Style;
import akin.engine.report.lut.CorrectionFiles;
import akin.engine.report.lut.FileNames;
import akin.model.derived.Correction;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.cli.Options;

/** {@code akin prove}: do test shots of the day say that the units match? */
final class ProveCommand implements Command {

    private static final String TOPIC = "proof";
    private static final String JSON = "json";
    private static final String CORRECTIONS = "corrections";

    @Override
    public String name() {
        return "prove";
    }

    @Override
    public String arguments() {
        return "RIG READINGS";
    }

    @Override
    public String purpose() {
        return "Judges what was read of a grey card, a white patch or a 24-patch chart shot on each unit, typed as YAML or"
                + " CSV or sampled from a frame: exposure, white, clipping, noise and colour, with how sure that is.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(Call.format("text (the default) or json"))
                .addOption(Call.out())
                .addOption(Call.value(
                        CORRECTIONS,
                        "DIR",
                        "write what corrects each unit to the hero to this folder: CLF and ASC CDL"))
                .addOption(OutFolder.overwrite())
                .addOption(Call.failOn("the least urgent thing"))
                .addOption(Call.tolerance())
                .addOption(Call.gear())
                .addOption(Call.rules())
                .addOption(Call.lensfunGear())
                .addOption(Call.on());
    }

    @Override
    public Set<String> repeatable() {
        return Set.of(Call.RULES);
    }

    @Override
    public int run(Call call) {
        String format = call.format(List.of(Call.TEXT, JSON));
        if (call.arguments().size() != 2) {
            throw new BadInput(
                    name(), "a rig file and a file of readings are wanted: akin prove rig.yaml readings.yaml");
        }
        FailOn failOn = call.failOn();
        String rigFile = call.arguments().get(0);
        String readingsFile = call.arguments().get(1);
        Terms terms = call.terms();
        Checker checker = call.checker();
        Document document = call.read(rigFile);
        Terms shot = terms.with(Call.readings(readingsFile));
        Checked proof = checker.examineShots(TOPIC, document, shot, failOn, List.of());
        List<String> files = call.has(CORRECTIONS) ? corrections(call, proof.rig()) : List.of();
        List<ProofReport.None> none = call.has(CORRECTIONS) ? none(proof.rig()) : List.of();
        call.deliver(
                format.equals(JSON)
                        ? ProofReport.json(proof, readingsFile, files, none, Version.number())
                        : ProofReport.text(
                                proof, readingsFile, files, none, call.toFile() ? Style.PLAIN : Call.style()));
        return proof.assessment().verdict() == Verdict.PASSES ? Akin.PASSES : Akin.FAILS;
    }

    private static List<String> corrections(Call call, Rig rig) {
        OutFolder folder = OutFolder.of(call, CORRECTIONS, CORRECTIONS);
        FileNames names = new FileNames();
        List<String> files = new ArrayList<>();
        Unit hero = rig.units().get(0);
        for (Unit unit : rig.units()) {
            Correction correction = unit.hero() ? null : Correction.of(rig, unit, hero);
            if (correction != null) {
                String name = names.of(unit.name() + "-to-" + hero.name());
                files.add(folder.add(name + ".clf", out -> CorrectionFiles.clf(correction, name, out)));
                files.add(folder.add(name + ".cdl", out -> CorrectionFiles.cdl(correction, name, out)));
            }
        }
        folder.write(call, call.arguments());
        return files;
    }

    /** The units that no correction could be made for. */
    private static List<ProofReport.None> none(Rig rig) {
        List<ProofReport.None> none = new ArrayList<>();
        Unit hero = rig.units().get(0);
        for (Unit unit : rig.units()) {
            Correction.Lack lack = unit.hero() ? null : Correction.lack(rig, unit, hero);
            if (lack != null) {
                none.add(new ProofReport.None(
                        unit.name(),
                        switch (lack) {
                            case UNIT -> "nothing was read of " + unit.name();
                            case HERO -> "nothing was read of " + hero.name() + ", the hero";
                            case MEANING -> "the encoding or the gamut of one of the two is not known";
                            case COMMON -> "no grey, neutral or chart was read of both";
                        }));
            }
        }
        return none;
    }
}
