package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Numbers;
import akin.engine.report.lut.FileNames;
import akin.model.derived.LutDevice;
import akin.model.gear.Codec;
import akin.model.gear.Output;
import akin.model.gear.Recorder;
import akin.model.look.Cube;
import akin.model.look.LookTable;
import akin.model.look.Viewing;
import akin.model.quantity.NeutralDensity;
import akin.model.rig.FittedLens;
import akin.model.rig.Monitor;
import akin.model.rig.Recording;
import akin.model.rig.Rig;
import akin.model.rig.Setting;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What one unit is to be set to, in the order in which one sets it, what to aim for, and what is still open.
 *
 * @param unit name of the unit
 * @param heading the unit, its body and its part in the match
 * @param sections what stands on the card, from top to bottom; none is empty
 */
public record Card(String unit, String heading, List<Section> sections) {

    private static final String OPEN = "not planned";

    /** Copies the list. */
    public Card {
        sections = List.copyOf(sections);
    }

    /** Lines under a title. */
    public record Section(String title, List<Line> lines) {

        /** Copies the list. */
        public Section {
            lines = List.copyOf(lines);
        }
    }

    /** One line of a card. */
    public record Line(String label, String value) {}

    /** The cards of a rig, the hero's first. */
    public static List<Card> of(Rig rig, Assessment assessment) {
        FileNames names = new FileNames();
        List<OnTheDay> days = OnTheDay.of(rig);
        List<Card> cards = new ArrayList<>();
        for (Unit unit : rig.units()) {
            List<Line> shot =
                    days.isEmpty() ? List.of() : days.get(cards.size()).lines();
            cards.add(of(rig, unit, assessment, tables(unit, names.of(unit.name())), shot));
        }
        return cards;
    }

    /** Names of the look-up tables that {@code akin lut} writes, by unit; none for a unit that gets none. */
    public static List<Line> tables(Rig rig) {
        FileNames names = new FileNames();
        List<Line> lines = new ArrayList<>();
        for (Unit unit : rig.units()) {
            String tables = tables(unit, names.of(unit.name()));
            if (tables != null) {
                lines.add(new Line(unit.name(), tables));
            }
        }
        return lines;
    }

    /** Names of the look-up tables that {@code akin lut} writes for a unit; null when it writes none, or none is wanted. */
    private static @Nullable String tables(Unit unit, String name) {
        Monitor monitor = unit.monitor();
        Encoding encoding = unit.encoding();
        Encoding viewing = monitor == null ? null : monitor.viewing();
        if (encoding == null
                || unit.gamut() == null
                || LookTable.unfit(encoding) != null
                || (monitor != null && !monitor.through())
                || (viewing != null && !Viewing.shows(viewing))) {
            return null;
        }
        String to = viewing == null ? Viewing.USUAL : viewing.id();
        String start = FileNames.table(name, encoding.id(), to);
        List<Integer> sizes = LutDevice.fitting(unit, Cube.SIZES);
        Integer planned = monitor == null ? null : monitor.size();
        String cubes = sizes.stream()
                .filter(size -> planned == null || size.equals(planned))
                .map(size -> ", -" + size + ".cube")
                .collect(Collectors.joining());
        return start + ".clf" + cubes + ", by akin lut" + (to.equals(Viewing.USUAL) ? "" : " --viewing " + to);
    }

    private static Card of(Rig rig, Unit unit, Assessment assessment, @Nullable String tables, List<Line> shot) {
        String role = unit.hero() ? ", the hero" : ", matched to " + rig.match().hero();
        List<Line> aims = assessment.targets().stream()
                .filter(target -> target.unit().equals(unit.name()))
                .map(target -> new Line(target.what(), Numbers.spoken(target)))
                .toList();
        List<Line> open = assessment.findings().stream()
                .filter(finding -> finding.units().contains(unit.name()))
                .map(finding -> new Line(finding.severity().word(), finding.title() + " (" + finding.rule() + ")"))
                .toList();
        List<Section> sections = List.of(
                new Section("Set", settings(unit, tables)),
                new Section("Aim for", aims),
                new Section("Shot on the day", shot),
                new Section("After every power-up", recheck(unit)),
                new Section("Still open", open.isEmpty() ? List.of(new Line("nothing", "")) : open));
        return new Card(
                unit.name(),
                "Unit " + unit.name() + ": " + unit.body().called() + role,
                sections.stream().filter(section -> !section.lines().isEmpty()).toList());
    }

