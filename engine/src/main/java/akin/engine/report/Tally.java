package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.model.finding.Severity;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** How many there are of what, in one rig file or several. */
record Tally(List<Assessment> assessments) {

    static Tally of(Assessment assessment) {
        return new Tally(List.of(assessment));
    }

    static Tally of(Batch batch) {
        return new Tally(batch.read().stream().map(Batch.Read::assessment).toList());
    }

    int checks() {
        return assessments.stream().mapToInt(Assessment::checks).sum();
    }

    int unchecked() {
        return assessments.stream().mapToInt(a -> a.unchecked().size()).sum();
    }

    int waived() {
        return assessments.stream().mapToInt(a -> a.waived().size()).sum();
    }

    int known() {
        return assessments.stream().mapToInt(a -> a.known().size()).sum();
    }

    long count(Severity severity) {
        return assessments.stream().mapToLong(a -> a.count(severity)).sum();
    }

    /** Checks, unchecked, verdict and findings by severity in one line: how every report ends. */
    String line(String verdict) {
        String counts = Arrays.stream(Severity.values())
                .map(severity -> count(severity) + " " + severity.word())
                .collect(Collectors.joining(", "));
        return checks() + " checks run, " + unchecked() + " unchecked: " + verdict + " (" + counts
                + (waived() == 0 ? "" : ", " + waived() + " waived") + (known() == 0 ? "" : ", " + known() + " known")
                + ")";
    }

    /** What a whole batch comes to, in one line. */
    static String line(Batch batch) {
        String verdicts = batch.parts().stream()
                .collect(Collectors.groupingBy(Batch.Part::verdict, java.util.TreeMap::new, Collectors.counting()))
                .descendingMap()
                .entrySet()
                .stream()
                .map(entry -> entry.getValue() + " " + said(entry.getKey()))
                .collect(Collectors.joining(", "));
        int rigs = batch.parts().size();
        return rigs + (rigs == 1 ? " rig file: " : " rig files: ") + verdicts + "; "
                + of(batch).line(said(batch.verdict()));
    }

    /** A verdict as a sentence has it. */
    static String said(String verdict) {
        return verdict.equals(Batch.NOT_READ) ? "not read" : verdict;
    }
}
