package akin.engine.cli;

import akin.engine.assess.AddedRules;
import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.book.CompiledBook;
import akin.engine.book.Examples;
import akin.engine.book.Pages;
import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.engine.book.Shelf;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Say;
import akin.engine.read.YamlReader;
import akin.engine.report.PageReport;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.cli.Options;

/** {@code akin explain}: the rule book, or one rule's page with its example worked. */
final class ExplainCommand implements Command {

    @Override
    public String name() {
        return "explain";
    }

    @Override
    public String arguments() {
        return "[RULE]";
    }

    @Override
    public String purpose() {
        return "Prints a rule's page with its sources and a worked example; without a rule, the rule book by topic.";
    }

    @Override
    public Options options() {
        return new Options().addOption(Call.rules());
    }

    @Override
    public Set<String> repeatable() {
        return Set.of(Call.RULES);
    }

    @Override
    public int run(Call call) {
        List<String> rules = call.arguments();
        Optional<AddedRules> added = call.added(new Binder());
        RuleBook book = added.map(AddedRules::book).orElseGet(CompiledBook::load);
        if (rules.isEmpty()) {
            call.deliver(PageReport.index(book));
            return Akin.PASSES;
        }
        List<String> ids = book.pages().stream().map(RulePage::id).toList();
        for (String rule : rules) {
            if (!ids.contains(rule)) {
                throw new BadInput(
                        name(),
                        "no rule is called " + Say.quote(rule) + "." + Say.nearest(rule, ids)
                                + " akin explain lists them all");
            }
            String page = added.flatMap(more -> more.page(rule))
                    .or(() -> Shelf.page(rule))
                    .orElseThrow(() -> new IllegalStateException("the page of " + rule + " is missing"));
            call.deliver(PageReport.page(book.page(rule), Pages.body(rule, page), worked(call, rule, page)));
        }
        return Akin.PASSES;
    }

    /** What the first example under "Fires" gives, found by running it. */
    private static Optional<Assessment.Entry> worked(Call call, String rule, String page) {
        Checker checker = call.checker();
        return Pages.examples(rule, page).stream()
                .filter(Pages.Example::fires)
                .findFirst()
                .flatMap(example -> {
                    Document changes = YamlReader.read(rule, example.text());
                    Document rig = Examples.lay(changes, Shelf.matchedPair());
                    return checker
                            .check(rig, Terms.OF_THE_RIG.with(Examples.clips(changes)), FailOn.LOSSY)
                            .findings()
                            .stream()
                            .filter(entry -> entry.rule().equals(rule))
                            .findFirst();
                });
    }
}
