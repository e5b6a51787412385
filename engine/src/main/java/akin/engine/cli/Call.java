package akin.engine.cli;

import akin.engine.assess.AddedRules;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.RuleBase;
import akin.engine.book.CompiledBook;
import akin.engine.book.RuleBook;
import akin.engine.book.RulePack;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Lensfun;
import akin.engine.equip.ReadingsFile;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.GearSheet;
import akin.engine.read.Say;
import akin.engine.read.TextFile;
import akin.engine.read.YamlReader;
import akin.engine.report.Style;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Option;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;

/** One call of a command: its options as several commands understand them, and the files they name. */
final class Call {

    static final String TEXT = "text";

    /** Set by the launcher when the report goes to a terminal; Java 17 cannot tell by itself in a way later ones keep. */
    static final String TERMINAL = "akin.terminal";

    static final String FORMAT = "format";
    static final String OUT = "out";

    private static final String ON = "on";
    private static final String GEAR = "gear";
    private static final String TOLERANCE = "tolerance";
    private static final String READINGS = "readings";
    private static final String FAIL_ON = "fail-on";
    private static final String LENSFUN = "lensfun";

    /** Takes the folders of rules that the person trusts for this call. */
    static final String RULES = "rules";

    private final String command;
    private final CommandLine line;
    private final @Nullable BufferedReader in;
    private final PrintWriter out;
    private final PrintWriter err;

    Call(Command command, CommandLine line, @Nullable BufferedReader in, PrintWriter out, PrintWriter err) {
        this.command = command.name();
        this.line = line;
        this.in = in;
        this.out = out;
        this.err = err;
    }

    static Option format(String description) {
        return value(FORMAT, "FORMAT", description);
    }

    static Option out() {
        return value(OUT, "FILE", "write the report to this file");
    }

    static Option on() {
        return value(ON, "DATE", "the day for which waivers are looked at (default: today)");
    }

    static Option readings() {
        return value(READINGS, "FILE", "what was read of test shots, in the place of what the rig file has");
    }

    static Option tolerance() {
        return value(TOLERANCE, "PROFILE", "a tolerance profile instead of the rig file's own");
    }

    static Option failOn(String what) {
        return value(
                FAIL_ON, "SEVERITY", what + " that fails: baked-in, lossy (the default), fixable, advice or unchecked");
    }

    static Option gear() {
        return value(GEAR, "DIR", "a folder of gear files that come before the catalogue");
    }

    static Option rules() {
        return value(
                RULES,
                "DIR",
                "a folder of rules to go by as well; they run as program code, so name only what you trust; may be given"
                        + " more than once");
    }

    static Option lensfun(String description) {
        return Option.builder()
                .longOpt(LENSFUN)
                .optionalArg(true)
                .numberOfArgs(1)
                .argName("DIR")
                .desc(description + "; without DIR, as Debian installs it in " + Lensfun.INSTALLED)
                .build();
    }

    /** As {@link #lensfun(String)}, for words of a rig file. */
    static Option lensfunGear() {
        return lensfun("the cameras and lenses of the lensfun database behind --gear");
    }

    static Option value(String name, String argument, String description) {
        return Option.builder()
                .longOpt(name)
                .hasArg()
                .argName(argument)
                .desc(description)
                .build();
    }

    /** The word that called it. */
    String command() {
        return command;
    }

    /** The options that were given, in order. */
    List<Option> options() {
        return List.of(line.getOptions());
    }

    /** A day, a limit: what a check goes by, beside the rig file. */
    Terms terms() {
        Terms terms = new Terms(line.getOptionValue(TOLERANCE), day());
        String readings = line.getOptionValue(READINGS);
        return readings == null ? terms : terms.with(readings(readings));
    }

    /** A file of readings. */
    static ReadingsFile readings(String file) {
        return ReadingsFile.read(path(file), file, new Binder());
    }

    /** The least urgent thing that fails. */
    FailOn failOn() {
        List<String> words = Arrays.stream(FailOn.values()).map(FailOn::word).toList();
        return FailOn.of(oneOf(FAIL_ON, FailOn.LOSSY.word(), words));
    }

    /** Says something beside the report. */
    void say(String message) {
        err.println("akin: " + Say.visible(message));
    }

    /** Prints a report. */
    void print(String report) {
        out.print(report);
    }

