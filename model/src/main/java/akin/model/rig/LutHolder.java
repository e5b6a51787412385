package akin.model.rig;

/** Which device puts the look-up table on the picture that is watched. */
public enum LutHolder {
    /** The camera body, on its own screen and its monitoring output. */
    BODY("body"),
    /** The external recorder. */
    RECORDER("recorder"),
    /** The screen that the picture is watched on, or a box before it. */
    SCREEN("screen");

    private final String word;

    LutHolder(String word) {
        this.word = word;
    }

    /** The word used in rig files. */
    public String word() {
        return word;
    }

    @Override
    public String toString() {
        return word;
    }
}
