package akin.engine.assess;

/** What an assessment comes to. */
public enum Verdict {
    /** Nothing at or above the failing severity, and nothing unchecked that was asked to be. */
    PASSES("passes"),
    /** At least one finding at or above the failing severity. */
    FAILS("fails"),
    /** Nothing failed, but something could not be checked and the caller asked to fail on that. */
    INCOMPLETE("incomplete");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word used in reports. */
    public String word() {
        return word;
    }
}
