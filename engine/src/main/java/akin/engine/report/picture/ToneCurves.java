package akin.engine.report.picture;

import akin.engine.assess.Numbers;
import akin.model.derived.RecordedEncoding;
import akin.model.derived.ToneRange;
import akin.model.exposure.Light;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import akin.model.tone.SignalLevel;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** How the units write light: level over stops from middle grey, with grey and clip marked. */
final class ToneCurves {

    private static final int HEIGHT = 300;
    private static final double LEFT = 40;
    private static final double RIGHT = 388;
    private static final double TOP = 22;
    private static final double BOTTOM = 252;
    private static final double DARKEST = -8;
    private static final double LOWEST = -8;
    private static final double HIGHEST = 112;
    private static final double STEP = 0.1;
    private static final double MOST_STOPS = 10;

    private ToneCurves() {}

    /** A unit's curve; the range is null where its clip is not known. */
    private record Curve(Ink ink, Encoding encoding, Optional<ToneRange> range) {

        double end() {
            return Math.min(MOST_STOPS, range.map(ToneRange::headroom).orElse(encoding.headroomStops()));
        }

        double percent(double stops) {
            return 100 * SignalLevel.fullToLegal(encoding.encode(Encoding.MIDDLE_GREY * Light.ratio(stops)));
        }
    }

    static Figure of(Rig rig, List<Ink> inks) {
        List<Curve> curves = new ArrayList<>();
        Set<String> gaps = new LinkedHashSet<>();
        List<Figure.Row> rows = new ArrayList<>();
        for (Ink ink : inks) {
            Unit unit = rig.units().get(ink.index());
            List<Object> written = RecordedEncoding.derive(unit);
            List<Object> ranged = ToneRange.derive(unit);
            Facts.gaps(written).forEach(gaps::add);
            Optional<RecordedEncoding> encoding = Facts.first(written, RecordedEncoding.class);
            if (encoding.isPresent()) {
                Facts.gaps(ranged).forEach(gaps::add);
                Curve curve = new Curve(ink, encoding.get().encoding(), Facts.first(ranged, ToneRange.class));
                curves.add(curve);
                rows.add(row(curve, encoding.get().raw()));
            } else {
                rows.add(new Figure.Row(ink, List.of("not known", "not known", "not known")));
            }
        }
        Figure.Table table = new Figure.Table(List.of("records", "18 % grey sits at", "clips over grey by"), rows);
        String heading = "Tone curves";
        return new Figure(
                "tone-curves",
                heading,
                "How each unit writes light. Filled marks: 18 % grey. Upright bars: clip, as rated. A curve without a bar"
                        + " runs to its own end, since where the camera clips is not known.",
                curves.isEmpty() ? null : draw(curves).drawing(heading, table.words()),
                table,
                List.copyOf(gaps));
    }

    private static Figure.Row row(Curve curve, boolean raw) {
        return new Figure.Row(
                curve.ink(),
                List.of(
                        curve.encoding().name() + (raw ? ", raw developed to it" : ""),
                        Numbers.spoken(curve.percent(0), "%"),
                        curve.range()
                                .map(range -> Numbers.spoken(range.headroom(), "stops"))
                                .orElse("not known")));
    }

    private static Canvas draw(List<Curve> curves) {
        double most = curves.stream().mapToDouble(Curve::end).max().orElse(0);
        Scale x = Scale.even(DARKEST, Math.max(4, Math.ceil(most + 0.6)), LEFT, RIGHT);
        Scale y = Scale.even(LOWEST, HIGHEST, BOTTOM, TOP);
        Canvas canvas = new Canvas(HEIGHT);
        for (int level = 0; level <= 100; level += 20) {
            canvas.line(LEFT, y.at(level), RIGHT, y.at(level), "grid");
            canvas.text(LEFT - 6, y.at(level) + 4, "end", "tick", String.valueOf(level));
        }
        for (double stop : x.ticks(10)) {
            canvas.line(x.at(stop), BOTTOM, x.at(stop), BOTTOM + 4, "axis");
            canvas.text(x.at(stop), BOTTOM + 17, "middle", "tick", Words.signed(stop));
        }
        canvas.line(LEFT, BOTTOM, RIGHT, BOTTOM, "axis");
        canvas.line(x.at(0), TOP, x.at(0), BOTTOM, "grey");
        canvas.text(x.at(0), BOTTOM + 32, "middle", "axis-name", "stops from 18 % grey");
        canvas.text(LEFT - 34, TOP - 4, "start", "axis-name", "% of the legal range, as a waveform shows it");
        for (Curve curve : curves) {
            canvas.curve(points(curve, x, y), "curve " + curve.ink().look());
        }
        for (Curve curve : curves) {
            canvas.mark(curve.ink(), x.at(0), y.at(curve.percent(0)));
            curve.range().ifPresent(range -> {
                double at = range.headroom();
                if (x.holds(at) && curve.percent(at) <= HIGHEST) {
                    double level = y.at(curve.percent(at));
                    canvas.line(
                            x.at(at),
                            level - 9,
                            x.at(at),
                            level + 9,
                            "clip " + curve.ink().look());
                }
            });
        }
        for (Curve curve : curves) {
            String look = "name " + curve.ink().look();
            canvas.label(
                    x.at(0) + 13,
                    y.at(curve.percent(0)) + 14,
                    "start",
                    look,
                    curve.ink().tag());
            double end = visibleEnd(curve);
            String clip = curve.range().isPresent()
                    ? curve.ink().tag() + " clips"
                    : curve.ink().tag();
            boolean room = x.at(end) + 8 + Canvas.wide(clip) < Canvas.WIDTH;
            canvas.label(
                    x.at(end) + (room ? 8 : -8),
                    y.at(curve.percent(end)) + (room ? 4 : -12),
                    room ? "start" : "end",
                    look,
                    clip);
        }
        return canvas;
    }

    private static double visibleEnd(Curve curve) {
        double end = curve.end();
        while (end > DARKEST && curve.percent(end) > HIGHEST) {
            end -= STEP;
        }
        return end;
    }

    private static List<double[]> points(Curve curve, Scale x, Scale y) {
        DoubleUnaryOperator level = curve::percent;
        List<double[]> points = new ArrayList<>();
        double end = visibleEnd(curve);
        long steps = (long) Math.floor((end - DARKEST) / STEP);
        for (long i = 0; i <= steps; i++) {
            double stops = DARKEST + i * STEP;
            points.add(new double[] {x.at(stops), y.at(level.applyAsDouble(stops))});
        }
        points.add(new double[] {x.at(end), y.at(level.applyAsDouble(end))});
        return points;
    }
}
