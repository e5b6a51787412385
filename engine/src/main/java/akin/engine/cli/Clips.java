package akin.engine.cli;

import akin.engine.read.BadInput;
import akin.engine.read.ClipSheet;
import akin.engine.read.ClipTable;
import akin.engine.read.ProbedClip;
import akin.engine.read.Say;
import akin.engine.read.TextFile;
import akin.model.footage.Clip;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The clips that a call names, each with the unit that shot it.
 *
 * <p>A name is a clip, what ffprobe printed of one (*.json), a table of clips (*.csv), or a folder of these. Whose a clip is, is
 * told by {@code UNIT=} before the name, by the column unit of a table, or else by the beginning of its file or reel name
 * ({@code clip-names} in the rig file, or what the body writes) and by the folder that it lies in, if that is called like a unit.
 * Where they tell nothing, or two things, it is an error: a clip that is held against another unit's plan says nothing.
 */
final class Clips {

    private static final int MOST_CLIPS = 10_000;
    private static final String JSON = ".json";
    private static final String CSV = ".csv";

    /** Of a folder, the files that are taken for clips. */
    private static final Set<String> KINDS = Set.of(
            JSON, CSV, ".mov", ".mp4", ".m4v", ".mxf", ".mkv", ".avi", ".mts", ".m2ts", ".ts", ".mpg", ".3gp", ".webm");

    private final Rig rig;
    private final Probe probe;
    private final List<String> units;
    private final List<Named> clips = new ArrayList<>();
    private final Set<Path> seen = new HashSet<>();

    /** What is said of a clip, the file it was said in, and the unit if the call names it. */
    private record Named(
            ClipSheet sheet, String from, @Nullable String unit, List<String> folders) {}

    private Clips(Rig rig, Probe probe) {
        this.rig = rig;
        this.probe = probe;
        this.units = rig.units().stream().map(Unit::name).toList();
    }

    /**
     * Reads the clips that these arguments name.
     *
     * @throws BadInput at the first that cannot be read, or of which nobody can tell whose it is
     */
    static List<Clip> of(List<String> arguments, Rig rig, Probe probe) {
        Clips reading = new Clips(rig, probe);
        arguments.forEach(reading::argument);
        return reading.told();
    }

    private void argument(String argument) {
        int sign = argument.indexOf('=');
        String before = sign < 0 ? "" : argument.substring(0, sign);
        if (units.contains(before)) {
            path(argument.substring(sign + 1), before);
            return;
        }
        if (sign > 0 && !Files.exists(Call.path(argument)) && before.matches("[A-Za-z0-9_-]+")) {
            throw new BadInput(
                    argument,
                    "no unit is called " + Say.quote(before) + "." + Say.nearest(before, units) + " Units: "
                            + Say.list(units));
        }
        path(argument, null);
    }

    private void path(String name, @Nullable String unit) {
        Path path = Call.path(name);
        if (!Files.isDirectory(path)) {
            file(path, name, unit);
            return;
        }
        List<Path> files;
        try (Stream<Path> all = Files.walk(path)) {
            files = all.filter(Files::isRegularFile)
                    .filter(file -> KINDS.contains(kind(file)))
                    .filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
                    .limit(MOST_CLIPS + 1L)
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            throw new BadInput(name, "not everything in this folder may be read");
        }
        if (files.isEmpty()) {
            throw new BadInput(
                    name, "no clip is in this folder: a file named *.mov, *.mp4, *.mxf or the like, or *.json");
        }
        if (files.size() > MOST_CLIPS) {
            throw new BadInput(name, "more than " + MOST_CLIPS + " clips are in this folder");
        }
        String start = name.endsWith("/") ? name : name + "/";
        files.forEach(file ->
                file(file, start + path.relativize(file).toString().replace(java.io.File.separatorChar, '/'), unit));
    }

