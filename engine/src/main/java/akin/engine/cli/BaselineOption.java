package akin.engine.cli;

import akin.engine.assess.Assessment;
import akin.engine.assess.FailOn;
import akin.engine.baseline.Baseline;
import akin.engine.read.Binder;
import akin.engine.read.TextFile;
import akin.engine.read.YamlReader;
import akin.engine.report.Batch;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The baseline that a check was given. It names rig files by the way from its own folder, so that it holds wherever Akin is
 * started and whoever checked the production out.
 *
 * @param file the baseline file as it was named
 * @param baseline what it holds; nothing when it could not be compared with
 * @param trouble why it could not be; null when it could
 */
record BaselineOption(
        String file, Baseline baseline, @Nullable String trouble) {

    private static final Baseline NOTHING = new Baseline(new TreeMap<>());

    /**
     * Reads a baseline file.
     *
     * @throws akin.engine.read.BadInput when there is a file that is no baseline
     */
    static BaselineOption read(String file) {
        Path path = Call.path(file);
        if (!Files.exists(path)) {
            return new BaselineOption(
                    file, NOTHING, "there is no such file; akin baseline RIG... --out FILE writes one");
        }
        try {
            return new BaselineOption(
                    file, Baseline.read(YamlReader.read(file, TextFile.read(path, file)), new Binder()), null);
        } catch (Baseline.OtherVersion e) {
            return new BaselineOption(
                    file, NOTHING, e.getMessage() + "; akin baseline RIG... --out FILE writes it anew");
        }
    }

    /** The name of a rig file in a baseline file. */
    static String name(String baselineFile, String rig) {
        Path folder = Call.path(baselineFile).toAbsolutePath().normalize().getParent();
        Path path = Call.path(rig).toAbsolutePath().normalize();
        // On another drive there is no way from here to there.
        String name = folder == null || !java.util.Objects.equals(folder.getRoot(), path.getRoot())
                ? path.toString()
                : folder.relativize(path).toString();
        return File.separatorChar == '/' ? name : name.replace(File.separatorChar, '/');
    }

    Assessment apply(Assessment assessment, FailOn failOn) {
        return baseline.apply(name(file, assessment.file()), assessment, failOn);
    }

    /** What became of it. A rig file that was not looked at this time, or could not be, is as it was. */
    Baseline.Comparison compare(List<Batch.Part> parts, boolean strict) {
        List<Baseline.Gone> gone = new ArrayList<>();
        int known = 0;
        int fresh = 0;
        for (Batch.Part part : parts) {
            if (part instanceof Batch.Read read) {
                Assessment assessment = read.assessment();
                known += assessment.known().size();
                fresh += assessment.findings().size();
                gone.addAll(baseline.gone(name(file, part.file()), Baseline.count(assessment)));
            }
        }
        Path folder = Call.path(file).toAbsolutePath().normalize().getParent();
        for (String rig : baseline.rigs().keySet()) {
            if (folder != null && !Files.exists(folder.resolve(Call.path(rig)))) {
                gone.addAll(baseline.gone(rig, Collections.emptyMap()));
            }
        }
        return new Baseline.Comparison(file, known, fresh, gone, trouble, strict);
    }
}
