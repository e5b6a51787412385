package akin.engine.report.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A field to draw on. Labels keep out of each other's way. */
final class Canvas {

    /** One width for all, narrow enough that a phone shows the text at its own size. */
    static final int WIDTH = 400;

    private static final double LINE = 14;
    private static final double CHARACTER = 6.9;
    private static final int TRIES = 12;
    private static final double NEAR = 6;
    private static final double GROWTH = 0.75;

    private final int height;
    private final List<Drawing.Shape> shapes = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<double[]> taken = new ArrayList<>();

    private record Mark(Ink ink, double x, double y) {

        boolean meets(Mark other) {
            return Math.hypot(x - other.x, y - other.y) < NEAR;
        }
    }

    Canvas(int height) {
        this.height = height;
    }

    Drawing drawing(String title, String description) {
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            long above = marks.subList(i + 1, marks.size()).stream()
                    .filter(mark::meets)
                    .count();
            path(
                    mark.ink().mark(mark.x(), mark.y(), 1 + GROWTH * above),
                    "mark " + mark.ink().look());
        }
        return new Drawing(WIDTH, height, title, description, shapes);
    }

    /** A coordinate as it is written: to a tenth. */
    static String px(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    void line(double x1, double y1, double x2, double y2, String look) {
        path("M" + px(x1) + " " + px(y1) + "L" + px(x2) + " " + px(y2), look);
    }

    void box(double x, double y, double width, double high, String look) {
        path("M" + px(x) + " " + px(y) + "h" + px(width) + "v" + px(high) + "h" + px(-width) + "z", look);
    }

    /** A line through points, each an x and a y. */
    void curve(List<double[]> points, String look) {
        StringBuilder data = new StringBuilder();
        for (double[] point : points) {
            data.append(data.isEmpty() ? "M" : "L")
                    .append(px(point[0]))
                    .append(' ')
                    .append(px(point[1]));
        }
        if (!points.isEmpty()) {
            path(data.toString(), look);
        }
    }

    void path(String data, String look) {
        shapes.add(new Drawing.Path(data, look));
    }

    /** A unit's mark. Marks lie above all else; where several fall together the first is the largest. */
    void mark(Ink ink, double x, double y) {
        marks.add(new Mark(ink, x, y));
        taken.add(new double[] {x - 6, y - 6, x + 6, y + 6});
    }

    void text(double x, double y, String anchor, String look, String text) {
        shapes.add(new Drawing.Text(px(x), px(y), anchor, look, text));
        taken.add(room(x, y, anchor, text));
    }

    /** Text near a point: there if it is free, else the nearest line above or below that is. */
    void label(double x, double y, String anchor, String look, String text) {
        for (int i = 0; i < TRIES; i++) {
            int lines = (i + 1) / 2;
            double at = y + lines * LINE * (i % 2 == 0 ? 1 : -1);
            double[] room = room(x, at, anchor, text);
            boolean free = room[1] > 0
                    && room[3] < height
                    && taken.stream()
                            .noneMatch(other -> room[0] < other[2]
                                    && other[0] < room[2]
                                    && room[1] < other[3]
                                    && other[1] < room[3]);
            if (free) {
                text(x, at, anchor, look, text);
                return;
            }
        }
        text(x, y, anchor, look, text);
    }

    /** How wide a text is at most, about. */
    static double wide(String text) {
        return text.length() * CHARACTER;
    }

    private static double[] room(double x, double y, String anchor, String text) {
        double width = wide(text);
        double left = switch (anchor) {
            case "middle" -> x - width / 2;
            case "end" -> x - width;
            default -> x;
        };
        return new double[] {left, y - 10, left + width, y + 3};
    }
}
