package akin.engine.baseline;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.assess.Assessment;
import akin.engine.assess.FailOn;
import akin.engine.assess.Verdict;
import akin.engine.read.Place;
import akin.model.finding.Severity;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A rule may find the same fault of one setting more than once, such as in several scenes: then they are counted. */
class CountedTest {

    private static Assessment assessment(Severity... severities) {
        List<Assessment.Entry> entries = Arrays.stream(severities)
                .map(severity -> new Assessment.Entry(
                        "motion/pan-too-fast",
                        severity,
                        1,
                        List.of("A"),
                        List.of(),
                        "A judders in scene " + severity,
                        "",
                        List.of(),
                        List.of(),
                        "units.A.shutter",
                        Place.START,
                        List.of()))
                .toList();
        return new Assessment(
                "rig.yaml",
                "",
                "A",
                "intercut",
                Verdict.FAILS,
                1,
                entries,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static Baseline baseline(Assessment assessment) {
        return new Baseline(new TreeMap<>(Map.of("rig.yaml", Baseline.count(assessment))));
    }

    @Test
    void asManyAsThereWereAreKnownAndTheMostUrgentOfMoreIsTakenAsNew() {
        Baseline baseline = baseline(assessment(Severity.LOSSY, Severity.ADVICE));
        assertThat(baseline.size()).isEqualTo(2);
        Assessment same = baseline.apply("rig.yaml", assessment(Severity.LOSSY, Severity.LOSSY), FailOn.LOSSY);
        assertThat(same.findings()).isEmpty();
        assertThat(same.verdict()).isEqualTo(Verdict.PASSES);
        Assessment more = baseline.apply(
                "rig.yaml", assessment(Severity.BAKED_IN, Severity.LOSSY, Severity.ADVICE), FailOn.LOSSY);
        assertThat(more.findings()).extracting(Assessment.Entry::severity).containsExactly(Severity.BAKED_IN);
        assertThat(more.known())
                .extracting(Assessment.Entry::severity)
                .containsExactly(Severity.LOSSY, Severity.ADVICE);
        assertThat(more.verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void eachThatIsLessIsGone() {
        Baseline baseline = baseline(assessment(Severity.LOSSY, Severity.LOSSY, Severity.ADVICE));
        assertThat(baseline.gone("rig.yaml", Baseline.count(assessment(Severity.ADVICE))))
                .hasSize(2)
                .allSatisfy(gone -> assertThat(gone.key().path()).isEqualTo("units.A.shutter"));
    }

    @Test
    void anotherRigIsNotKnown() {
        Assessment assessment = assessment(Severity.LOSSY);
        assertThat(baseline(assessment)
                        .apply("other.yaml", assessment, FailOn.LOSSY)
                        .known())
                .isEmpty();
    }
}
