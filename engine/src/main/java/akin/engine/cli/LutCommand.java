package akin.engine.cli;

import akin.engine.equip.Catalogue;
import akin.engine.equip.Charts;
import akin.engine.equip.Equipper;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Say;
import akin.engine.report.lut.CubeFile;
import akin.engine.report.lut.FileNames;
import akin.engine.report.lut.LookClf;
import akin.engine.report.lut.LutReport;
import akin.model.colour.Adaptation;
import akin.model.colour.Chart;
import akin.model.colour.Gamut;
import akin.model.derived.LutDevice;
import akin.model.gear.SignalRange;
import akin.model.look.Cube;
import akin.model.look.CubeError;
import akin.model.look.LookTable;
import akin.model.look.Viewing;
import akin.model.look.ViewingLook;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.cli.Options;
import org.jspecify.annotations.Nullable;

/** {@code akin lut}: a look-up table for each unit, all of one look. */
final class LutCommand implements Command {

    private static final String VIEWING = "viewing";
    private static final String VIEWING_GAMUT = "viewing-gamut";
    private static final String PEAK = "peak";
    private static final String SIZE = "size";
    private static final String TAKES = "takes";
    private static final String GIVES = "gives";
    private static final String ADAPTATION = "adaptation";

    private static final String USUAL_FOLDER = "luts";
    private static final String USUAL_PEAK = "1000";

    @Override
    public String name() {
        return "lut";
    }

    @Override
    public String arguments() {
        return "RIG";
    }

    @Override
    public String purpose() {
        return "Writes look-up tables for each unit, from what it records to a display, all of one look: as Common LUT"
                + " Format, and as .cube files of the sizes that its device takes.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(Call.value(Call.OUT, "DIR", "the folder to write them to (default: luts)"))
                .addOption(OutFolder.overwrite())
                .addOption(Call.value(
                        VIEWING, "ENCODING", "what the display is sent (default: bt1886), by its id, such as pq"))
                .addOption(Call.value(
                        VIEWING_GAMUT,
                        "GAMUT",
                        "primaries of the display (default: bt709; bt2020 for pq), by their id"))
                .addOption(Call.value(PEAK, "CD/M2", "brightest white of a display of absolute light (default: 1000)"))
                .addOption(Call.value(
                        SIZE,
                        "N",
                        "17, 33 or 65 points along an edge; may be given again (default: what the device"
                                + " takes, or all)"))
                .addOption(Call.value(
                        TAKES,
                        "LEVELS",
                        "what 0 to 1 going in stands for: full, all codes (default), or legal, black to" + " white"))
                .addOption(Call.value(
                        GIVES, "LEVELS", "what 0 to 1 coming out stands for: legal, black to white (default), or full"))
                .addOption(
                        Call.value(ADAPTATION, "NAME", "bradford (default) or cat02, where a gamut's white is not D65"))
                .addOption(Call.gear());
    }

    @Override
    public Set<String> repeatable() {
        return Set.of(SIZE);
    }

    @Override
    public int run(Call call) {
        Document document = call.read(call.rig());
        Binder binder = new Binder();
        Catalogue catalogue = call.catalogue(binder, document.file());
        Rig rig = Equipper.equip(document, binder, catalogue, call.terms());
        ViewingLook look = new ViewingLook(viewing(call, catalogue), adaptation(call));
        SignalRange takes = range(call, TAKES, SignalRange.FULL);
        SignalRange gives = range(call, GIVES, SignalRange.LEGAL);
        Set<Integer> sizes = sizes(call);
        List<Chart> charts = List.copyOf(Charts.packaged(binder).values());
        Chart chart = charts.get(charts.size() - 1);
        OutFolder folder = OutFolder.of(call, Call.OUT, USUAL_FOLDER);
        FileNames names = new FileNames();
        List<LutReport.Part> parts = new ArrayList<>();
        for (Unit unit : rig.units()) {
            LutReport.Skipped skipped = skipped(unit);
            if (skipped != null) {
                parts.add(skipped);
                continue;
            }
            LookTable table = new LookTable(
                    Objects.requireNonNull(unit.encoding()), Objects.requireNonNull(unit.gamut()), look, takes, gives);
            parts.add(made(unit, table, sizes, chart, folder, names.of(unit.name())));
        }
        folder.write(call, List.of(document.file()));
        call.print(LutReport.text(rig.production().name(), document.file(), look, parts));
        boolean all = parts.stream().noneMatch(LutCommand::fails);
        return all ? Akin.PASSES : Akin.FAILS;
    }

    /** True when somebody waits for a table that was not written. */
    private static boolean fails(LutReport.Part part) {
        return part instanceof LutReport.Made made ? made.files().size() < 2 : ((LutReport.Skipped) part).waiting();
    }

    private static LutReport.Made made(
            Unit unit, LookTable table, Set<Integer> asked, Chart chart, OutFolder folder, String name) {
        List<String> remarks = new ArrayList<>();
        List<Integer> wanted = wanted(unit, asked, remarks);
        String start = FileNames.table(
                name, table.encoding().id(), table.look().viewing().encoding().id());
        List<String> files = new ArrayList<>();
        files.add(folder.add(start + ".clf", out -> LookClf.write(unit.name(), start, table, out)));
        List<double[]> inputs = CubeError.inputs(table, chart);
        List<CubeError> errors = new ArrayList<>();
        for (int size : Cube.SIZES) {
            errors.add(CubeError.of(table, Cube.of(table, size), inputs));
            if (wanted.contains(size)) {
                // Made again when it is written: a rig of many units must not hold all its cubes at once.
                files.add(folder.add(
                        start + "-" + size + ".cube",
                        out -> CubeFile.write(unit.name(), table, Cube.of(table, size), out)));
            }
        }
        return new LutReport.Made(unit.name(), table, files, errors, remarks);
    }

