package akin.engine.cli;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.equip.Terms;
import akin.engine.read.Document;
import akin.engine.report.CardReport;
import java.util.List;
import org.apache.commons.cli.Options;

/** {@code akin card}: what to set on each unit. */
final class CardCommand implements Command {

    private static final String MARKDOWN = "markdown";

    @Override
    public String name() {
        return "card";
    }

    @Override
    public String arguments() {
        return "RIG";
    }

    @Override
    public String purpose() {
        return "Prints a card for each unit: what to set in which order, what to aim for, what is still open.";
    }

    @Override
    public Options options() {
        return new Options()
                .addOption(Call.format("text (the default) or markdown"))
                .addOption(Call.out())
                .addOption(Call.gear())
                .addOption(Call.on());
    }

    @Override
    public int run(Call call) {
        String format = call.format(List.of(Call.TEXT, MARKDOWN));
        CardReport.Markup markup = format.equals(MARKDOWN) ? CardReport.Markup.MARKDOWN : CardReport.Markup.TEXT;
        Document document = call.read(call.rig());
        Terms terms = new Terms(null, call.day());
        Checker checker = call.checker();
        Assessment assessment = checker.check(document, terms, FailOn.LOSSY);
        call.deliver(CardReport.render(checker.equip(document, terms), assessment, markup));
        return Akin.PASSES;
    }
}
