package akin.model.optics;

/**
 * What a crop factor is counted against. A number such as 1.5 means different picture areas under the two, so whoever
 * gives a crop factor must say which.
 */
public enum CropReference {
    /**
     * Diagonal of the 36 mm × 24 mm frame, 43.2666 mm, over the diagonal of the picture area: what lens databases use.
     */
    DIAGONAL,
    /** Width of the 36 mm frame over the width of the picture area: what a matched horizontal view needs. */
    WIDTH
}
