package akin.engine.report.picture;

import java.util.List;

/**
 * Shapes on a field, ready to be written as SVG. Coordinates run from the top left corner; a look is one or more names of
 * style rules.
 *
 * @param width width of the field
 * @param height height of the field
 * @param title its name
 * @param description what it shows, in sentences
 * @param shapes what is on it, the lowest first
 */
public record Drawing(int width, int height, String title, String description, List<Shape> shapes) {

    /** Copies the list. */
    public Drawing {
        shapes = List.copyOf(shapes);
    }

    /** Something on the field. */
    public sealed interface Shape {
        /** Names of the style rules that hold for it. */
        String look();
    }

    /**
     * A line or an area.
     *
     * @param data its path, in the words of SVG
     */
    public record Path(String data, String look) implements Shape {}

    /**
     * Text on one line.
     *
     * @param x where it is tied, across
     * @param y its base line
     * @param anchor which end of it is tied there: start, middle or end
     */
    public record Text(String x, String y, String anchor, String look, String text) implements Shape {}
}
