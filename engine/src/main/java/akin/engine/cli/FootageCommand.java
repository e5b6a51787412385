package akin.engine.cli;

import akin.engine.assess.Checked;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.Verdict;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.report.Batch;
import akin.engine.report.Format;
import akin.engine.report.Style;
import akin.model.footage.Clip;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.apache.commons.cli.Options;

/** {@code akin footage}: shot clips against the plan. */
final class FootageCommand implements Command {

    private static final String FFPROBE = "ffprobe";

    /** Formats that are about findings; a page with pictures of the plan is not. */
    private static final List<Format> FORMATS = List.of(Format.TEXT, Format.JSON, Format.MARKDOWN);

    @Override
    public String name() {
        return "footage";
    }

    @Override
    public String arguments() {
        return "RIG CLIPS...";
    }

    @Override
    public String purpose() {
        return "Holds shot clips against the plan: rate, size, pixel shape, bits, colour tags, scan, timecode, length, names and"
                + " sound. CLIPS are clips (ffprobe reads them), what ffprobe printed of one (*.json), tables of clips (*.csv), or"
                + " folders of these. UNIT= before one, such as A=cards/A001, says whose it is; else its folder or the"
                + " beginning of its name must.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(Call.format("text (the default), json or markdown"))
                .addOption(Call.out())
                .addOption(Call.failOn("the least urgent thing"))
                .addOption(Call.tolerance())
                .addOption(Call.gear())
                .addOption(Call.rules())
                .addOption(Call.lensfunGear())
                .addOption(Call.on())
                .addOption(Call.value(FFPROBE, "PROGRAM", "ffprobe, where it is not on the PATH"));
    }

    @Override
    public Set<String> repeatable() {
        return Set.of(Call.RULES);
    }

    @Override
    public int run(Call call) {
        Format format = Format.of(call.format(FORMATS.stream().map(Format::word).toList()));
        List<String> arguments = call.rigs();
        if (arguments.size() < 2) {
            throw new BadInput(name(), "clips are missing, such as: akin footage rig.yaml A=cards/A001 B=cards/B001");
        }
        FailOn failOn = call.failOn();
        String rigFile = arguments.get(0);
        Document document = call.read(rigFile);
        Terms terms = call.terms();
        Checker checker = call.checker();
        Rig rig = checker.equip(document, terms);
        String program = call.value(FFPROBE);
        Probe probe = new Probe(program == null ? Probe.FFPROBE : program, Probe.PATIENCE);
        List<Clip> clips = Clips.of(arguments.subList(1, arguments.size()), rig, probe);
        Checked checked = checker.examineShots(name(), document, terms.with(clips), failOn, notes(rig, clips));
        Batch batch =
                new Batch(Version.number(), checker.book(), failOn, true, List.of(new Batch.Read(checked)), 0, null);
        call.deliver(format.render(batch, call.toFile() ? Style.PLAIN : Call.style()));
        return checked.assessment().verdict() == Verdict.PASSES ? Akin.PASSES : Akin.FAILS;
    }

    /** Which clips were looked at, by unit, and which units have none. */
    static List<String> notes(Rig rig, List<Clip> clips) {
        List<String> notes = new ArrayList<>();
        for (Unit unit : rig.units()) {
            List<String> names = clips.stream()
                    .filter(clip -> Objects.equals(clip.unitName(), unit.name()))
                    .map(Clip::name)
                    .sorted()
                    .toList();
            notes.add(
                    names.isEmpty()
                            ? "no clip of " + unit.name() + " was looked at"
                            : names.size() + (names.size() == 1 ? " clip of " : " clips of ") + unit.name() + ": "
                                    + String.join(", ", names));
        }
        return List.copyOf(notes);
    }
}
