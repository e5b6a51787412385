package akin.engine.report;

import akin.engine.report.html.HtmlReport;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How a report of {@code akin check} is written. Another one is a constant here and a line in {@link #render}. */
public enum Format {
    /** For people at a terminal. */
    TEXT,
    /** For programs; schemas in {@code shared/schema}. */
    JSON,
    /** For code review and editors: SARIF 2.1.0, the OASIS standard for results of analysis. */
    SARIF,
    /** For build servers: the XML in which test runs are reported. */
    JUNIT,
    /** For build servers that read commands from a log: one line a finding, shown beside the line of the rig file. */
    ANNOTATIONS,
    /** For a page in a wiki, a ticket or a build's summary. */
    MARKDOWN,
    /** For looking: one page with pictures, of one rig file. */
    HTML;

    /** The word used on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The words of all formats. */
    public static List<String> words() {
        return Arrays.stream(values()).map(Format::word).toList();
    }

    /**
     * The format of a word.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static Format of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    /**
     * The report; empty when there is nothing to report.
     *
     * @param style how a terminal is to stress words, for the formats that are read at one
     */
    public String render(Batch batch, Style style) {
        // Each class is loaded only when its format is asked for: a check for people must start at once.
        return switch (this) {
            case TEXT -> TextReport.render(batch, style);
            case JSON -> JsonReport.render(batch);
            case SARIF -> SarifReport.render(batch);
            case JUNIT -> JunitReport.render(batch);
            case ANNOTATIONS -> AnnotationReport.render(batch);
            case MARKDOWN -> MarkdownReport.render(batch);
            case HTML -> HtmlReport.render(batch, Story.baseline(batch));
        };
    }
}
