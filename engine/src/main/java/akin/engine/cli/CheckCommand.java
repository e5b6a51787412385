package akin.engine.cli;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.Verdict;
import akin.engine.equip.Terms;
import akin.engine.read.Document;
import akin.engine.report.JsonReport;
import akin.engine.report.Style;
import akin.engine.report.TextReport;
import akin.engine.report.html.HtmlReport;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;

/** {@code akin check}: the main job. */
final class CheckCommand implements Command {

    /** Set by the launcher when the report goes to a terminal; Java 17 cannot tell by itself in a way later ones keep. */
    private static final String TERMINAL = "akin.terminal";

    private static final String FAIL_ON = "fail-on";
    private static final String TOLERANCE = "tolerance";
    private static final String QUIET = "quiet";
    private static final String JSON = "json";
    private static final String HTML = "html";

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
                .addOption(Call.format("text (the default), json, or html: one page with pictures, of one rig file"))
                .addOption(Call.out())
                .addOption(
                        Call.value(
                                FAIL_ON,
                                "SEVERITY",
                                "the least urgent thing that fails: baked-in, lossy (the default), fixable, advice or unchecked"))
                .addOption(Call.value(TOLERANCE, "PROFILE", "a tolerance profile instead of the rig file's own"))
                .addOption(Call.gear())
                .addOption(Call.on())
                .addOption(Option.builder()
                        .longOpt(QUIET)
                        .desc("print no report, only set the exit code")
                        .build());
    }

    @Override
    public int run(Call call) {
        String format = call.format(List.of(Call.TEXT, JSON, HTML));
        List<String> rigs = format.equals(HTML) ? List.of(call.rig()) : call.rigs();
        List<String> words = Arrays.stream(FailOn.values()).map(FailOn::word).toList();
        FailOn failOn = FailOn.of(call.oneOf(FAIL_ON, FailOn.LOSSY.word(), words));
        Terms terms = new Terms(call.value(TOLERANCE), call.day());
        Checker checker = call.checker();
        List<Document> documents = rigs.stream().map(call::read).toList();
        boolean failed = false;
        List<String> reports = new ArrayList<>();
        for (Document document : documents) {
            Assessment assessment = checker.check(document, terms, failOn);
            failed |= assessment.verdict() != Verdict.PASSES;
            reports.add(
                    format.equals(HTML)
                            ? HtmlReport.render(assessment, checker.equip(document, terms), Version.number())
                            : render(assessment, format, call.toFile()));
        }
        if (!call.has(QUIET) || call.toFile()) {
            call.deliver(joined(reports, format));
        }
        return failed ? Akin.FAILS : Akin.PASSES;
    }

    /** One report as it is; of several, texts one below the other, or one JSON array. */
    private static String joined(List<String> reports, String format) {
        return format.equals(JSON) && reports.size() > 1
                ? "[" + String.join(",", reports).stripTrailing() + "]\n"
                : String.join("\n", reports);
    }

    private static String render(Assessment assessment, String format, boolean toFile) {
        if (format.equals(JSON)) {
            return JsonReport.render(assessment, Version.number());
        }
        boolean colour = !toFile && Boolean.getBoolean(TERMINAL) && System.getenv("NO_COLOR") == null;
        return TextReport.render(assessment, colour ? Style.COLOUR : Style.PLAIN);
    }
}
