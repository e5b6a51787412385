package akin.engine.samples;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.RuleBase;
import akin.engine.assess.Verdict;
import akin.engine.book.CompiledBook;
import akin.engine.edit.Edits;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Schemas;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.engine.report.JsonReport;
import akin.engine.report.Style;
import akin.engine.report.TextReport;
import akin.model.finding.Edit;
import akin.model.finding.Severity;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/**
 * Each sample production gives the assessment that stands beside it. After a change that is meant, write them anew with
 * {@code -Dakin.golden=write}, and read the difference before it is committed.
 */
class SamplesTest {

    private static final Path SAMPLES = Path.of("..", "samples");

    /** The version that the expected reports say, so that a release does not change them. */
    private static final String VERSION = "0.1.0";

    private static final boolean WRITE = "write".equals(System.getProperty("akin.golden"));
    private static final int MOST_ROUNDS = 40;

    private static final Schemas SCHEMAS = new Schemas();
    private static final Binder BINDER = new Binder();
    private static final Checker CHECKER =
            new Checker(RuleBase.builtIn(), CompiledBook.load(), BINDER, Catalogue.builtIn(BINDER));

    static List<String> samples() {
        try (Stream<Path> folders = Files.list(SAMPLES)) {
            List<String> names = folders.filter(folder -> Files.exists(folder.resolve("rig.yaml")))
                    .map(folder -> String.valueOf(folder.getFileName()))
                    .sorted()
                    .toList();
            assertThat(names).hasSizeGreaterThanOrEqualTo(3);
            return names;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void givesTheAssessmentBesideIt(String sample) {
        Assessment assessment = check(rig(sample));
        golden(sample, "expected.json", JsonReport.render(assessment, VERSION));
        golden(sample, "expected.txt", TextReport.render(assessment, Style.PLAIN));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void followsTheSchemas(String sample) {
        assertThat(SCHEMAS.complaints("rig", rig(sample).text())).isEmpty();
        JsonNode report = SCHEMAS.json(JsonReport.render(check(rig(sample)), VERSION));
        assertThat(SCHEMAS.complaints("report", report)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void givesTheSameBytesAgain(String sample) {
        String first = JsonReport.render(check(rig(sample)), VERSION);
        assertThat(JsonReport.render(check(rig(sample)), VERSION)).isEqualTo(first);
    }

    @Test
    void theMatchedOnePassesEvenStrictly() {
        Assessment assessment = CHECKER.check(rig("lantern-room"), Terms.OF_THE_RIG, FailOn.FIXABLE);
        assertThat(assessment.verdict()).isEqualTo(Verdict.PASSES);
        assertThat(assessment.checks()).isGreaterThan(assessment.unchecked().size());
    }

    @Test
    void theFaultyOneHasADozenFaultsOfManyTopics() {
        Assessment assessment = check(rig("night-market"));
        assertThat(assessment.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(assessment.findings())
                .filteredOn(finding -> finding.severity() != Severity.ADVICE)
                .extracting(Assessment.Entry::rule)
                .hasSizeGreaterThanOrEqualTo(12);
        assertThat(assessment.findings().stream()
                        .map(finding -> finding.rule().replaceAll("/.*", ""))
                        .distinct())
                .hasSizeGreaterThanOrEqualTo(7);
    }

    /** Whoever takes the first fix that each finding offers, one after the other, ends with a rig that passes. */
    @Test
    void theFaultyOneIsMendedByItsOwnFixes() {
        Document rig = rig("night-market");
        List<String> story = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        Assessment assessment = check(rig);
        for (int round = 0; round < MOST_ROUNDS && assessment.verdict() != Verdict.PASSES; round++) {
            assertThat(seen.add(rig.text()))
                    .as("fixes go round in circles:\n%s", String.join("\n", story))
                    .isTrue();
            Assessment.Entry worst = assessment.findings().stream()
                    .filter(finding -> firstEdits(finding).isPresent())
                    .findFirst()
                    .orElseThrow();
            List<Edit> edits = firstEdits(worst).orElseThrow();
            story.add(worst.severity() + " " + worst.rule() + " " + worst.units() + ": " + edits);
            rig = YamlReader.read(rig.file(), Edits.apply(rig, edits));
            assessment = check(rig);
        }
        assertThat(assessment.findings())
                .as("after\n%s", String.join("\n", story))
                .noneMatch(finding -> finding.severity().compareTo(Severity.LOSSY) <= 0);
        assertThat(assessment.verdict()).isEqualTo(Verdict.PASSES);
        assertThat(story).hasSizeGreaterThan(5);
        // what a camera assistant wrote beside the settings is still there
        assertThat(rig.text()).contains("# \"full frame looks better\"", "# out of habit");
    }

    private static Optional<List<Edit>> firstEdits(Assessment.Entry finding) {
        return finding.fixes().stream()
                .filter(fix -> !fix.edits().isEmpty())
                .findFirst()
                .map(fix -> fix.edits().stream()
                        .map(change -> new Edit(change.path(), change.to()))
                        .toList());
    }

    private static Assessment check(Document rig) {
        return CHECKER.check(rig, Terms.OF_THE_RIG, FailOn.LOSSY);
    }

    private static Document rig(String sample) {
        return YamlReader.read("rig.yaml", read(SAMPLES.resolve(sample).resolve("rig.yaml")));
    }

    private static void golden(String sample, String name, String given) {
        Path file = SAMPLES.resolve(sample).resolve(name);
        if (WRITE) {
            try {
                Files.writeString(file, given);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        assertThat(given)
                .as("%s/%s; -Dakin.golden=write writes it anew", sample, name)
                .isEqualTo(read(file));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
