package akin.engine.cli;

import akin.engine.read.BadInput;
import akin.engine.read.Say;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.cli.Option;

/** A folder that a command writes several files to. What is there already stays, unless the call says otherwise. */
final class OutFolder {

    private static final String OVERWRITE = "overwrite";

    /** Writes the text of a file. */
    interface Content {
        void to(Appendable out) throws IOException;
    }

    private final String name;
    private final boolean overwrite;
    private final Map<String, Content> files = new LinkedHashMap<>();

    private OutFolder(String name, boolean overwrite) {
        this.name = name;
        this.overwrite = overwrite;
    }

    /** The folder that an option names, or another. */
    static OutFolder of(Call call, String option, String otherwise) {
        String named = call.value(option);
        return new OutFolder(named == null ? otherwise : named, call.has(OVERWRITE));
    }

    static Option overwrite() {
        return Option.builder()
                .longOpt(OVERWRITE)
                .desc("replace files of the same name; otherwise nothing is written where one is there")
                .build();
    }

    /** Adds a file, and gives the name by which reports call it. */
    String add(String file, Content content) {
        files.put(file, content);
        return called(file);
    }

    private String called(String file) {
        return name.isEmpty() || name.endsWith("/") ? name + file : name + "/" + file;
    }

    /**
     * Writes all files.
     *
     * @param inputs files that were read, which are never written over
     * @throws BadInput when one is there already, before any is written; or when one cannot be written
     */
    void write(Call call, List<String> inputs) {
        Path folder = Call.path(name);
        for (String file : files.keySet()) {
            if (!overwrite && Files.exists(folder.resolve(file), LinkOption.NOFOLLOW_LINKS)) {
                throw new BadInput(
                        called(file),
                        "this file is there already; nothing was written. Give --overwrite to replace it");
            }
            call.refuseToOverwrite(called(file), inputs);
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new BadInput(name, "this is no folder, and cannot be made one");
        }
        int written = 0;
        for (Map.Entry<String, Content> file : files.entrySet()) {
            OpenOption[] how = overwrite
                    ? new OpenOption[] {
                        StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE
                    }
                    : new OpenOption[] {StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE};
            try (BufferedWriter out =
                    Files.newBufferedWriter(folder.resolve(file.getKey()), StandardCharsets.UTF_8, how)) {
                file.getValue().to(out);
            } catch (IOException | UncheckedIOException e) {
                throw new BadInput(
                        called(file.getKey()),
                        "this file cannot be written whole; " + written + " of " + files.size() + " were written, into "
                                + Say.quote(name));
            }
            written++;
        }
    }
}
