package akin.engine.report.picture;

import java.util.Comparator;
import java.util.List;

/** Rectangles around one centre, each named beside the nest. */
final class Nest {

    private static final double LEFT = 8;
    private static final double ROOM = 240;
    private static final double MOST_HEIGHT = 200;
    private static final double TOP = 12;
    private static final double NAMES = 270;
    private static final double LINE = 22;

    private Nest() {}

    /**
     * One rectangle.
     *
     * @param width its width, on the scale of all
     * @param height its height
     * @param partWidth width of the part of it that is shaded; 0 for none
     * @param partHeight height of that part
     * @param name what stands beside it
     */
    record Frame(Ink ink, double width, double height, double partWidth, double partHeight, String name) {}

    /** Draws them, and in the middle what the shaded part is called. */
    static Canvas draw(List<Frame> frames, String middle) {
        double widest = frames.stream().mapToDouble(Frame::width).max().orElse(1);
        double highest = frames.stream().mapToDouble(Frame::height).max().orElse(1);
        double scale = Math.min(ROOM / widest, MOST_HEIGHT / highest);
        double tall = Math.max(highest * scale, LINE * frames.size());
        double cx = LEFT + ROOM / 2;
        double cy = TOP + tall / 2;
        Canvas canvas = new Canvas((int) Math.ceil(tall + 2 * TOP));
        boolean onePart =
                frames.stream().mapToDouble(Frame::partWidth).distinct().count() == 1;
        for (Frame frame : onePart ? frames.subList(0, 1) : frames) {
            double width = frame.partWidth() * scale;
            double height = frame.partHeight() * scale;
            if (width > 0) {
                canvas.box(
                        cx - width / 2,
                        cy - height / 2,
                        width,
                        height,
                        onePart ? "common" : "part " + frame.ink().look());
            }
        }
        if (!middle.isEmpty()) {
            canvas.text(cx, cy + 4, "middle", "value", "common " + middle);
        }
        for (Frame frame : frames) {
            double width = frame.width() * scale;
            double height = frame.height() * scale;
            canvas.box(
                    cx - width / 2,
                    cy - height / 2,
                    width,
                    height,
                    "frame " + frame.ink().look());
        }
        List<Frame> widestFirst = frames.stream()
                .sorted(Comparator.comparingDouble(Frame::width).reversed())
                .toList();
        double y = cy - LINE * (frames.size() - 1) / 2;
        for (Frame frame : widestFirst) {
            double edge = cx + frame.width() * scale / 2;
            canvas.line(edge, y, NAMES - 14, y, "lead " + frame.ink().look());
            canvas.mark(frame.ink(), NAMES - 10, y);
            canvas.text(NAMES, y + 4, "start", "name " + frame.ink().look(), frame.name());
            y += LINE;
        }
        return canvas;
    }
}
