package akin.engine.report;

import akin.model.finding.Severity;

/** What a severity means, in words that stand behind its name. */
public final class Meaning {

    private Meaning() {}

    /** When a mismatch of this severity can still be put right. */
    public static String of(Severity severity) {
        return switch (severity) {
            case BAKED_IN -> "nothing after the take can put it right";
            case LOSSY -> "post can put it right at a visible cost";
            case FIXABLE -> "post puts it right at the cost of time";
            case ADVICE -> "keeps the match from drifting";
        };
    }
}
