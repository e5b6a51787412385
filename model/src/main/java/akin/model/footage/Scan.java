package akin.model.footage;

/** How the lines of a picture were scanned. */
public enum Scan {
    /** Every line at one time. */
    PROGRESSIVE("progressive"),
    /** Every other line first, the rest half a frame later. */
    INTERLACED("interlaced");

    private final String word;

    Scan(String word) {
        this.word = word;
    }

    /** The word used in tables of clips. */
    @Override
    public String toString() {
        return word;
    }
}
