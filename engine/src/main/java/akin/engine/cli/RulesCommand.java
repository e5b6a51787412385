package akin.engine.cli;

import akin.engine.assess.AddedRules;
import akin.engine.assess.Checker;
import akin.engine.assess.ExampleProof;
import akin.engine.book.Pages;
import akin.engine.book.RulePack;
import akin.engine.book.Shelf;
import akin.engine.equip.Catalogue;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Say;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.cli.Options;
import org.kie.api.KieBase;

/** {@code akin rules}: helps to write rules of one's own, proves them, and keeps whom to trust with running them. */
final class RulesCommand implements Command {

    private static final String LIST = "list";
    private static final String NEW = "new";
    private static final String TEST = "test";
    private static final String TRUST = "trust";
    private static final String DISTRUST = "distrust";
    private static final List<String> WORDS = List.of(LIST, NEW, TEST, TRUST, DISTRUST);

    private static final Pattern ID = Pattern.compile("([a-z]+)/([a-z][a-z0-9-]*)");

    private static final String RULE = """
            package %s

            import akin.model.finding.Finding
            import akin.model.finding.Severity
            import akin.model.rig.Unit

            // Write over this: it finds a unit that is rated over ISO 1600. What may be unknown is asked for first.
            rule "%s"
            when
              $unit : Unit(iso() != null, iso().value() > 1600)
            then
              insert(Finding.of("%2$s", Severity.ADVICE)
                  .units($unit.name())
                  .at($unit.path("iso"))
                  .value("iso", $unit.name(), $unit.iso())
                  .build());
            end
            """;

    private static final String PAGE = """
            ---
            id: %s
            title: "{unit} is rated high"
            because: "{unit} is planned at ISO {iso:unit}; this production agreed on 1600 at most."
            severities: [advice]
            scope: unit
            needs: []
            sources:
              - "agreed by this production"
            ---
            ## What it finds

            Write over this: what the rule finds, why it matters, and where its numbers come from.

            ## Fires

            ```yaml
            units:
              B: {iso: 3200}   # finds: advice
            ```

            ## Stays quiet

            ```yaml
            units:
              B: {iso: 1600}
            ```
            """;

    @Override
    public String name() {
        return "rules";
    }

    @Override
    public String arguments() {
        return "list | new DIR ID | test DIR | trust DIR | distrust DIR";
    }

    @Override
    public String purpose() {
        return "Writes a new rule of your own with its page, proves the examples on the pages of a folder of rules, and keeps"
                + " the list of folders whose rules you trust: those are loaded with every call, as long as nothing in them"
                + " changes. Rules run as program code with all your rights; read them before you trust them.";
    }

    @Override
    public Options options() {
        return new Options();
    }

    @Override
    public int run(Call call) {
        List<String> words = call.arguments();
        String first = words.isEmpty() ? "" : words.get(0);
        List<String> rest = words.isEmpty() ? List.of() : words.subList(1, words.size());
        return switch (first) {
            case LIST -> {
                counted(rest, 0, "akin rules list");
                yield list(call);
            }
            case NEW -> create(call, counted(rest, 2, "akin rules new house-rules house/iso-high"));
            case TEST -> test(call, counted(rest, 1, "akin rules test house-rules"));
            case TRUST -> trust(call, counted(rest, 1, "akin rules trust house-rules"));
            case DISTRUST -> distrust(call, counted(rest, 1, "akin rules distrust house-rules"));
            default ->
                throw new BadInput(
                        name(),
                        (first.isEmpty()
                                        ? "a word is missing, such as: akin rules list."
                                        : "read " + Say.quote(first) + "." + Say.nearest(first, WORDS))
                                + " Allowed: " + Say.list(WORDS));
        };
    }

    private List<String> counted(List<String> words, int count, String example) {
        if (words.size() != count) {
            throw new BadInput(
                    name(),
                    (words.size() < count
                                    ? "something is missing"
                                    : "read " + Say.quote(words.get(count)) + " too many")
                            + ", it goes like this: " + example);
        }
        return words;
    }

    private static TrustList trusted() {
        return TrustList.own()
                .orElseThrow(() -> new BadInput("rules", "there is no home folder here to keep a list of trust in"));
    }

    private static int list(Call call) {
        List<TrustList.Line> lines = trusted().lines();
        if (lines.isEmpty()) {
            call.print("No rules but Akin's own are trusted.\n");
        }
        for (TrustList.Line line : lines) {
            String now;
            try {
                now = RuleFolder.read(line.folder(), Path.of(line.folder()))
                                .digest()
                                .equals(line.digest())
                        ? "trusted"
                        : "changed since, not loaded";
            } catch (BadInput e) {
                now = "not loaded: " + e.problem();
            }
            call.print(Say.visible(line.folder()) + ": " + now + "\n");
        }
        return Akin.PASSES;
    }

