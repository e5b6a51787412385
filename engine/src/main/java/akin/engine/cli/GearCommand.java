package akin.engine.cli;

import akin.engine.assess.BodyTrial;
import akin.engine.assess.Checker;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Entry;
import akin.engine.equip.Form;
import akin.engine.equip.Pack;
import akin.engine.equip.Skeleton;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Say;
import akin.engine.report.GearReport;
import akin.model.gear.Body;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.cli.Options;
import org.jspecify.annotations.Nullable;

/** {@code akin gear}: looks at the catalogue and its packs, and helps to write one. */
final class GearCommand implements Command {

    private static final String LIST = "list";
    private static final String SHOW = "show";
    private static final String NEW = "new";
    private static final String TEST = "test";
    private static final String SET = "set";
    private static final String OUT = "out";
    private static final String GEAR = "gear";
    private static final String SOURCE = "source";

    @Override
    public String name() {
        return GEAR;
    }

    @Override
    public String arguments() {
        return "list [KIND] | show ID | new KIND ID | test DIR";
    }

    @Override
    public String purpose() {
        return "Lists what is known of gear, shows an entry's facts with their sources and gaps, writes a new fact sheet,"
                + " or tests a folder of them.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(Call.gear())
                .addOption(Call.value(
                        SET,
                        "KEY=VALUE",
                        "new: a fact, such as mount=alder or modes.uhd.readout=12ms; KEY.source for"
                                + " where it is from; may be given more than once"))
                .addOption(Call.value(OUT, "FILE", "new: the file to write (default: akin.d/ID.yaml)"));
    }

    @Override
    public Set<String> repeatable() {
        return Set.of(SET);
    }

    @Override
    public int run(Call call) {
        List<String> words = call.arguments();
        String first = words.isEmpty() ? "" : words.get(0);
        List<String> rest = words.isEmpty() ? List.of() : words.subList(1, words.size());
        if (!first.equals(NEW)) {
            refuse(call, SET);
            refuse(call, OUT);
        }
        return switch (first) {
            case LIST -> list(call, rest);
            case SHOW -> show(call, rest);
            case NEW -> create(call, rest);
            case TEST -> test(call, rest);
            default -> {
                List<String> allowed = List.of(LIST, SHOW, NEW, TEST);
                throw new BadInput(
                        GEAR,
                        (first.isEmpty()
                                        ? "a word is missing, such as: akin gear list."
                                        : "read " + Say.quote(first) + "." + Say.nearest(first, allowed))
                                + " Allowed: " + Say.list(allowed));
            }
        };
    }

    private static void refuse(Call call, String option) {
        if (call.has(option)) {
            throw new BadInput(GEAR, "--" + option + " is for akin gear new");
        }
    }

    private static List<String> words(List<String> words, int least, int most, String example) {
        if (words.size() < least || words.size() > most) {
            throw new BadInput(
                    GEAR,
                    (words.size() < least
                                    ? "a word is missing"
                                    : "there is a word too many: " + Say.quote(words.get(most)))
                            + "; write: akin gear " + example);
        }
        return words;
    }

    private static int list(Call call, List<String> words) {
        words(words, 0, 1, "list, or akin gear list bodies");
        if (!words.isEmpty() && !Catalogue.KINDS.contains(words.get(0))) {
            throw new BadInput(
                    GEAR,
                    "no kind is called " + Say.quote(words.get(0)) + "." + Say.nearest(words.get(0), Catalogue.KINDS)
                            + " Allowed: " + Say.list(Catalogue.KINDS));
        }
        Catalogue catalogue = call.catalogue(new Binder(), "");
        Map<String, List<GearReport.Item>> kinds = new LinkedHashMap<>();
        for (String kind : words.isEmpty() ? Catalogue.KINDS : words) {
            List<GearReport.Item> items = new ArrayList<>();
            for (String id : catalogue.ids(kind)) {
                catalogue.entry(kind, id).ifPresent(entry -> {
                    Entry.Fact name = entry.facts().get("name");
                    items.add(new GearReport.Item(
                            id,
                            name == null ? "" : name.text(),
                            (catalogue.brought(entry) ? "" : "the catalogue: ") + places(entry)));
                });
            }
            kinds.put(kind, items);
        }
        call.print(GearReport.list(kinds));
        return Akin.PASSES;
    }