    /** The order in which one goes through a menu: what empties other settings first. */
    private static List<Line> settings(Unit unit, @Nullable String tables) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("mode", unit.mode().id()));
        lines.add(new Line("frame rate", unit.rate().spoken() + " fps"));
        lines.add(new Line(
                "profile", unit.profile() == null ? OPEN : unit.profile().id()));
        recording(unit.recording(), lines);
        lines.add(new Line("shutter", value(unit, Setting.SHUTTER, unit.shutter())));
        lines.add(new Line("ISO", value(unit, Setting.ISO, unit.iso())));
        lines.add(new Line("white", value(unit, Setting.WHITE, unit.white())));
        if (unit.tint() != null) {
            lines.add(new Line("tint", unit.tint().toString()));
        }
        lens(unit, lines);
        lines.add(new Line("filters", filters(unit.filters())));
        if (unit.stabilisation() != null) {
            lines.add(new Line("stabilisation", unit.stabilisation().word()));
        }
        if (unit.monitor() != null) {
            lines.add(new Line("LUT", lut(unit.monitor())));
        }
        if (tables != null) {
            lines.add(new Line("LUT files", tables));
        }
        return lines;
    }

    private static void recording(Recording recording, List<Line> lines) {
        Recorder recorder = recording.recorder();
        Codec codec = recording.codec();
        if (recorder != null) {
            Output output = recording.output();
            lines.add(new Line("output", output == null ? OPEN : output.id()));
            lines.add(new Line(
                    "recorder",
                    recorder.called()
                            + (recording.reads() == null ? "" : ", reading " + recording.reads() + " range")));
        }
        lines.add(new Line("codec", codec == null ? OPEN : codec.id()));
    }

    private static void lens(Unit unit, List<Line> lines) {
        FittedLens fitted = unit.lens();
        if (fitted == null) {
            lines.add(new Line("lens", OPEN));
            return;
        }
        String focal = fitted.focal() == null ? OPEN : fitted.focal().toString();
        String adapter =
                fitted.adapter() == null ? "" : " on " + fitted.adapter().id();
        lines.add(new Line("lens", fitted.lens().called() + " at " + focal + adapter));
        lines.add(new Line("stop", value(unit, Setting.STOP, fitted.stop())));
    }

    /** What the unit is watched through: the name of the look, then what its LUT is made for and where it works. */
    private static String lut(Monitor monitor) {
        if (!monitor.through()) {
            return "none: watched as it is recorded";
        }
        List<String> words = new ArrayList<>();
        words.add(monitor.look());
        if (monitor.encoding() != null) {
            words.add("for " + monitor.encoding().id()
                    + (monitor.gamut() == null ? "" : " in " + monitor.gamut().id()));
        }
        if (monitor.size() != null) {
            words.add(monitor.size() + " points");
        }
        if (monitor.heldBy() != null) {
            words.add("in the " + monitor.heldBy().word());
        }
        if (Boolean.TRUE.equals(monitor.recorded())) {
            words.add("recorded with the picture");
        }
        return String.join(", ", words);
    }

    private static String value(Unit unit, Setting setting, @Nullable Object value) {
        if (unit.leaves(setting)) {
            return "automatic";
        }
        return value == null ? OPEN : value.toString();
    }

    private static String filters(@Nullable List<NeutralDensity> filters) {
        if (filters == null) {
            return OPEN;
        }
        return filters.isEmpty()
                ? "none"
                : filters.stream().map(NeutralDensity::toString).collect(Collectors.joining(" and "));
    }

    /** What has to be looked at again after the unit, or its recorder, was switched off. */
    private static List<Line> recheck(Unit unit) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("body", recheck(unit.body().keepsSettings())));
        Recorder recorder = unit.recording().recorder();
        if (recorder != null) {
            lines.add(new Line("recorder", recheck(recorder.keepsSettings()) + "; and that it sees the signal"));
        }
        return lines;
    }

    private static String recheck(@Nullable Boolean keepsSettings) {
        if (keepsSettings == null) {
            return "all of the above: whether it keeps its settings is not known";
        }
        return keepsSettings ? "keeps its settings: a glance at rate, shutter and ISO" : "all of the above: it forgets";
    }
}
