package akin.engine.cli;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.RuleBase;
import akin.engine.assess.Verdict;
import akin.engine.book.CompiledBook;
import akin.engine.book.RuleBook;
import akin.engine.equip.Catalogue;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.TextFile;
import akin.engine.read.YamlReader;
import akin.engine.report.JsonReport;
import akin.engine.report.Style;
import akin.engine.report.TextReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code akin check}: the main job. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Assesses planned rigs and reports what will not match, most urgent first.")
final class CheckCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "RIG", description = "rig files")
    private List<Path> rigs = List.of();

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "text or json (default: ${DEFAULT-VALUE})")
    private String format = "text";

    @Option(names = "--out", paramLabel = "FILE", description = "write the report to a file")
    private @Nullable Path out;

    @Option(
            names = "--fail-on",
            paramLabel = "SEVERITY",
            defaultValue = "lossy",
            description = "least urgent thing that fails: baked-in, lossy, fixable, advice or unchecked"
                    + " (default: ${DEFAULT-VALUE})")
    private String failOn = "lossy";

    @Option(names = "--tolerance", paramLabel = "PROFILE", description = "tolerance profile instead of the rig file's")
    private @Nullable String tolerance;

    @Option(names = "--quiet", description = "print no report, only set the exit code")
    private boolean quiet;

    @Override
    public Integer call() {
        FailOn least = Arrays.stream(FailOn.values())
                .filter(word -> word.word().equals(failOn))
                .findFirst()
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "--fail-on: read '" + failOn + "'; allowed: baked-in, lossy, fixable, advice, unchecked"));
        if (!format.equals("text") && !format.equals("json")) {
            throw new ParameterException(spec.commandLine(), "--format: read '" + format + "'; allowed: text, json");
        }
        // The rules take longest to load, so they load while the first rig file is read.
        CompletableFuture<KieBase> rules = CompletableFuture.supplyAsync(RuleBase::builtIn);
        CompletableFuture<RuleBook> book = CompletableFuture.supplyAsync(CompiledBook::load);
        Binder binder = new Binder();
        Catalogue catalogue = Catalogue.builtIn(binder);
        List<Document> documents = rigs.stream()
                .map(rig -> YamlReader.read(rig.toString(), TextFile.read(rig, rig.toString())))
                .toList();
        Checker checker = new Checker(rules.join(), book.join(), binder, catalogue);
        boolean failed = false;
        StringBuilder report = new StringBuilder();
        for (Document document : documents) {
            Assessment assessment = checker.check(document, tolerance, least);
            failed |= assessment.verdict() != Verdict.PASSES;
            report.append(report.isEmpty() || format.equals("json") ? "" : "\n").append(render(assessment));
        }
        deliver(report.toString());
        return failed ? Akin.FAILS : Akin.PASSES;
    }

    private String render(Assessment assessment) {
        if (format.equals("json")) {
            return JsonReport.render(assessment, Version.number());
        }
        boolean colour = out == null && System.console() != null && System.getenv("NO_COLOR") == null;
        return TextReport.render(assessment, colour ? Style.COLOUR : Style.PLAIN);
    }

    private void deliver(String report) {
        Path file = out;
        if (file != null) {
            try {
                Files.writeString(file, report);
            } catch (IOException e) {
                throw new BadInput(file.toString(), "the report cannot be written there");
            }
        } else if (!quiet) {
            spec.commandLine().getOut().print(report);
        }
    }
}
