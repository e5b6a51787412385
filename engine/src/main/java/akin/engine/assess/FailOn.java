package akin.engine.assess;

import akin.model.finding.Severity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The least urgent thing that makes a check fail. */
public enum FailOn {
    /** Only what nothing can put right. */
    BAKED_IN(Severity.BAKED_IN),
    /** That, and what costs quality. The default. */
    LOSSY(Severity.LOSSY),
    /** That, and what costs time. */
    FIXABLE(Severity.FIXABLE),
    /** Any finding. */
    ADVICE(Severity.ADVICE),
    /** Any finding, and anything that could not be checked. */
    UNCHECKED(null);

    private final @Nullable Severity least;

    FailOn(@Nullable Severity least) {
        this.least = least;
    }

    /** The word used on the command line. */
    public String word() {
        return least == null ? "unchecked" : least.word();
    }

    /**
     * The constant of a word.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static FailOn of(String word) {
        for (FailOn failOn : values()) {
            if (failOn.word().equals(word)) {
                return failOn;
            }
        }
        throw new IllegalArgumentException("nothing to fail on is called " + word);
    }

    /** True when a finding of this severity makes a check fail. */
    public boolean fails(Severity severity) {
        return least == null || severity.compareTo(least) <= 0;
    }

    /** True when something that could not be checked keeps a check from passing. */
    public boolean failsUnchecked() {
        return least == null;
    }

    /** What the findings and the unchecked come to. */
    public Verdict verdict(List<Severity> findings, boolean anyUnchecked) {
        if (findings.stream().anyMatch(this::fails)) {
            return Verdict.FAILS;
        }
        return failsUnchecked() && anyUnchecked ? Verdict.INCOMPLETE : Verdict.PASSES;
    }

    @Override
    public String toString() {
        return word();
    }
}
