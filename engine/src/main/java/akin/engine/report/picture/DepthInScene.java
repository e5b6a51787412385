package akin.engine.report.picture;

import akin.engine.assess.Numbers;
import akin.model.derived.FocusDepth;
import akin.model.derived.SubjectDistance;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is sharp around the subject of a scene, from near to far. */
final class DepthInScene {

    private static final double LEFT = 16;
    private static final double RIGHT = 384;
    private static final double TOP = 8;
    private static final double ROW = 46;
    private static final double BAR = 14;

    /** Where far is more than so many times near, equal ratios are drawn equally long. */
    private static final double EVEN_UP_TO = 4;

    /** How far beyond the farthest finite distance the axis goes, as a factor. */
    private static final double MARGIN = 1.12;

    private DepthInScene() {}

    private record Sharp(Ink ink, FocusDepth.InScene in) {

        double far() {
            return in.depth().reachesInfinity()
                    ? in.distance().millimetres()
                    : in.depth().farMm();
        }
    }

    static Figure of(Rig rig, List<Ink> inks, Scene scene) {
        List<Sharp> sharp = new ArrayList<>();
        Set<String> gaps = new LinkedHashSet<>();
        List<Figure.Row> rows = new ArrayList<>();
        for (Ink ink : inks) {
            Unit unit = rig.units().get(ink.index());
            if (!scene.shotBy(unit.name())) {
                continue;
            }
            List<Object> distance = SubjectDistance.derive(unit, scene);
            List<Object> depth = FocusDepth.derive(unit);
            Facts.gaps(distance).forEach(gaps::add);
            Facts.gaps(depth).forEach(gaps::add);
            Optional<FocusDepth.InScene> in = Facts.first(depth, FocusDepth.class).stream()
                    .flatMap(known -> known.inScenes(rig).stream())
                    .filter(one -> one.scene().index() == scene.index())
                    .findFirst();
            in.ifPresent(one -> sharp.add(new Sharp(ink, one)));
            rows.add(new Figure.Row(
                    ink,
                    in.map(DepthInScene::cells).orElse(List.of("not known", "not known", "not known", "not known"))));
        }
        Figure.Table table = new Figure.Table(List.of("subject at", "sharp from", "to", "depth"), rows);
        String heading = "Depth in " + scene.name();
        return new Figure(
                "depth-" + (scene.index() + 1),
                heading,
                "What is acceptably sharp from near to far, as the lenses are set. The mark is the subject.",
                sharp.isEmpty() ? null : draw(sharp).drawing(heading, table.words()),
                table,
                List.copyOf(gaps));
    }

    private static List<String> cells(FocusDepth.InScene in) {
        boolean endless = in.depth().reachesInfinity();
        return List.of(
                in.distance().toString(),
                Words.metres(in.depth().nearMm()),
                endless ? "infinity" : Words.metres(in.depth().farMm()),
                endless ? "endless" : Words.metres(in.depth().totalMm()));
    }

    private static Canvas draw(List<Sharp> sharp) {
        double near = sharp.stream()
                .mapToDouble(one -> one.in().depth().nearMm())
                .min()
                .orElse(1);
        double far = sharp.stream().mapToDouble(Sharp::far).max().orElse(1);
        boolean endless = sharp.stream().anyMatch(one -> one.in().depth().reachesInfinity());
        double margin = endless ? MARGIN * MARGIN * MARGIN : MARGIN;
        double bottom = TOP + ROW * sharp.size() + 6;
        boolean even = far / near <= EVEN_UP_TO && !endless;
        Scale x = new Scale(near / MARGIN / 1000, far * margin / 1000, LEFT, RIGHT, even);
        Canvas canvas = new Canvas((int) bottom + 40);
        for (double tick : x.ticks(7)) {
            canvas.line(x.at(tick), TOP, x.at(tick), bottom, "grid");
            canvas.text(
                    x.at(tick),
                    bottom + 16,
                    "middle",
                    "tick",
                    Numbers.spoken(tick, "m").replace(" m", ""));
        }
        canvas.line(LEFT, bottom, RIGHT, bottom, "axis");
        canvas.text(
                (LEFT + RIGHT) / 2,
                bottom + 32,
                "middle",
                "axis-name",
                even ? "metres" : "metres, equal ratios equally long");
        double y = TOP;
        for (Sharp one : sharp) {
            row(canvas, x, y, one);
            y += ROW;
        }
        return canvas;
    }

    private static void row(Canvas canvas, Scale x, double y, Sharp one) {
        String look = one.ink().look();
        boolean endless = one.in().depth().reachesInfinity();
        double bar = y + 22;
        double middle = bar + BAR / 2;
        double from = x.at(one.in().depth().nearMm() / 1000);
        double to = endless ? x.end() - 8 : x.at(one.in().depth().farMm() / 1000);
        String depth =
                endless ? "sharp to infinity" : Words.metres(one.in().depth().totalMm()) + " deep";
        canvas.text(LEFT, y + 15, "start", "name " + look, one.ink().tag() + ": " + depth);
        canvas.box(from, bar, to - from, BAR, "bar " + look);
        canvas.line(from, bar - 3, from, bar + BAR + 3, "clip " + look);
        if (endless) {
            canvas.path(
                    "M" + Canvas.px(to) + " " + Canvas.px(bar - 3) + "l9 " + Canvas.px(BAR / 2 + 3) + "l-9 "
                            + Canvas.px(BAR / 2 + 3) + "z",
                    "mark " + look);
        } else {
            canvas.line(to, bar - 3, to, bar + BAR + 3, "clip " + look);
        }
        canvas.mark(one.ink(), x.at(one.in().distance().millimetres() / 1000), middle);
    }
}