    /** Hands on what was printed so far. */
    void flush() {
        out.flush();
    }

    /** What stands behind the options. */
    List<String> arguments() {
        return line.getArgList();
    }

    /** The files that were named; at least one. */
    List<String> rigs() {
        List<String> rigs = line.getArgList();
        if (rigs.isEmpty()) {
            String taken = line.getOptionValue(LENSFUN);
            throw new BadInput(
                    command,
                    "a rig file is missing, such as: akin " + command + " rig.yaml"
                            + (taken == null
                                    ? ""
                                    : "; --lensfun took " + Say.quote(taken) + " for its folder, so write it last"));
        }
        return rigs;
    }

    /** The one file that was named. */
    String rig() {
        if (rigs().size() > 1) {
            throw new BadInput(command, "one rig file is wanted, such as: akin " + command + " rig.yaml");
        }
        return rigs().get(0);
    }

    boolean has(String option) {
        return line.hasOption(option);
    }

    @Nullable
    String value(String option) {
        return line.getOptionValue(option);
    }

    /** The values of an option that may be given more than once, in order. */
    List<String> values(String option) {
        String[] values = line.getOptionValues(option);
        return values == null ? List.of() : List.of(values);
    }

    /** How the report is stressed: by colour only where it goes to a terminal, and nobody asked for none. */
    static Style style() {
        return terminal() && System.getenv("NO_COLOR") == null ? Style.COLOUR : Style.PLAIN;
    }

    /** True when what is printed goes to a terminal. */
    static boolean terminal() {
        return Boolean.getBoolean(TERMINAL);
    }

    /** True when a file was named for the report. */
    boolean toFile() {
        return line.hasOption(OUT);
    }

    /** True when somebody is there to answer. */
    boolean answers() {
        return in != null;
    }

    /** Asks, and gives the answer; null when there is none and none will come. */
    @Nullable
    String ask(String question) {
        if (in == null) {
            return null;
        }
        out.print(question);
        out.flush();
        try {
            return in.readLine();
        } catch (IOException e) {
            return null;
        }
    }

    /** The value of an option that takes one of a few words. */
    String oneOf(String option, String otherwise, List<String> words) {
        String word = line.getOptionValue(option, otherwise);
        if (!words.contains(word)) {
            throw new BadInput(
                    command,
                    "--" + option + ": read " + Say.quote(word) + "." + Say.nearest(word, words) + " Allowed: "
                            + Say.list(words));
        }
        return word;
    }

    String format(List<String> words) {
        return oneOf(FORMAT, TEXT, words);
    }

    /** The day that waivers are looked at for. This is the only clock in Akin; {@code --on} makes a report reproducible. */
    LocalDate day() {
        String on = line.getOptionValue(ON);
        if (on == null) {
            return LocalDate.now(ZoneId.systemDefault());
        }
        try {
            return LocalDate.parse(on);
        } catch (DateTimeParseException e) {
            throw new BadInput(command, "--on: read " + Say.quote(on) + "; a day belongs here, such as 2027-03-01");
        }
    }

    Document read(String rig) {
        return YamlReader.read(rig, TextFile.read(path(rig), rig));
    }

    /** A checker whose rules load while files are read: they take longest. */
    Checker checker() {
        Binder binder = new Binder();
        Packs gear = packs(binder, lensfun().map(List::of).orElse(List.of()));
        Optional<AddedRules> added = added(binder);
        if (added.isPresent()) {
            CompletableFuture<KieBase> all = CompletableFuture.supplyAsync(added.get()::base);
            return new Checker(all::join, added.get(), binder, gear);
        }
        CompletableFuture<KieBase> rules = CompletableFuture.supplyAsync(RuleBase::builtIn);
        CompletableFuture<RuleBook> book = rules.thenApplyAsync(loaded -> CompiledBook.load());
        return new Checker(rules::join, book::join, binder, gear);
    }

