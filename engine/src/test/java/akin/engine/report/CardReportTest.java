package akin.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.RuleBase;
import akin.engine.book.CompiledBook;
import akin.engine.book.Examples;
import akin.engine.book.Shelf;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import org.junit.jupiter.api.Test;

class CardReportTest {

    private static final Binder BINDER = new Binder();
    private static final Checker CHECKER =
            new Checker(RuleBase.builtIn(), CompiledBook.load(), BINDER, Catalogue.builtIn(BINDER));

    @Test
    void aCardTellsWhatToSetInOrderWhatToAimForAndWhatIsOpen() {
        assertThat(card("units: {B: {shutter: 1/60}}", CardReport.Markup.TEXT))
                .containsSubsequence(
                        "Unit A: Large, the hero",
                        "Unit B: Small, matched to A",
                        "mode          open",
                        "frame rate    23.976 fps",
                        "profile       log",
                        "codec         inside",
                        "shutter       1/60",
                        "ISO           800",
                        "white         4300 K",
                        "lens          Long zoom at 24 mm",
                        "stop          T2.8",
                        "filters       ND 0.6",
                        "18 % grey     40.6 %",
                        "clip          102.8 %",
                        "After every power-up",
                        "baked-in      B and A blur motion differently (motion/blur-differs)");
    }

    @Test
    void whatIsNotPlannedAndWhatIsAutomaticSaySo() {
        assertThat(card("units: {B: {iso: auto, white: ~, lens: ~}}", CardReport.Markup.TEXT))
                .contains("ISO           automatic", "white         not planned", "lens          not planned");
    }

    @Test
    void theLutStandsOnTheCardWithWhatItIsMadeForAndWhereItWorks() {
        assertThat(card(
                        "units: {B: {monitor: {look: dusk, encoding: sony-s-log3, gamut: s-gamut3, size: 33, held-by: body}}}",
                        CardReport.Markup.TEXT))
                .contains("LUT           dusk, for sony-s-log3 in s-gamut3, 33 points, in the body");
        assertThat(card("units: {B: {monitor: {look: none}}}", CardReport.Markup.TEXT))
                .contains("LUT           none: watched as it is recorded");
    }

    @Test
    void whatToCheckAfterPowerUpFollowsFromWhatTheDeviceKeeps() {
        assertThat(card("gear: {bodies: {small: {keeps-settings: false}}}", CardReport.Markup.TEXT))
                .containsSubsequence("Unit A", "keeps its settings", "Unit B", "all of the above: it forgets");
        assertThat(card("gear: {bodies: {small: {keeps-settings: ~}}}", CardReport.Markup.TEXT))
                .containsSubsequence("Unit B", "whether it keeps its settings is not known");
    }

    @Test
    void noLineIsWiderThanASlip() {
        assertThat(card("units: {B: {shutter: 1/60, iso: 200}}", CardReport.Markup.TEXT)
                        .lines())
                .allMatch(line -> line.length() <= 80);
    }

    @Test
    void namesStayTextInMarkdown() {
        String card = card("gear: {bodies: {small: {name: '<script> [x](y) `z` *b*'}}}", CardReport.Markup.MARKDOWN);
        assertThat(card)
                .contains("\\<script\\>", "\\[x\\](y)", "\\`z\\`", "\\*b\\*")
                .doesNotContain("<script>");
    }

    private static String card(String changes, CardReport.Markup markup) {
        Document rig = Examples.lay(YamlReader.read("rig.yaml", changes), Shelf.matchedPair());
        Assessment assessment = CHECKER.check(rig, Terms.OF_THE_RIG, FailOn.LOSSY);
        return CardReport.render(CHECKER.equip(rig, Terms.OF_THE_RIG), assessment, markup);
    }
}