    /** Where an entry stands, and what it amends. */
    private static String places(Entry entry) {
        return entry.where() + (entry.under() == null ? "" : ", amending " + places(entry.under()));
    }

    private static int show(Call call, List<String> words) {
        String id = words(words, 1, 1, "show ID").get(0);
        Catalogue catalogue = call.catalogue(new Binder(), "");
        List<String> reports = new ArrayList<>();
        List<String> all = new ArrayList<>();
        for (String kind : Catalogue.KINDS) {
            all.addAll(catalogue.ids(kind));
            catalogue.entry(kind, id).ifPresent(entry -> reports.add(shown(entry, catalogue)));
        }
        if (reports.isEmpty()) {
            throw new BadInput(
                    GEAR,
                    "nothing is called " + Say.quote(id) + "." + Say.nearest(id, all) + " akin gear list lists it all");
        }
        call.print(String.join("\n", reports));
        return Akin.PASSES;
    }

    private static String shown(Entry entry, Catalogue catalogue) {
        Map<String, Entry.Fact> facts = entry.facts();
        List<String> places = new ArrayList<>();
        places.add(places(entry));
        catalogue.changes().stream()
                .filter(change ->
                        change.entry().equals(entry.name()) && change.fact().isEmpty())
                .forEach(change -> places.add(change.where() + " overrides " + change.before()));
        List<GearReport.Fact> lines = new ArrayList<>();
        facts.forEach((path, fact) -> lines.add(new GearReport.Fact(
                path, fact.text(), Optional.ofNullable(fact.source()).orElse(""), fact.where())));
        return GearReport.show(
                entry.name(), places, lines, Form.of(entry.kind()).unknown(facts.keySet()));
    }

    private static int test(Call call, List<String> words) {
        String folder = words(words, 1, 1, "test DIR").get(0);
        Binder binder = new Binder();
        Pack pack = Pack.read(folder, Call.path(folder), binder);
        if (pack.files() == 0) {
            throw new BadInput(folder, "no gear file, named *.yaml, is in this folder");
        }
        // Beside it counts what the call names; not what may lie here, unless it is this very folder.
        Catalogue catalogue = call.named(binder).with(pack);
        pack.requireWords(catalogue);
        Checker checker = call.checker(binder, catalogue);
        BodyTrial trial = new BodyTrial(checker, catalogue);
        StringBuilder report = new StringBuilder(folder)
                .append(": valid, ")
                .append(pack.files())
                .append(pack.files() == 1 ? " file" : " files")
                .append(", ")
                .append(pack.entries().size())
                .append(pack.entries().size() == 1 ? " entry\n" : " entries\n");
        catalogue
                .changes()
                .forEach(change -> report.append(change.entry())
                        .append(change.fact().isEmpty() ? "" : "." + change.fact())
                        .append(": ")
                        .append(change.where())
                        .append(
                                change.fact().isEmpty()
                                        ? " overrides " + change.before()
                                        : change.before().isEmpty() ? " adds it" : " amends " + change.before())
                        .append('\n'));
        pack.rules()
                .forEach(rules -> report.append(rules)
                        .append(" is not loaded: a folder of gear is data, and rules in it never run\n"));
        for (String name : pack.entries().keySet().stream().sorted().toList()) {
            Entry own = java.util.Objects.requireNonNull(pack.entries().get(name));
            Entry entry = catalogue.entry(own.kind(), own.id()).orElseThrow();
            if (entry.value() instanceof Body body) {
                BodyTrial.Result result = trial.of(body);
                List<GearReport.Waiting> waiting = new ArrayList<>();
                result.cannot()
                        .forEach((rule, facts) -> waiting.add(new GearReport.Waiting(
                                rule,
                                facts.stream()
                                        .map(fact -> below(body, fact.missing()) + " ("
                                                + fact.where().words() + ")")
                                        .toList())));
                report.append(GearReport.trial(body.id(), places(entry), result.can(), waiting, result.besides()));
            }
        }
        call.print(report.toString());
        return Akin.PASSES;
    }

