package akin.model.gear;

/** Which part of the code range carries the picture. */
public enum SignalRange {
    /** Every code. */
    FULL("full"),
    /** The range of broadcast video, 64 to 940 of 1023. */
    LEGAL("legal");

    private final String word;

    SignalRange(String word) {
        this.word = word;
    }

    /** The word used in gear and rig files. */
    public String word() {
        return word;
    }

    @Override
    public String toString() {
        return word;
    }
}