    private static int trust(Call call, List<String> words) {
        String name = words.get(0);
        RulePack pack = RuleFolder.read(name, Call.path(name));
        // What does not even compile is not worth a line.
        AddedRules added = Call.join(List.of(pack), new Binder());
        trusted().trust(Call.path(name), pack);
        call.print(name + " is trusted as it is now (" + pack.digest() + "): " + String.join(", ", added.ids())
                + ". Its rules are loaded with every call; a change to it ends that.\n");
        return Akin.PASSES;
    }

    private static int distrust(Call call, List<String> words) {
        String name = words.get(0);
        if (!trusted().distrust(Call.path(name))) {
            throw new BadInput(name, "this folder is not on the list of trusted rules; akin rules list shows it");
        }
        call.print(name + " is not trusted any more.\n");
        return Akin.PASSES;
    }

    private int create(Call call, List<String> words) {
        String folder = words.get(0);
        String id = words.get(1);
        var parts = ID.matcher(id);
        if (!parts.matches()) {
            throw new BadInput(
                    name(),
                    "read " + Say.quote(id) + "; an id is topic/what-is-wrong in small letters and hyphens, such as"
                            + " house/iso-high");
        }
        if (Shelf.page(id).isPresent()) {
            throw new BadInput(name(), "Akin has a rule " + id + " of its own; rules are added, never replaced");
        }
        Path home = Call.path(folder);
        String base = String.valueOf(home.toAbsolutePath().normalize().getFileName());
        String packageName = "own." + base.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "x") + "." + parts.group(1);
        Path rule = home.resolve(parts.group(1)).resolve(parts.group(2) + RulePack.DRL);
        Path page = home.resolve(parts.group(1)).resolve(parts.group(2) + RulePack.PAGE);
        for (Path file : List.of(rule, page)) {
            if (Files.exists(file)) {
                throw new BadInput(file.toString(), "this file is there already, and stays as it is");
            }
        }
        try {
            Files.createDirectories(home.resolve(parts.group(1)));
            Files.writeString(rule, RULE.formatted(packageName, id), StandardOpenOption.CREATE_NEW);
            Files.writeString(page, PAGE.formatted(id), StandardOpenOption.CREATE_NEW);
        } catch (IOException e) {
            throw new BadInput(folder, "the rule cannot be written there");
        }
        call.print(rule + " and " + page + " are written; change them, then: akin rules test " + folder + "\n");
        return Akin.PASSES;
    }

    /** Runs the examples of every page: naming the folder says that its rules may run. */
    private static int test(Call call, List<String> words) {
        String name = words.get(0);
        RulePack pack = RuleFolder.read(name, Call.path(name));
        Binder binder = new Binder();
        AddedRules added = Call.join(List.of(pack), binder);
        KieBase base = added.base();
        Catalogue catalogue = Catalogue.builtIn(binder);
        Checker checker = new Checker(() -> base, added, binder, rig -> catalogue);
        ExampleProof proof = new ExampleProof(checker, Shelf.matchedPair());
        int mistakes = 0;
        int proven = 0;
        for (Map.Entry<String, String> page : byId(pack, binder).entrySet()) {
            String text = Optional.ofNullable(pack.files().get(page.getValue())).orElseThrow();
            List<String> wrong = new ArrayList<>();
            List<Pages.Example> examples = Pages.examples(page.getKey(), text);
            for (Pages.Example example : examples) {
                proof.of(page.getKey(), example)
                        .forEach(problem -> wrong.add(
                                pack.called(page.getValue()) + ":" + example.line() + ": " + Say.visible(problem)));
            }
            proof.complete(page.getKey(), examples)
                    .forEach(problem -> wrong.add(pack.called(page.getValue()) + ": " + Say.visible(problem)));
            proven += examples.size();
            mistakes += wrong.size();
            call.print(page.getKey() + ": "
                    + (wrong.isEmpty() ? examples.size() + " examples give what they say\n" : "\n"));
            wrong.forEach(problem -> call.print("    " + problem + "\n"));
        }
        call.print(proven + " examples run, " + mistakes + (mistakes == 1 ? " mistake\n" : " mistakes\n"));
        return mistakes == 0 ? Akin.PASSES : Akin.FAILS;
    }

    /** The files of pages by the ids of their rules. */
    private static Map<String, String> byId(RulePack pack, Binder binder) {
        Map<String, String> byId = new TreeMap<>();
        pack.pages()
                .forEach((path, text) ->
                        byId.put(Pages.front(pack.called(path), text, binder).id(), path));
        return byId;
    }
}
