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

    /** The place of a single code point of a text; a byte order mark before the text does not count as a column. */
    static Place of(String text, int index) {
        int line = 1;
        int column = text.startsWith(YamlReader.MARK) ? 0 : 1;
        int i = 0;
        for (int seen = 0; seen < index && i < text.length(); seen++) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            boolean breaks = c == '\n' || (c == '\r' && !text.startsWith("\n", i));
            line += breaks ? 1 : 0;
            column = breaks ? 1 : column + 1;
        }
        return new Place(line, Math.max(1, column), index, index);
    }
}
