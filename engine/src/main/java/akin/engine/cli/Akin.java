package akin.engine.cli;

import akin.engine.read.BadInput;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command {@code akin}. */
@Command(
        name = "akin",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Checks a planned pairing of dissimilar cameras and says, most urgent first, what will not match"
                + " and what to set.",
        subcommands = {CheckCommand.class},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:nothing at or above the failing severity",
            "1:something is",
            "2:the input or the call is wrong",
            "3:a defect in Akin"
        })
public final class Akin implements Runnable {

    /** Exit code when nothing is at or above the failing severity. */
    public static final int PASSES = 0;

    /** Exit code when something is. */
    public static final int FAILS = 1;

    /** Exit code when the input or the call is wrong. */
    public static final int BAD_INPUT = 2;

    /** Exit code of a defect in Akin. */
    public static final int DEFECT = 3;

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(
                spec.commandLine(), "a command is missing, such as: akin check rig.yaml");
    }

    /** Runs the command line and ends the process with its exit code. */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
        int code = run(out, err, args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Runs the command line with these writers and gives its exit code. */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine commandLine = new CommandLine(new Akin())
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(false)
                .setParameterExceptionHandler((e, arguments) -> {
                    e.getCommandLine().getErr().println("akin: " + e.getMessage());
                    CommandLine.UnmatchedArgumentException.printSuggestions(
                            e, e.getCommandLine().getErr());
                    e.getCommandLine()
                            .getErr()
                            .println("Try: "
                                    + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
                    return BAD_INPUT;
                })
                .setExecutionExceptionHandler((e, line, result) -> {
                    if (e instanceof BadInput) {
                        line.getErr().println("akin: " + e.getMessage());
                        return BAD_INPUT;
                    }
                    line.getErr().println("akin: a defect in Akin, please report it: " + e);
                    return DEFECT;
                });
        return commandLine.execute(args);
    }
}
