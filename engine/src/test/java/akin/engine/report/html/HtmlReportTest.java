package akin.engine.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.assess.Assessment;
import akin.engine.report.SampleRigs;
import akin.model.finding.Severity;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HtmlReportTest {

    @ParameterizedTest
    @ValueSource(strings = {"night-market", "regatta", "lantern-room", "crowd"})
    void itNeedsNothingElse(String sample) {
        String html = SampleRigs.html(sample);
        assertThat(html).startsWith("<!DOCTYPE html>").doesNotContain("<script", "http:", "https:", "@import");
        assertThat(Pattern.compile("(?:src|href|url)\\s*[=(]\\s*[\"']?([^\"')]*)")
                        .matcher(html)
                        .results()
                        .map(found -> found.group(1)))
                .isNotEmpty()
                .allMatch(target -> target.startsWith("#") || target.startsWith("data:"));
        assertThat(SampleRigs.html(sample)).isEqualTo(html);
    }

    @Test
    void itSaysEverythingInTheOrderOfTheTextReport() {
        SampleRigs.Checked regatta = SampleRigs.checked("regatta");
        Assessment assessment = regatta.assessment();
        assertThat(assessment.findings()).isNotEmpty();
        assertThat(assessment.cautions()).isNotEmpty();
        assertThat(words(SampleRigs.html(regatta)))
                .contains(assessment.findings().stream()
                        .flatMap(finding -> Stream.of(finding.title(), finding.because()))
                        .toList())
                .contains(assessment.cautions().stream()
                        .map(Assessment.Caution::sentence)
                        .toList())
                .containsSubsequence(
                        "rig.yaml",
                        "Regatta",
                        "matched to A for insert",
                        "fails",
                        assessment.checks() + " checks run, "
                                + assessment.unchecked().size() + " unchecked",
                        assessment.count(Severity.BAKED_IN) + " baked-in",
                        "baked-in nothing after the take can put it right",
                        "A will show the pulsing of the light in protest committee on the quay",
                        "which holds 2.502 pulses",
                        "Do Set the shutters together",
                        "units.A.shutter 180° → 216°",
                        "Or Set the shutter of A to 216°",
                        "That would bring: B and A blur motion differently",
                        "ripple",
                        "flicker/mains-beat · line",
                        "lossy post can put it right at a visible cost",
                        "waived agreed to stay as it is",
                        "Agreed: nobody expects a shallow mast shot",
                        "aim for where an 18 % grey card must sit",
                        "25.2 % of the legal range on the waveform",
                        "not checked a fact is not known",
                        "gear.bodies.pellworth-teasel.ir-cut Look in: a test the crew can shoot.",
                        "Waits for it: exposure/nd-infrared of B.",
                        "take care local code and licensed or qualified people decide",
                        "caution/mains",
                        "sources",
                        "flicker/mains-beat");
    }

    @Test
    void wordsOfARigFileStayWords() {
        String html = SampleRigs.html(SampleRigs.nasty());
        assertThat(html)
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;")
                .doesNotContain("<script", "<img", "</svg><b>");
        assertThat(html).contains("bell \uFFFD");
        assertThat(html.codePoints().filter(c -> c != '\n'))
                .as("control characters")
                .noneMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT || c == 0xFFFE);
        // every tag of the page is one of the template's own
        assertThat(Pattern.compile("<([a-zA-Z][^\\s/>]*)")
                        .matcher(html)
                        .results()
                        .map(found -> found.group(1)))
                .allMatch(tag -> Pattern.matches(
                        "html|head|meta|link|title|style|body|svg|defs|pattern|path|text|desc|header|main|section|nav"
                                + "|div|footer|article|details|summary|figure|figcaption|table|caption|thead|tbody|tr"
                                + "|th|td|ul|li|dl|dt|dd|h1|h2|h3|p|b|span|code|del|ins|a",
                        tag));
        assertThat(Pattern.compile("\\son[a-z]+\\s*=").matcher(tagsOf(html)).find())
                .as("no attribute that runs anything")
                .isFalse();
    }

    private static String tagsOf(String html) {
        StringBuilder tags = new StringBuilder();
        Pattern.compile("<[a-zA-Z](?:[^>\"]|\"[^\"]*\")*>")
                .matcher(html)
                .results()
                .map(MatchResult::group)
                .forEach(
                        tag -> tags.append(tag.replaceAll("\"[^\"]*\"", "\"\"")).append('\n'));
        return tags.toString();
    }

    private static String words(String html) {
        return html.replaceAll("(?s)<style>.*?</style>", " ")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ")
                .replace(" ,", ",")
                .replaceAll("(?<=[a-z]) :", ":");
    }
}
