package akin.engine.cli;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.RuleBase;
import akin.engine.assess.Verdict;
import akin.engine.book.CompiledBook;
import akin.engine.book.RuleBook;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Say;
import akin.engine.read.TextFile;
import akin.engine.read.YamlReader;
import akin.engine.report.JsonReport;
import akin.engine.report.Style;
import akin.engine.report.TextReport;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;

/** {@code akin check}: the main job. */
final class CheckCommand implements Command {

    /** Set by the launcher when the report goes to a terminal; Java 17 cannot tell by itself in a way later ones keep. */
    private static final String TERMINAL = "akin.terminal";

    private static final String FORMAT = "format";
    private static final String OUT = "out";
    private static final String FAIL_ON = "fail-on";
    private static final String TOLERANCE = "tolerance";
    private static final String ON = "on";
    private static final String QUIET = "quiet";
    private static final String TEXT = "text";
    private static final String JSON = "json";

    @Override
    public String name() {
        return "check";
    }

    @Override
    public String arguments() {
        return "RIG...";
    }

    @Override
    public String purpose() {
        return "Assesses planned rigs and reports what will not match, most urgent first.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(value(FORMAT, "FORMAT", "text (the default) or json"))
                .addOption(value(OUT, "FILE", "write the report to this file"))
                .addOption(
                        value(
                                FAIL_ON,
                                "SEVERITY",
                                "the least urgent thing that fails: baked-in, lossy (the default), fixable, advice or unchecked"))
                .addOption(value(TOLERANCE, "PROFILE", "a tolerance profile instead of the rig file's own"))
                .addOption(value(ON, "DATE", "the day for which waivers are looked at (default: today)"))
                .addOption(Option.builder()
                        .longOpt(QUIET)
                        .desc("print no report, only set the exit code")
                        .build());
    }

    private static Option value(String name, String argument, String description) {
        return Option.builder()
                .longOpt(name)
                .hasArg()
                .argName(argument)
                .desc(description)
                .build();
    }

    @Override
    public int run(CommandLine line, PrintWriter out) {
        List<String> rigs = line.getArgList();
        if (rigs.isEmpty()) {
            throw new BadInput("akin check", "a rig file is missing, such as: akin check rig.yaml");
        }
        String format = oneOf(line, FORMAT, TEXT, List.of(TEXT, JSON));
        List<String> words = Arrays.stream(FailOn.values()).map(FailOn::word).toList();
        FailOn failOn = FailOn.of(oneOf(line, FAIL_ON, FailOn.LOSSY.word(), words));
        // The rules take longest to load, so they load while the rig files are read and looked up.
        CompletableFuture<KieBase> rules = CompletableFuture.supplyAsync(RuleBase::builtIn);
        CompletableFuture<RuleBook> book = rules.thenApplyAsync(loaded -> CompiledBook.load());
        Binder binder = new Binder();
        Catalogue catalogue = Catalogue.builtIn(binder);
        List<Document> documents = rigs.stream().map(CheckCommand::read).toList();
        Checker checker = new Checker(rules::join, book::join, binder, catalogue);
        Terms terms = new Terms(line.getOptionValue(TOLERANCE), day(line));
        boolean failed = false;
        StringBuilder report = new StringBuilder();
        for (Document document : documents) {
            Assessment assessment = checker.check(document, terms, failOn);
            failed |= assessment.verdict() != Verdict.PASSES;
            report.append(report.isEmpty() || format.equals(JSON) ? "" : "\n")
                    .append(render(assessment, format, line.hasOption(OUT)));
        }
        deliver(report.toString(), line.getOptionValue(OUT), line.hasOption(QUIET), out);
        return failed ? Akin.FAILS : Akin.PASSES;
    }

    /** The day that waivers are looked at for. This is the only clock in Akin; {@code --on} makes a report reproducible. */
    private static LocalDate day(CommandLine line) {
        String on = line.getOptionValue(ON);
        if (on == null) {
            return LocalDate.now(ZoneId.systemDefault());
        }
        try {
            return LocalDate.parse(on);
        } catch (DateTimeParseException e) {
            throw new BadInput(
                    "akin check", "--on: read " + Say.quote(on) + "; a day belongs here, such as 2027-03-01");
        }
    }

    private static Document read(String rig) {
        return YamlReader.read(rig, TextFile.read(Path.of(rig), rig));
    }

    private static String oneOf(CommandLine line, String option, String otherwise, List<String> words) {
        String word = line.getOptionValue(option, otherwise);
        if (!words.contains(word)) {
            throw new BadInput(
                    "akin check",
                    "--" + option + ": read " + Say.quote(word) + "." + Say.nearest(word, words) + " Allowed: "
                            + Say.list(words));
        }
        return word;
    }

    private static String render(Assessment assessment, String format, boolean toFile) {
        if (format.equals(JSON)) {
            return JsonReport.render(assessment, Version.number());
        }
        boolean colour = !toFile && Boolean.getBoolean(TERMINAL) && System.getenv("NO_COLOR") == null;
        return TextReport.render(assessment, colour ? Style.COLOUR : Style.PLAIN);
    }

    private static void deliver(String report, @Nullable String file, boolean quiet, PrintWriter out) {
        if (file != null) {
            try {
                Files.writeString(Path.of(file), report);
            } catch (IOException e) {
                throw new BadInput(file, "the report cannot be written there");
            }
        } else if (!quiet) {
            out.print(report);
        }
    }
}
