package akin.engine.cli;

import akin.engine.read.BadInput;
import akin.engine.read.Say;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.HelpFormatter;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.UnrecognizedOptionException;
import org.jspecify.annotations.Nullable;

/** The command {@code akin}. */
public final class Akin {

    /** Exit code when nothing is at or above the failing severity. */
    public static final int PASSES = 0;

    /** Exit code when something is. */
    public static final int FAILS = 1;

    /** Exit code when the input or the call is wrong. */
    public static final int BAD_INPUT = 2;

    /** Exit code of a defect in Akin. */
    public static final int DEFECT = 3;

    private static final int WIDTH = 80;
    private static final String HELP = "help";
    private static final String VERSION = "version";

    private static final List<Command> COMMANDS = List.of(
            new CheckCommand(),
            new FixCommand(),
            new BaselineCommand(),
            new CardCommand(),
            new LutCommand(),
            new ProveCommand(),
            new SurveyCommand(),
            new SolveCommand(),
            new FootageCommand(),
            new ExplainCommand(),
            new GearCommand(),
            new RulesCommand());

    private Akin() {}

    /** Runs the command line and ends the process with its exit code. */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
        BufferedReader in = Boolean.getBoolean(Call.TERMINAL)
                ? new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))
                : null;
        int code = run(in, out, err, args);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Runs the command line with these writers and gives its exit code. */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        return run(null, out, err, args);
    }

    /**
     * Runs the command line and gives its exit code.
     *
     * @param in where questions are answered; null where nobody is there to answer
     */
    static int run(@Nullable BufferedReader in, PrintWriter out, PrintWriter err, String... args) {
        try {
            return dispatch(in, out, err, args);
        } catch (BadInput e) {
            err.println("akin: " + e.getMessage());
            return BAD_INPUT;
        } catch (OutOfMemoryError e) {
            err.println("akin: the memory that Java was given is used up; give it more, AKIN_JAVA_OPTS=-Xmx512m, or"
                    + " check fewer rig files at once");
            return DEFECT;
        } catch (RuntimeException | StackOverflowError e) {
            err.println("akin: a defect in Akin, please report it: " + Say.visible(e.toString()));
            return DEFECT;
        }
    }

    private static int dispatch(@Nullable BufferedReader in, PrintWriter out, PrintWriter err, String... args) {
        String word = args.length == 0 ? "" : args[0];
        if (word.equals("--" + HELP) || word.equals("-h")) {
            overview(out);
            return PASSES;
        }
        if (word.equals("--" + VERSION)) {
            out.println("akin " + Version.number());
            return PASSES;
        }
        List<String> words = COMMANDS.stream().map(Command::name).toList();
        Command command = COMMANDS.stream()
                .filter(c -> c.name().equals(word))
                .findFirst()
                .orElseThrow(() -> new BadInput(
                        "command",
                        (word.isEmpty()
                                        ? "a command is missing, such as: akin check rig.yaml."
                                        : "no command is called " + Say.quote(word) + "." + Say.nearest(word, words))
                                + " Commands: " + Say.list(words) + ". See akin --help"));
        Options options = command.options()
                .addOption(
                        Option.builder("h").longOpt(HELP).desc("show this help").build());
        CommandLine line = parse(command, options, Arrays.copyOfRange(args, 1, args.length));
        if (line.hasOption(HELP)) {
            HelpFormatter help = new HelpFormatter();
            help.printHelp(
                    out,
                    WIDTH,
                    "akin " + command.name() + " [options] " + command.arguments(),
                    command.purpose(),
                    options,
                    2,
                    2,
                    exitCodes());
            return PASSES;
        }
        return command.run(new Call(command, line, in, out, err));
    }

    private static CommandLine parse(Command command, Options options, String... args) {
        String place = command.name();
        try {
            CommandLine line = DefaultParser.builder()
                    .setAllowPartialMatching(false)
                    .build()
                    .parse(options, args);
            Set<Option> seen = new HashSet<>();
            for (Option option : line.getOptions()) {
                if (!seen.add(option) && !command.repeatable().contains(option.getLongOpt())) {
                    throw new BadInput(place, "the option --" + option.getLongOpt() + " stands there twice");
                }
            }
            return line;
        } catch (UnrecognizedOptionException e) {
            Set<String> known = options.getOptions().stream()
                    .map(option -> "--" + option.getLongOpt())
                    .collect(Collectors.toCollection(java.util.TreeSet::new));
            throw new BadInput(
                    place,
                    "no option is called " + Say.quote(e.getOption()) + "." + Say.nearest(e.getOption(), known)
                            + " Options: " + Say.list(known));
        } catch (MissingArgumentException e) {
            throw new BadInput(
                    place,
                    "the option --" + e.getOption().getLongOpt() + " needs a value: "
                            + e.getOption().getDescription());
        } catch (ParseException e) {
            throw new BadInput(place, "the options cannot be read: " + e.getMessage());
        }
    }

    private static void overview(PrintWriter out) {
        out.println("usage: akin COMMAND [options] ...");
        out.println("Checks a planned pairing of dissimilar cameras and says, most urgent first,");
        out.println("what will not match, why, and what to set.");
        for (Command command : COMMANDS) {
            out.println();
            out.println("  akin " + command.name() + " " + command.arguments());
            new HelpFormatter().printWrapped(out, WIDTH, 6, "      " + command.purpose());
        }
        out.println();
        out.println("  akin COMMAND --help    the options of a command");
        out.println("  akin --version         the version of this build");
        out.println(exitCodes());
    }

    private static String exitCodes() {
        return """

                Exit codes: 0 nothing at or above the failing severity, 1 something is,
                2 the input or the call is wrong, 3 a defect in Akin.""";
    }
}
