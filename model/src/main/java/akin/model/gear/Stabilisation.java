package akin.model.gear;

/** What keeps the picture steady inside a body or a lens. */
public enum Stabilisation {
    /** Nothing. */
    NONE("none"),
    /** The sensor moves. */
    SENSOR("sensor"),
    /** The picture is cropped and shifted. */
    ELECTRONIC("electronic"),
    /** A group of the lens moves. */
    OPTICAL("optical");

    private final String word;

    Stabilisation(String word) {
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
