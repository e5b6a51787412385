package akin.engine.equip;

import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.ChartFrame;
import akin.engine.read.CsvReadings;
import akin.engine.read.Document;
import akin.engine.read.ReadingsSheet;
import akin.engine.read.ReadingsSheet.LevelRead;
import akin.engine.read.ReadingsSheet.LevelsSheet;
import akin.engine.read.ReadingsSheet.ReadingSheet;
import akin.engine.read.Say;
import akin.engine.read.TextFile;
import akin.engine.read.YamlReader;
import akin.model.colour.Chart;
import akin.model.gear.SignalRange;
import akin.model.rig.Levels;
import akin.model.rig.Reading;
import akin.model.rig.Readings;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Readings of test shots with every word looked up and every frame sampled; which units there are is for the rig to say.
 *
 * @param document where they are written
 * @param prefix path to them in the document; empty, or ending in a dot
 * @param readings what was read
 */
public record ReadingsFile(Document document, String prefix, Readings readings) {

    private static final String CSV = ".csv";

    /**
     * Reads a file of readings: YAML, or CSV where its name ends so. Frames lie beside it.
     *
     * @param path the file
     * @param name how it was named, for messages
     */
    public static ReadingsFile read(Path path, String name, Binder binder) {
        String text = TextFile.read(path, name);
        boolean csv = name.toLowerCase(Locale.ROOT).endsWith(CSV);
        Document document = csv ? CsvReadings.read(name, text) : YamlReader.read(name, text);
        if (document.at("akin-readings").isEmpty()) {
            throw new BadInput(
                    name,
                    document.root().place(),
                    "the key 'akin-readings' is missing; a file of readings starts with akin-readings: "
                            + ReadingsSheet.VERSION);
        }
        ReadingsSheet sheet = binder.bind(document, ReadingsSheet.class);
        if (!Integer.valueOf(ReadingsSheet.VERSION).equals(sheet.akinReadings())) {
            throw document.error(
                    "akin-readings", "a file of readings starts with akin-readings: " + ReadingsSheet.VERSION);
        }
        Path folder = path.toAbsolutePath().getParent();
        return new ReadingsFile(document, "", new Reader(document, "", folder, binder).readings(sheet));
    }

    /** Readings that stand in a rig file. They have no frames: a rig file opens no other file. */
    static ReadingsFile inRig(Document rig, ReadingsSheet sheet, Binder binder) {
        String prefix = "readings.";
        if (sheet.akinReadings() != null) {
            throw rig.error(prefix + "akin-readings", "this key is for a file of readings of its own");
        }
        return new ReadingsFile(rig, prefix, new Reader(rig, prefix, null, binder).readings(sheet));
    }

    /** The readings, all of units that there are. */
    Readings of(Collection<String> units) {
        for (String unit : readings.units().keySet().stream().sorted().toList()) {
            if (!units.contains(unit)) {
                String path = prefix + "units." + unit;
                throw new BadInput(
                        document.file(),
                        document.keyOf(path).orElseGet(() -> document.placeOf(path)),
                        "read " + Say.quote(unit) + "; the units are " + Say.list(units) + "."
                                + Say.nearest(unit, units));
            }
        }
        return readings;
    }

    /** One reading of a document. */
    private static final class Reader {
        private final Document document;
        private final String prefix;
        private final @Nullable Path folder;
        private final Binder binder;

        Reader(Document document, String prefix, @Nullable Path folder, Binder binder) {
            this.document = document;
            this.prefix = prefix;
            this.folder = folder;
            this.binder = binder;
        }

        Readings readings(ReadingsSheet sheet) {
            double give = sheet.give();
            if (give < 0) {
                throw document.error(prefix + "precision", "read " + sheet.precision() + "; it is 0 % or more");
            }
            Chart chart = sheet.chart() == null ? null : chart(sheet.chart());
            if (sheet.units().values().stream().allMatch(ReadingSheet::empty)) {
                throw document.error(
                        prefix + "units",
                        "no reading is in here, so there is nothing to prove; write what was read of each unit, such as"
                                + " units: {A: {grey: 41 %}, B: {grey: 42 %}}");
            }
            Map<String, Reading> units = new LinkedHashMap<>();
            sheet.units().forEach((unit, reading) -> {
                String path = prefix + "units." + unit + ".";
                units.put(unit, sound(path, reading(path, reading, give)));
                if (chart == null && !units.get(unit).patches().isEmpty()) {
                    throw document.error(
                            path + (reading.frame() == null ? "patches" : "frame"),
                            "of which edition the chart is decides what its patches are: write chart: "
                                    + String.join(
                                            " or chart: ",
                                            Charts.packaged(binder).keySet())
                                    + "; the date is on its back");
                }
            });
            return new Readings(chart, units);
        }

