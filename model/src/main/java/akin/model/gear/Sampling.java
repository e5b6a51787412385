package akin.model.gear;

/** How the photosites of the active area become the pixels of the picture. */
public enum Sampling {
    /** More photosites than pixels, all of them used. */
    OVERSAMPLED("oversampled"),
    /** One photosite a pixel. */
    ONE_TO_ONE("one-to-one"),
    /** Neighbouring photosites added before read-out. */
    BINNED("binned"),
    /** Lines of photosites left out. */
    LINE_SKIPPED("line-skipped"),
    /** Fewer photosites than pixels. */
    UPSCALED("upscaled");

    private final String word;

    Sampling(String word) {
        this.word = word;
    }

    /** The word used in gear files. */
    public String word() {
        return word;
    }

    @Override
    public String toString() {
        return word;
    }
}
