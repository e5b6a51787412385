package akin.engine.cli;

import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.TextFile;
import akin.engine.read.YamlReader;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The rig files that a call names, by themselves or by a folder that holds them.
 *
 * <p>A folder stands for every rig file in it, at any depth, in the order of their names: each file named *.yaml or *.yml
 * that has the keys {@code akin} and {@code units} at its top. Folders whose name starts with a dot are left out, links are
 * not followed. A file that is named itself is a rig file whatever stands in it.
 *
 * @param names the files as reports name them, in the order of the call; none twice
 * @param one true when one file was named by itself
 * @param passedOver how many YAML files in the folders are no rigs
 */
record RigFiles(List<String> names, boolean one, int passedOver) {

    /** Both keys of a file that cannot be read as YAML: a mistake in a rig must not make it look like no rig. */
    private static final Pattern AKIN = Pattern.compile("(?m)^\\uFEFF?[\"']?akin[\"']?[ \\t]*:");

    private static final Pattern UNITS = Pattern.compile("(?m)^\\uFEFF?[\"']?units[\"']?[ \\t]*:");

    static RigFiles of(List<String> arguments) {
        List<String> names = new ArrayList<>();
        Set<Path> seen = new HashSet<>();
        boolean folders = false;
        int passedOver = 0;
        for (String argument : arguments) {
            Path path = Call.path(argument);
            if (!Files.isDirectory(path)) {
                if (seen.add(path.toAbsolutePath().normalize())) {
                    names.add(argument);
                }
                continue;
            }
            folders = true;
            int before = names.size();
            int others = 0;
            boolean known = false;
            for (Path file : yaml(path, argument)) {
                if (!isRig(file)) {
                    others++;
                } else if (seen.add(file.toAbsolutePath().normalize())) {
                    names.add(name(argument, path, file));
                } else {
                    known = true;
                }
            }
            if (names.size() == before && !known) {
                throw new BadInput(
                        argument,
                        "no rig file is in this folder: a file named *.yaml or *.yml with the keys akin and units"
                                + (others == 0 ? "" : "; of " + others + " such files none has both"));
            }
            passedOver += others;
        }
        return new RigFiles(List.copyOf(names), !folders && names.size() == 1, passedOver);
    }

    /** The folder as it was named, and the way from there, with slashes on every system. */
    private static String name(String argument, Path folder, Path file) {
        String below = folder.relativize(file).toString();
        String slashed = File.separatorChar == '/' ? below : below.replace(File.separatorChar, '/');
        return argument.isEmpty() || argument.endsWith("/") ? argument + slashed : argument + "/" + slashed;
    }

    private static List<Path> yaml(Path folder, String argument) {
        List<Path> files = new ArrayList<>();
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path at, BasicFileAttributes attributes) {
                    boolean hidden = !at.equals(folder)
                            && String.valueOf(at.getFileName()).startsWith(".");
                    return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    String name = String.valueOf(file.getFileName());
                    if (attributes.isRegularFile() && (name.endsWith(".yaml") || name.endsWith(".yml"))) {
                        files.add(file);
                    }
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException | UncheckedIOException e) {
            throw new BadInput(argument, "not everything in this folder may be read");
        }
        files.sort(java.util.Comparator.comparing(file -> name("", folder, file)));
        return files;
    }

    private static boolean isRig(Path file) {
        String text;
        try {
            text = TextFile.read(file, file.toString());
        } catch (BadInput e) {
            return false;
        }
        try {
            Document document = YamlReader.read(file.toString(), text);
            return document.root() instanceof Node.Fields fields
                    && fields.fields().containsKey("akin")
                    && fields.fields().containsKey("units");
        } catch (BadInput e) {
            return AKIN.matcher(text).find() && UNITS.matcher(text).find();
        }
    }
}
