package akin.model.finding;

/** When the mismatch can still be put right. The order is the order of urgency: the first is the most urgent. */
public enum Severity {
    /** Nothing after the take can put it right. */
    BAKED_IN("baked-in"),
    /** Post can put it right at a visible cost. */
    LOSSY("lossy"),
    /** Post puts it right at the cost of time. */
    FIXABLE("fixable"),
    /** A habit that keeps the match from drifting. */
    ADVICE("advice");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /** The word used in rig files, reports and on the command line, such as {@code baked-in}. */
    public String word() {
        return word;
    }

    /**
     * The severity with this word.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static Severity of(String word) {
        for (Severity severity : values()) {
            if (severity.word.equals(word)) {
                return severity;
            }
        }
        throw new IllegalArgumentException("no severity is called " + word);
    }

    @Override
    public String toString() {
        return word;
    }
}