    /** The sizes to write: those asked for, or else all, as far as the device takes them. */
    private static List<Integer> wanted(Unit unit, Set<Integer> asked, List<String> remarks) {
        Collection<Integer> sizes = asked.isEmpty() ? Cube.SIZES : asked;
        LutDevice device = LutDevice.of(unit);
        List<Integer> accepts = device == null ? null : device.accepts();
        if (device == null || accepts == null) {
            remarks.add(
                    device == null
                            ? "Which device applies it is not planned (monitor.held-by), so its size is not checked."
                            : "Which sizes " + device.called() + " takes is not known (" + device.path()
                                    + "), so its size is not checked.");
            return LutDevice.fitting(unit, sizes);
        }
        List<Integer> fits = LutDevice.fitting(unit, sizes);
        String takes = accepts.isEmpty()
                ? "no table at all: let the screen, or a box before it, apply it"
                : accepts.stream().sorted().map(String::valueOf).collect(Collectors.joining(", ")) + " points";
        boolean refused = fits.isEmpty() || fits.size() < asked.size();
        remarks.add(device.called() + " takes " + takes + (refused ? "; no .cube is written of another size." : "."));
        return fits;
    }

    /** What is said of a unit that gets no table; null when it gets one. */
    private static LutReport.@Nullable Skipped skipped(Unit unit) {
        Encoding encoding = unit.encoding();
        if (encoding == null || unit.gamut() == null) {
            String what = encoding == null ? "encoding" : "gamut";
            return new LutReport.Skipped(
                    unit.name(), "The " + what + " that it records is not known: plan a profile that says so.", true);
        }
        LookTable.Unfit unfit = LookTable.unfit(encoding);
        if (unfit == null) {
            return null;
        }
        return switch (unfit) {
            case FINISHED ->
                new LutReport.Skipped(
                        unit.name(),
                        "It records " + encoding.name() + ", a finished picture; watch that as it is.",
                        false);
            case UNDEVELOPED ->
                new LutReport.Skipped(
                        unit.name(),
                        "It records " + encoding.name()
                                + ": make a table for the encoding that it is developed to, or is monitored in.",
                        true);
        };
    }

    private static Viewing viewing(Call call, Catalogue catalogue) {
        String id = Objects.requireNonNullElse(call.value(VIEWING), Viewing.USUAL);
        List<String> ids = catalogue.ids("encodings").stream()
                .filter(each -> catalogue.encoding(each).filter(Viewing::shows).isPresent())
                .toList();
        Encoding encoding = catalogue
                .encoding(id)
                .filter(Viewing::shows)
                .orElseThrow(() -> unknown(VIEWING, id, "no display is sent this, channel by channel.", ids));
        String usual = encoding.referenceWhite() == null ? "bt709" : "bt2020";
        String gamutId = Objects.requireNonNullElse(call.value(VIEWING_GAMUT), usual);
        Map<String, Gamut> gamuts = catalogue.gamuts();
        Gamut gamut = gamuts.get(gamutId);
        if (gamut == null) {
            throw unknown(VIEWING_GAMUT, gamutId, "no gamut is called that.", gamuts.keySet());
        }
        String peak = Objects.requireNonNullElse(call.value(PEAK), USUAL_PEAK);
        if (!peak.matches("[0-9]{3,5}")) {
            throw new BadInput("lut", "--peak: read " + Say.quote(peak) + "; cd/m2 belong here, such as 1000");
        }
        try {
            return new Viewing(encoding, gamut, Integer.parseInt(peak));
        } catch (IllegalArgumentException e) {
            throw new BadInput("lut", "--peak: " + Say.of(e));
        }
    }

    private static BadInput unknown(String option, String read, String problem, Collection<String> words) {
        return new BadInput(
                "lut",
                "--" + option + ": read " + Say.quote(read) + "; " + problem + Say.nearest(read, words) + " Allowed: "
                        + Say.list(words));
    }

    private static Adaptation adaptation(Call call) {
        List<String> words = Arrays.stream(Adaptation.values())
                .map(each -> each.name().toLowerCase(Locale.ROOT))
                .toList();
        return Adaptation.valueOf(call.oneOf(ADAPTATION, words.get(0), words).toUpperCase(Locale.ROOT));
    }

    private static SignalRange range(Call call, String option, SignalRange usual) {
        List<String> words =
                Arrays.stream(SignalRange.values()).map(SignalRange::word).toList();
        return SignalRange.valueOf(call.oneOf(option, usual.word(), words).toUpperCase(Locale.ROOT));
    }

    private static SortedSet<Integer> sizes(Call call) {
        SortedSet<Integer> sizes = new TreeSet<>();
        for (String word : call.values(SIZE)) {
            if (!word.matches("17|33|65")) {
                throw new BadInput("lut", "--size: read " + Say.quote(word) + ". Allowed: 17, 33, 65");
            }
            sizes.add(Integer.valueOf(word));
        }
        return sizes;
    }
}
