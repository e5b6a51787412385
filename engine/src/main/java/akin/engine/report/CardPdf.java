package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.model.rig.Rig;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TimeZone;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The cards of a rig as a tagged PDF after PDF/UA-1, a page for each unit. */
public final class CardPdf {

    private static final String FAMILY = "Source Sans 3";
    private static final float VERSION = 1.7f;
    private static final int REGULAR = 400;
    private static final int SEMIBOLD = 600;

    /** Sizes of type in points, the largest with which each card has room on its page being taken. */
    private static final List<String> SIZES = List.of("11pt", "10pt", "9pt", "8pt", "7pt", "6pt");

    private CardPdf() {}

    /** The cards of a rig, the hero's first. */
    public static byte[] render(Rig rig, Assessment assessment) {
        List<Card> cards = Card.of(rig, assessment);
        XRLog.setLoggingEnabled(false);
        byte[] pdf = new byte[0];
        for (String size : SIZES) {
            StringOutput out = new StringOutput();
            TemplateEngine.createPrecompiled(ContentType.Html)
                    .render(
                            "card.jte",
                            Map.of("production", assessment.production(), "cards", cards, "size", size),
                            out);
            String html = out.toString().lines().map(Wrap::visible).collect(Collectors.joining("\n"));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            int pages = write(html, bytes);
            pdf = bytes.toByteArray();
            if (pages == cards.size()) {
                break;
            }
        }
        return pdf;
    }

    private static int write(String html, ByteArrayOutputStream out) {
        try (PDDocument document = new PDDocument();
                TrueTypeFont regular = font("regular");
                TrueTypeFont semibold = font("semibold")) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.withHtmlContent(html, null);
            builder.usePdfUaAccessibility(true);
            builder.usePDDocument(document);
            builder.useFont(in(document, regular), FAMILY, REGULAR, FontStyle.NORMAL, true);
            builder.useFont(in(document, semibold), FAMILY, SEMIBOLD, FontStyle.NORMAL, true);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.createPDFWithoutClosing();
                document.getDocument().setVersion(VERSION);
                document.setDocumentId(0L);
                GregorianCalendar never = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
                never.setTimeInMillis(0);
                document.getDocumentInformation().setCreationDate(never);
                document.getDocumentInformation().setModificationDate(never);
                document.save(out);
                return document.getNumberOfPages();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PDFontSupplier in(PDDocument document, TrueTypeFont font) throws IOException {
        return new PDFontSupplier(PDType0Font.load(document, font, true));
    }

    /** A font without its ligatures: as glyphs they would stand for no character, and a reader would lose them. */
    private static TrueTypeFont font(String weight) throws IOException {
        String name = "/akin/fonts/source-sans-3-" + weight + ".ttf";
        try (InputStream file = CardPdf.class.getResourceAsStream(name)) {
            TrueTypeFont font = new TTFParser()
                    .parse(new RandomAccessReadBuffer(
                            Objects.requireNonNull(file, name).readAllBytes()));
            font.setEnableGsub(false);
            return font;
        }
    }
}
