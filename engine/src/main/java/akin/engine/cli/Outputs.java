package akin.engine.cli;

import akin.engine.read.BadInput;
import akin.engine.read.Say;
import akin.engine.report.Format;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.cli.Option;
import org.jspecify.annotations.Nullable;

/**
 * Where the reports of one call go. Each {@code --format} takes the {@code --out} that follows it; one that none follows goes
 * to the standard output, and only one can. A single {@code --out} without any format is the text report.
 *
 * @param all the reports in the order of the call; at least one
 */
record Outputs(List<Output> all) {

    /**
     * One report.
     *
     * @param format how it is written
     * @param file where to; null: the standard output
     */
    record Output(Format format, @Nullable String file) {}

    static Outputs of(Call call) {
        List<Output> outputs = new ArrayList<>();
        Format waiting = null;
        boolean anyFormat = call.has(Call.FORMAT);
        for (Option option : call.options()) {
            String value = option.getValue();
            if (Call.FORMAT.equals(option.getLongOpt())) {
                if (waiting != null) {
                    outputs.add(new Output(waiting, null));
                }
                waiting = format(call, value);
            } else if (Call.OUT.equals(option.getLongOpt())) {
                if (waiting == null && (anyFormat || !outputs.isEmpty())) {
                    throw new BadInput(
                            call.command(),
                            "--out " + Say.quote(value)
                                    + ": no format stands before it; write --format FORMAT --out FILE for each file");
                }
                outputs.add(new Output(waiting == null ? Format.TEXT : waiting, value));
                waiting = null;
            }
        }
        if (waiting != null || outputs.isEmpty()) {
            outputs.add(new Output(waiting == null ? Format.TEXT : waiting, null));
        }
        refuseClashes(call, outputs);
        return new Outputs(List.copyOf(outputs));
    }

    private static Format format(Call call, String word) {
        List<String> words = Format.words();
        if (!words.contains(word)) {
            throw new BadInput(
                    call.command(),
                    "--format: read " + Say.quote(word) + "." + Say.nearest(word, words) + " Allowed: "
                            + Say.list(words));
        }
        return Format.of(word);
    }

    private static void refuseClashes(Call call, List<Output> outputs) {
        List<String> toScreen = new ArrayList<>();
        Set<Path> files = new HashSet<>();
        for (Output output : outputs) {
            if (output.file() == null) {
                toScreen.add("--format " + output.format().word());
            } else if (!files.add(Call.path(output.file()).toAbsolutePath().normalize())) {
                throw new BadInput(call.command(), "--out " + Say.quote(output.file()) + ": two reports in one file");
            }
        }
        if (toScreen.size() > 1) {
            throw new BadInput(
                    call.command(),
                    "only one report can go to the standard output, and here are " + Say.list(toScreen)
                            + "; give each other one a file: --format FORMAT --out FILE");
        }
    }
}