    private void file(Path path, String name, @Nullable String unit) {
        if (!seen.add(path.toAbsolutePath().normalize())) {
            return;
        }
        List<String> folder = Stream.ofNullable(
                        path.toAbsolutePath().normalize().getParent())
                .flatMap(parent -> Stream.ofNullable(parent.getFileName()))
                .map(Path::toString)
                .toList();
        switch (kind(path)) {
            case CSV ->
                ClipTable.read(name, TextFile.read(path, name, "a table of clips"))
                        .forEach(sheet -> clips.add(new Named(
                                sheet, name, unit, sheet.folder().stream().toList())));
            case JSON -> {
                ClipSheet sheet = ProbedClip.read(name, TextFile.read(path, name, "a clip's saved metadata"));
                // Where the clip lay when it was read, and where what was saved of it lies now.
                clips.add(new Named(
                        sheet,
                        name,
                        unit,
                        Stream.concat(sheet.folder().stream(), folder.stream()).toList()));
            }
            default -> {
                TextFile.requireFile(path, name);
                clips.add(new Named(ProbedClip.read(name, probe.print(path, name)), name, unit, folder));
            }
        }
        if (clips.size() > MOST_CLIPS) {
            throw new BadInput(name, "more than " + MOST_CLIPS + " clips in one call");
        }
    }

    private static String kind(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        int dot = name.lastIndexOf('.');
        return dot < 0 ? "" : name.substring(dot);
    }

    /** Each clip with its unit, under a name that no other has. */
    private List<Clip> told() {
        Map<String, Integer> times = new HashMap<>();
        clips.forEach(clip -> times.merge(clip.sheet().file(), 1, Integer::sum));
        Set<String> taken = new HashSet<>();
        List<Clip> told = new ArrayList<>();
        for (Named clip : clips) {
            String file = clip.sheet().file();
            String unit = unit(clip);
            String label = file;
            if (times.getOrDefault(file, 0) > 1) {
                label = clip.folders().isEmpty() ? file : clip.folders().get(0) + "/" + file;
            }
            String first = label;
            for (int i = 2; !taken.add(label); i++) {
                label = first + " (" + i + ")";
            }
            told.add(clip.sheet().as(unit, label));
        }
        return List.copyOf(told);
    }

    private String unit(Named clip) {
        if (clip.unit() != null) {
            return clip.unit();
        }
        ClipSheet sheet = clip.sheet();
        if (sheet.unit().isPresent()) {
            String said = sheet.unit().get();
            if (!units.contains(said)) {
                throw sheet.error(
                        "unit",
                        "no unit is called " + Say.quote(said) + "." + Say.nearest(said, units) + " Units: "
                                + Say.list(units));
            }
            return said;
        }
        Set<String> told = new HashSet<>(byName(sheet));
        clip.folders().stream().filter(units::contains).forEach(told::add);
        if (told.size() == 1) {
            return told.iterator().next();
        }
        String which = told.isEmpty()
                ? "nothing tells which unit shot it."
                        + Say.nearest(
                                clip.folders().isEmpty()
                                        ? sheet.file()
                                        : clip.folders().get(0),
                                units)
                : "its names tell of "
                        + String.join(" and of ", told.stream().sorted().toList()) + ".";
        throw new BadInput(
                clip.from(),
                which + " Write UNIT= before it, such as: " + units.get(0) + "=" + sheet.file() + ". Units: "
                        + Say.list(units) + ". Folders called like units, and clip-names in the rig file, tell too");
    }

    /** The units whose clips begin like this one or its reel; of several beginnings that fit, the longest. */
    private Set<String> byName(ClipSheet sheet) {
        int longest = 0;
        Set<String> fitting = new HashSet<>();
        for (Unit unit : rig.units()) {
            String prefix = prefix(unit);
            if (prefix == null
                    || prefix.isEmpty()
                    || !(starts(sheet.file(), prefix) || starts(sheet.reel().orElse(""), prefix))) {
                continue;
            }
            if (prefix.length() > longest) {
                longest = prefix.length();
                fitting.clear();
            }
            if (prefix.length() == longest) {
                fitting.add(unit.name());
            }
        }
        return fitting;
    }

    private static boolean starts(String name, String prefix) {
        return name.regionMatches(true, 0, prefix, 0, prefix.length());
    }

    private static @Nullable String prefix(Unit unit) {
        return akin.model.derived.ClipNames.prefix(unit);
    }
}
