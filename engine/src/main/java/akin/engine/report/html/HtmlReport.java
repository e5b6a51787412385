package akin.engine.report.html;

import akin.engine.assess.Assessment;
import akin.engine.report.Batch;
import akin.engine.report.Card;
import akin.engine.report.OnTheDay;
import akin.engine.report.Wrap;
import akin.engine.report.picture.Pictures;
import akin.model.rig.Rig;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** The report as one HTML file that needs nothing else: no network, no script. */
public final class HtmlReport {

    private static final String FONT = "/akin/fonts/source-sans-3-latin.woff2";

    private HtmlReport() {}

    /**
     * Renders the one rig file of a batch; empty when it could not be read.
     *
     * @param baseline what became of the baseline, in words; empty when there was none
     */
    public static String render(Batch batch, List<String> baseline) {
        return batch.parts().stream()
                .filter(Batch.Read.class::isInstance)
                .map(part -> ((Batch.Read) part).checked())
                .map(checked -> render(checked.assessment(), checked.rig(), baseline, batch.version()))
                .collect(Collectors.joining());
    }

    /**
     * Renders an assessment with the pictures of its rig.
     *
     * @param baseline what became of the baseline, in words; empty when there was none
     * @param version version of Akin
     */
    public static String render(Assessment assessment, Rig rig, List<String> baseline, String version) {
        StringOutput out = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render(
                        "report.jte",
                        new Page(
                                assessment,
                                Pictures.of(rig),
                                OnTheDay.of(rig),
                                Card.tables(rig),
                                baseline,
                                version,
                                font()),
                        out);
        // The template's own lines end in line feeds; any other control character came with a word of the rig file.
        return out.toString().lines().map(Wrap::visible).collect(Collectors.joining("\n", "", "\n"));
    }

    private static String font() {
        try (InputStream font = HtmlReport.class.getResourceAsStream(FONT)) {
            return Base64.getEncoder()
                    .encodeToString(Objects.requireNonNull(font, FONT).readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
