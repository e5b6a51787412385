package akin.engine.cli;

import akin.engine.assess.Checked;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.report.CardPdf;
import akin.engine.report.CardReport;
import java.util.List;
import java.util.Set;
import org.apache.commons.cli.Options;

/** {@code akin card}: what to set on each unit. */
final class CardCommand implements Command {

    private static final String MARKDOWN = "markdown";
    private static final String PDF = "pdf";

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
                .addOption(Call.format("text (the default), markdown, or pdf: a page for each unit, with --out"))
                .addOption(Call.out())
                .addOption(Call.gear())
                .addOption(Call.rules())
                .addOption(Call.lensfunGear())
                .addOption(Call.on())
                .addOption(Call.readings());
    }

    @Override
    public Set<String> repeatable() {
        return Set.of(Call.RULES);
    }

    @Override
    public int run(Call call) {
        String format = call.format(List.of(Call.TEXT, MARKDOWN, PDF));
        if (format.equals(PDF) && !call.toFile()) {
            throw new BadInput(name(), "a PDF is no text; name a file for it, such as: --out cards.pdf");
        }
        CardReport.Markup markup = format.equals(MARKDOWN) ? CardReport.Markup.MARKDOWN : CardReport.Markup.TEXT;
        Document document = call.read(call.rig());
        Terms terms = call.terms();
        Checker checker = call.checker();
        Checked checked = checker.examine(document, terms, FailOn.LOSSY);
        if (format.equals(PDF)) {
            call.deliver(CardPdf.render(checked.rig(), checked.assessment()));
        } else {
            call.deliver(CardReport.render(checked.rig(), checked.assessment(), markup));
        }
        return Akin.PASSES;
    }
}
