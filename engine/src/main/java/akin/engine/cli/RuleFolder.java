package akin.engine.cli;

import akin.engine.book.RulePack;
import akin.engine.read.BadInput;
import akin.engine.read.TextFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Reads a folder of rules, within bounds; what lies there as a link is refused, since it could lead anywhere. */
final class RuleFolder {

    private static final int DEEPEST = 6;
    private static final int MOST_FILES = 500;

    private RuleFolder() {}

    /**
     * The rules and pages of a folder.
     *
     * @param name how it is called in messages
     * @throws BadInput when it is no folder of rules, or a file cannot be read as text
     */
    static RulePack read(String name, Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new BadInput(
                    name,
                    Files.exists(folder)
                            ? "this is a file; name the folder of rules that it lies in"
                            : "there is no folder of rules here");
        }
        SortedMap<String, String> files = new TreeMap<>();
        for (Path file : below(name, folder)) {
            String path = folder.relativize(file).toString().replace('\\', '/');
            if (Files.isSymbolicLink(file)) {
                throw new BadInput(name + "/" + path, "this is a link; rules lie in their folder themselves");
            }
            if (RulePack.holds(path) && !Files.isDirectory(file)) {
                files.put(path, TextFile.read(file, name + "/" + path).replace("\r\n", "\n"));
                if (files.size() > MOST_FILES) {
                    throw new BadInput(name, "more than the " + MOST_FILES + " files a folder of rules may have");
                }
            }
        }
        RulePack pack = new RulePack(name, files);
        if (pack.rules().isEmpty()) {
            throw new BadInput(name, "no file of rules, named *" + RulePack.DRL + ", is in this folder");
        }
        return pack;
    }

    /** Everything below a folder, what is hidden left out. */
    private static List<Path> below(String name, Path folder) {
        try (Stream<Path> all = Files.walk(folder, DEEPEST)) {
            return all.filter(path -> !path.equals(folder))
                    .filter(path -> Stream.iterate(folder.relativize(path), p -> p != null, Path::getParent)
                            .noneMatch(p -> String.valueOf(p.getFileName()).startsWith(".")))
                    .limit(MOST_FILES * 10L)
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            throw new BadInput(name, "this folder cannot be read");
        }
    }
}