    /**
     * The rules of the folders that the call names, and of those that the person trusts as they are now. Of one that changed
     * since it says so, and does without.
     */
    Optional<AddedRules> added(Binder binder) {
        List<RulePack> packs = new ArrayList<>();
        for (String name : values(RULES)) {
            packs.add(RuleFolder.read(name, path(name)));
        }
        for (TrustList.Line trusted : TrustList.own().map(TrustList::lines).orElse(List.of())) {
            Path folder = Path.of(trusted.folder());
            String name = String.valueOf(folder.getFileName());
            try {
                RulePack pack = RuleFolder.read(name, folder);
                if (!pack.digest().equals(trusted.digest())) {
                    say("the rules in " + trusted.folder()
                            + " changed since you trusted them, and are not loaded; read them,"
                            + " then: akin rules trust " + trusted.folder());
                } else if (packs.stream().noneMatch(named -> named.digest().equals(pack.digest()))) {
                    packs.add(pack);
                }
            } catch (BadInput e) {
                say("the rules in " + trusted.folder() + " that you trusted are not loaded: " + e.getMessage());
            }
        }
        return packs.isEmpty() ? Optional.empty() : Optional.of(join(packs, binder));
    }

    /** These folders of rules, compiled and joined to Akin's own. */
    static AddedRules join(List<RulePack> packs, Binder binder) {
        RuleCache cache = new RuleCache(OwnFiles.cache(), Version.fitting());
        return new AddedRules(
                packs.stream()
                        .map(pack -> new AddedRules.Compiled(pack, cache.classes(pack)))
                        .toList(),
                CompiledBook.load(),
                binder);
    }

    /** What is looked up in for a rig file of this name: the catalogue, data beside the file, data that was named. */
    Catalogue catalogue(Binder binder, String rig) {
        return catalogue(binder, rig, List.of());
    }

    /** As above, with these sheets before the catalogue, the first of them in front, and behind everything else. */
    Catalogue catalogue(Binder binder, String rig, List<GearSheet> sheets) {
        return packs(binder, sheets).apply(rig);
    }

    private Packs packs(Binder binder, List<GearSheet> sheets) {
        Catalogue first = Catalogue.builtIn(binder);
        for (int i = sheets.size() - 1; i >= 0; i--) {
            first = first.with(sheets.get(i));
        }
        return new Packs(binder, line.getOptionValue(GEAR), first);
    }

    /** The cameras and lenses of the lensfun database, where the call asks for them. */
    Optional<GearSheet> lensfun() {
        return line.hasOption(LENSFUN)
                ? Optional.of(Lensfun.read(path(line.getOptionValue(LENSFUN, Lensfun.INSTALLED)))
                        .gear())
                : Optional.empty();
    }

    /** The catalogue with the folder that the call names, and nothing else. */
    Catalogue named(Binder binder) {
        return packs(binder, List.of()).named();
    }

    /** A checker that looks everything up in one catalogue. */
    Checker checker(Binder binder, Catalogue catalogue) {
        return new Checker(RuleBase.builtIn(), CompiledBook.load(), binder, catalogue);
    }

    /** Prints a report, or writes it to the one file that was named. */
    void deliver(String report) {
        String file = line.getOptionValue(OUT);
        if (file == null) {
            print(report);
            return;
        }
        refuseToOverwrite(file, line.getArgList());
        write(file, report);
    }

    /** Writes a report that is no text to the file that {@code --out} names. */
    void deliver(byte[] report) {
        String file = line.getOptionValue(OUT);
        refuseToOverwrite(file, line.getArgList());
        write(file, report);
    }

    /** Refuses to write over a file that was named as input. */
    void refuseToOverwrite(String file, List<String> inputs) {
        refuseToOverwrite(file, inputs, "the rig file");
    }

    /** Refuses to write over a file that is read, and says what it is. */
    void refuseToOverwrite(String file, List<String> inputs, String what) {
        Path target = path(file);
        for (String input : inputs) {
            try {
                if (Files.exists(target) && Files.isSameFile(path(input), target)) {
                    throw new BadInput(file, "this is " + what + "; write the report to another");
                }
            } catch (IOException cannotBeRead) {
                // Then it cannot be lost either; what is wrong with it is said when it is read.
            }
        }
    }

    void write(String file, String report) {
        write(file, report.getBytes(StandardCharsets.UTF_8));
    }

    private static void write(String file, byte[] report) {
        try {
            Files.write(path(file), report);
        } catch (IOException e) {
            throw new BadInput(file, "the report cannot be written there");
        }
    }

    static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new BadInput(name, "this cannot be the name of a file here");
        }
    }
}
