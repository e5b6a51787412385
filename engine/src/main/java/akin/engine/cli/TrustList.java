package akin.engine.cli;

import akin.engine.book.RulePack;
import akin.engine.read.BadInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The folders of rules that the person who runs Akin trusts, each as it was when they said so: a line with its digest and its
 * path. Whatever changes in a folder voids its line.
 */
final class TrustList {

    private static final String FILE = "trusted-rules";
    private static final int LARGEST = 1_000_000;

    /**
     * A trusted folder.
     *
     * @param digest of its rules when they were trusted
     * @param folder where it lies
     */
    record Line(String digest, String folder) {}

    private final Path file;
    private final List<Line> lines;

    private TrustList(Path file, List<Line> lines) {
        this.file = file;
        this.lines = lines;
    }

    /** The list of whoever runs this; empty where there is no place to keep one. */
    static Optional<TrustList> own() {
        return OwnFiles.settings().map(folder -> of(folder.resolve(FILE)));
    }

    static TrustList of(Path file) {
        byte[] bytes = OwnFiles.read(file, LARGEST);
        List<Line> lines = new ArrayList<>();
        if (bytes != null) {
            for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n", -1)) {
                if (line.matches("[0-9a-f]{64}  .+")) {
                    lines.add(new Line(line.substring(0, 64), line.substring(66)));
                }
            }
        }
        return new TrustList(file, lines);
    }

    /** Every line, in order. */
    List<Line> lines() {
        return List.copyOf(lines);
    }

    /** Trusts a folder as it is now. */
    void trust(Path folder, RulePack pack) {
        String name = whole(folder);
        lines.removeIf(line -> line.folder().equals(name));
        lines.add(new Line(pack.digest(), name));
        write();
    }

    /** Takes a folder from the list; false when it was not on it. */
    boolean distrust(Path folder) {
        boolean was = lines.removeIf(line -> line.folder().equals(whole(folder)));
        if (was) {
            write();
        }
        return was;
    }

    private static String whole(Path folder) {
        return folder.toAbsolutePath().normalize().toString();
    }

    private void write() {
        StringBuilder text = new StringBuilder();
        lines.forEach(line ->
                text.append(line.digest()).append("  ").append(line.folder()).append('\n'));
        try {
            OwnFiles.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new BadInput(file.toString(), "the list of trusted rules cannot be written there");
        }
    }
}