    /** The path of a fact below the body's own entry. */
    private static String below(Body body, String fact) {
        String entry = body.path("");
        return fact.startsWith(entry) ? fact.substring(entry.length()) : fact;
    }

    private static int create(Call call, List<String> words) {
        words(words, 2, 2, "new KIND ID");
        List<String> kinds = List.copyOf(Skeleton.KINDS.keySet());
        String kind = Skeleton.KINDS.get(words.get(0));
        String id = words.get(1);
        if (kind == null) {
            throw new BadInput(
                    GEAR,
                    "no kind is called " + Say.quote(words.get(0)) + "." + Say.nearest(words.get(0), kinds)
                            + " Allowed: " + Say.list(kinds));
        }
        String named = call.value(OUT);
        String file = named == null ? Packs.FOLDER + "/" + id + ".yaml" : named;
        Path path = Call.path(file);
        if (Files.exists(path, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            throw there(file);
        }
        Binder binder = new Binder();
        Catalogue catalogue = call.catalogue(binder, "");
        Map<String, String> values = given(call);
        if (values.isEmpty() && call.answers()) {
            asked(call, kind, values, answers -> Skeleton.write(kind, id, answers, catalogue, binder));
        }
        String text = Skeleton.write(kind, id, values, catalogue, binder);
        try {
            Path folder = path.toAbsolutePath().getParent();
            if (named == null && folder != null) {
                Files.createDirectories(folder);
            }
            Files.writeString(path, text, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw there(file);
        } catch (IOException e) {
            throw new BadInput(file, "the file cannot be written there");
        }
        call.print(Say.visible(file)
                + ": written. Fill in what else is known; akin gear test says what it is good for.\n");
        return Akin.PASSES;
    }

    private static BadInput there(String file) {
        return new BadInput(file, "there is such a file already; nothing was written. Name another with --out");
    }

    private static Map<String, String> given(Call call) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String set : call.values(SET)) {
            int at = set.indexOf('=');
            if (at <= 0) {
                throw new BadInput("--set", "read " + Say.quote(set) + "; write KEY=VALUE, such as mount=alder");
            }
            if (values.put(set.substring(0, at), set.substring(at + 1)) != null) {
                throw new BadInput("--set", Say.quote(set.substring(0, at)) + " is given twice");
            }
        }
        return values;
    }

    /** Asks for each fact; what does not fit is asked for again, what is left blank is not known. */
    private static void asked(
            Call call, String kind, Map<String, String> values, java.util.function.Consumer<Map<String, String>> fits) {
        call.print("What is not known is left blank.\n");
        Form form = Form.of(kind);
        String source = call.ask("\nWhere these facts come from: a manual, a data sheet, a test\nsource: ");
        if (source == null) {
            return;
        }
        if (!source.isBlank()) {
            values.put(SOURCE, source.strip());
        }
        for (Form.Key key : form.keys()) {
            if (key.parts().isEmpty()) {
                if (!fact(call, key, key.key(), values, fits)) {
                    return;
                }
                continue;
            }
            for (String id = call.ask("\n" + key.description() + "\nid of the first of " + key.key() + ": ");
                    id != null && !id.isBlank();
                    id = call.ask("\nid of the next of " + key.key() + ": ")) {
                for (Form.Key part : key.parts()) {
                    if (!fact(call, part, key.key() + "." + id.strip() + "." + part.key(), values, fits)) {
                        return;
                    }
                }
            }
        }
    }

    /** Asks for one fact; false when no answer will come any more. */
    private static boolean fact(
            Call call,
            Form.Key key,
            String path,
            Map<String, String> values,
            java.util.function.Consumer<Map<String, String>> fits) {
        while (true) {
            @Nullable String answer = call.ask("\n" + key.description() + "\n" + path + ": ");
            if (answer == null || answer.isBlank()) {
                return answer != null;
            }
            Map<String, String> tried = new LinkedHashMap<>(values);
            tried.put(path, answer.strip());
            try {
                fits.accept(tried);
                values.put(path, answer.strip());
                return true;
            } catch (BadInput e) {
                // Of an entry that cannot do without several facts the others are still to come.
                if (!e.file().equals("--set " + path)) {
                    values.put(path, answer.strip());
                    return true;
                }
                call.print(e.problem() + "\n");
            }
        }
    }
}