        /** Nothing is brighter than what clips: one of the two was misread, or read of another signal. */
        private Reading sound(String path, Reading reading) {
            Levels white = reading.white();
            Levels clip = reading.clip();
            if (white != null && clip != null && white.highest() - white.give() > clip.highest() + clip.give()) {
                throw document.error(
                        path + "white",
                        "this white is brighter than the clip of the same unit, where highlights stop rising: read both"
                                + " again, with the same aid on the same signal");
            }
            return reading;
        }

        private Chart chart(String id) {
            Map<String, Chart> charts = Charts.packaged(binder);
            Chart chart = charts.get(id);
            if (chart == null) {
                throw document.error(
                        prefix + "chart",
                        "no chart is called " + Say.quote(id) + "." + Say.nearest(id, charts.keySet()) + " Allowed: "
                                + Say.list(charts.keySet()));
            }
            return chart;
        }

        private Reading reading(String path, ReadingSheet sheet, double give) {
            ReadingsSheet.BlackSheet black = sheet.black();
            if (sheet.patches() != null && sheet.frame() != null) {
                throw document.error(path + "frame", "patches are typed, or sampled from a frame, not both");
            }
            Double spread = null;
            List<Levels> patches = List.of();
            if (sheet.patches() != null) {
                patches = patches(path + "patches", sheet.patches(), give);
            } else if (sheet.frame() != null) {
                ChartFrame frame = frame(path + "frame", sheet.frame());
                patches = levels(frame, sheet.frame().levels(), give);
                spread = frame.spread();
            }
            return new Reading(
                    levels(sheet.grey(), give),
                    levels(sheet.white(), give),
                    levels(sheet.clip(), give),
                    black == null
                            ? null
                            : Levels.of(
                                    black.level().full(),
                                    Math.max(give, black.level().half())),
                    black == null ? null : noise(path + "black.noise", black.noise()),
                    patches,
                    spread);
        }

        private Levels noise(String path, LevelRead noise) {
            if (!(noise.difference() > 0)) {
                throw document.error(path, "read " + noise.level() + "; noise is over 0, such as 0.3 %");
            }
            return Levels.of(noise.difference(), Math.min(noise.half(), noise.difference() / 2));
        }

        private List<Levels> patches(String path, List<LevelsSheet> sheets, double give) {
            if (sheets.size() != Chart.PATCHES) {
                throw document.error(
                        path, "read " + sheets.size() + " patches; the chart has " + Chart.PATCHES + ", row by row");
            }
            List<Levels> patches = new ArrayList<>();
            for (LevelsSheet sheet : sheets) {
                Levels levels = levels(sheet, give);
                if (levels == null || !levels.coloured()) {
                    throw document.error(
                            path + "." + patches.size(), "a patch of the chart has three levels: [red, green, blue]");
                }
                patches.add(levels);
            }
            return patches;
        }

        private static @Nullable Levels levels(@Nullable LevelsSheet sheet, double give) {
            if (sheet == null) {
                return null;
            }
            List<LevelRead> read = sheet.levels();
            double widest = read.stream().mapToDouble(LevelRead::half).max().orElseThrow();
            if (read.size() == 1) {
                return Levels.of(read.get(0).full(), Math.max(give, widest));
            }
            return new Levels(
                    read.get(0).full(), read.get(1).full(), read.get(2).full(), Math.max(give, widest), true);
        }

        private ChartFrame frame(String path, ReadingsSheet.FrameSheet sheet) {
            if (folder == null) {
                throw document.error(
                        path, "a rig file opens no picture; put this into a file of readings, for akin prove");
            }
            Path file;
            try {
                file = Path.of(sheet.file());
            } catch (InvalidPathException e) {
                throw document.error(path + ".file", "read " + Say.quote(sheet.file()) + "; that names no file here");
            }
            if (file.isAbsolute()) {
                throw document.error(
                        path + ".file",
                        "read " + Say.quote(sheet.file()) + "; name the frame as it lies beside the file of readings");
            }
            try {
                return ChartFrame.sample(folder.resolve(file), sheet.corners());
            } catch (ChartFrame.Unreadable e) {
                throw document.error(path + (e.corners() ? ".corners" : ".file"), Say.of(e));
            }
        }

        /** What a frame holds is known to a part of a code; how even a patch was says how well its mean is. */
        private static List<Levels> levels(ChartFrame frame, @Nullable SignalRange range, double give) {
            boolean legal = range == SignalRange.LEGAL;
            double span = legal ? 876.0 / 1023 : 1;
            double black = legal ? 64.0 / 1023 : 0;
            return frame.patches().stream()
                    .map(patch -> new Levels(
                            black + span * patch.mean().get(0),
                            black + span * patch.mean().get(1),
                            black + span * patch.mean().get(2),
                            Math.max(give, span * patch.uncertainty()),
                            true))
                    .toList();
        }
    }
}
