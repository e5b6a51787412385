package akin.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** The cards as PDF, read back by another program than the one that wrote them; left in {@code target/screens}. */
class CardPdfTest {

    private static final int BLACK = 0xFF202020;

    @ParameterizedTest
    @ValueSource(strings = {"night-market", "regatta", "lantern-room", "crowd"})
    void eachUnitHasOnePageWithWhatTheTextCardSays(String sample) throws IOException {
        SampleRigs.Checked checked = SampleRigs.checked(sample);
        byte[] bytes = CardPdf.render(checked.rig(), checked.assessment());
        Files.createDirectories(Path.of("target", "screens"));
        Files.write(Path.of("target", "screens", sample + "-cards.pdf"), bytes);
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(checked.rig().units().size());
            int page = 0;
            for (Card card : Card.of(checked.rig(), checked.assessment())) {
                page++;
                String text = textOf(pdf, page);
                assertThat(text).contains(squeezed(card.heading()));
                for (Card.Section section : card.sections()) {
                    assertThat(text).contains(squeezed(section.title()));
                    for (Card.Line line : section.lines()) {
                        assertThat(text).contains(squeezed(line.label()), squeezed(line.value()));
                    }
                }
                assertThat(dark(pdf, page)).as("something is on page %d", page).isGreaterThan(1000);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"night-market", "regatta", "lantern-room"})
    void itIsTaggedAndJudgedFitForEverybody(String sample) throws Exception {
        SampleRigs.Checked checked = SampleRigs.checked(sample);
        byte[] bytes = CardPdf.render(checked.rig(), checked.assessment());
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(pdf.getDocumentCatalog().getStructureTreeRoot().getKids())
                    .isNotEmpty();
        }
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(bytes), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            ValidationResult result = validator.validate(parser);
            assertThat(result.getTestAssertions())
                    .filteredOn(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .extracting(assertion -> assertion.getRuleId() + ": " + assertion.getMessage())
                    .isEmpty();
            assertThat(result.isCompliant()).isTrue();
        }
    }

    @Test
    void theSameRigGivesTheSameBytes() {
        SampleRigs.Checked checked = SampleRigs.checked("regatta");
        assertThat(CardPdf.render(checked.rig(), checked.assessment()))
                .isEqualTo(CardPdf.render(checked.rig(), checked.assessment()));
    }

    @Test
    void wordsOfARigFileStayWords() throws IOException {
        SampleRigs.Checked nasty = SampleRigs.nasty();
        byte[] bytes = CardPdf.render(nasty.rig(), nasty.assessment());
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            assertThat(textOf(pdf, 2)).contains(squeezed("<script>alert(1)</script>"), squeezed("\"><img src=x"));
            assertThat(pdf.getDocumentInformation().getTitle()).contains("</title><script>");
        }
    }

    private static String textOf(PDDocument pdf, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return squeezed(stripper.getText(pdf));
    }

    /** Without blanks: where lines break is the page's business. */
    private static String squeezed(String text) {
        return text.replaceAll("\\s", "");
    }

    private static long dark(PDDocument pdf, int page) throws IOException {
        var image = new PDFRenderer(pdf).renderImageWithDPI(page - 1, 72);
        return java.util.Arrays.stream(
                        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
                .filter(pixel -> (pixel & 0xFF) < (BLACK & 0xFF) + 0x60)
                .count();
    }
}
