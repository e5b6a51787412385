package akin.engine.read;

/**
 * Where a piece of text stands in a file.
 *
 * @param line from 1
 * @param column from 1, in code points
 * @param from index of its first code point in the text, from 0
 * @param to index behind its last code point
 */
public record Place(int line, int column, int from, int to) {

    /** The first character of a file. */
    public static final Place START = new Place(1, 1, 0, 0);
}
