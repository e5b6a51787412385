package akin.engine.report.picture;

import akin.engine.assess.Numbers;
import akin.model.derived.ToneRange;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How many stops each unit holds over and under middle grey, as rated. */
final class StopsOverGrey {

    private static final double LEFT = 16;
    private static final double RIGHT = 384;
    private static final double TOP = 40;
    private static final double ROW = 52;
    private static final double BAR = 18;
    private static final double LEAST = 4;
    private static final double MARGIN = 1.6;

    private StopsOverGrey() {}

    private record Reach(Ink ink, Optional<ToneRange> range) {

        double over() {
            return range.map(ToneRange::headroom).orElse(0.0);
        }

        double under() {
            return range.map(ToneRange::footroom).orElse(0.0);
        }
    }

    static Figure of(Rig rig, List<Ink> inks) {
        List<Reach> reaches = new ArrayList<>();
        List<String> gaps = new ArrayList<>();
        List<Figure.Row> rows = new ArrayList<>();
        for (Ink ink : inks) {
            Unit unit = rig.units().get(ink.index());
            List<Object> derived = ToneRange.derive(unit);
            Facts.gaps(derived).forEach(gaps::add);
            Optional<ToneRange> range = Facts.first(derived, ToneRange.class);
            reaches.add(new Reach(ink, range));
            rows.add(new Figure.Row(
                    ink,
                    List.of(
                            unit.iso() == null
                                    ? "not known"
                                    : "ISO " + unit.iso().value(),
                            range.map(r -> Numbers.spoken(r.headroom(), "stops"))
                                    .orElse("not known"),
                            range.map(ToneRange::footroom)
                                    .map(stops -> Numbers.spoken(stops, "stops"))
                                    .orElse("not known"))));
        }
        Figure.Table table = new Figure.Table(List.of("rated at", "over grey", "under grey"), rows);
        double hold = rig.match().tolerances().of(Tolerance.HIGHLIGHTS);
        String heading = "Stops over and under middle grey";
        return new Figure(
                "stops",
                heading,
                "From each unit's usable floor, past middle grey, to its clip. What must hold texture reaches "
                        + Numbers.spoken(hold, "stops") + " over grey.",
                reaches.stream().allMatch(reach -> reach.range().isEmpty())
                        ? null
                        : draw(reaches, hold).drawing(heading, table.words()),
                table,
                gaps);
    }

    private static Canvas draw(List<Reach> reaches, double hold) {
        double over = reaches.stream().mapToDouble(Reach::over).max().orElse(0);
        double under = reaches.stream().mapToDouble(Reach::under).max().orElse(0);
        double bottom = TOP + ROW * reaches.size();
        Scale x = Scale.even(
                -Math.max(LEAST, under) - MARGIN, Math.max(Math.max(LEAST, hold), over) + MARGIN, LEFT, RIGHT);
        Canvas canvas = new Canvas((int) bottom + 40);
        for (double stop : x.ticks(12)) {
            canvas.line(x.at(stop), TOP, x.at(stop), bottom, "grid");
            canvas.text(x.at(stop), bottom + 16, "middle", "tick", Words.signed(stop));
        }
        canvas.line(LEFT, bottom, RIGHT, bottom, "axis");
        canvas.text((LEFT + RIGHT) / 2, bottom + 32, "middle", "axis-name", "stops from 18 % grey");
        canvas.line(x.at(hold), TOP - 4, x.at(hold), bottom, "limit");
        canvas.text(x.at(hold) + 4, TOP - 8, "start", "note", "texture to " + Words.signed(hold));
        canvas.line(x.at(0), TOP - 4, x.at(0), bottom, "grey");
        canvas.text(x.at(0) - 4, TOP - 8, "end", "note", "18 % grey");
        double y = TOP;
        for (Reach reach : reaches) {
            row(canvas, x, y, reach);
            y += ROW;
        }
        return canvas;
    }

    private static void row(Canvas canvas, Scale x, double y, Reach reach) {
        double bar = y + 24;
        double middle = bar + BAR / 2;
        String look = reach.ink().look();
        canvas.text(LEFT, y + 17, "start", "name " + look, reach.ink().tag());
        if (reach.range().isEmpty()) {
            canvas.box(x.at(0) - 60, bar, 120, BAR, "unknown");
            canvas.text(x.at(0), middle + 4, "middle", "note", "not known");
            return;
        }
        ToneRange range = reach.range().get();
        double clip = x.at(range.headroom());
        Double floor = range.footroom();
        double from = floor == null ? x.at(0) : x.at(-floor);
        canvas.box(from, bar, clip - from, BAR, "bar " + look);
        canvas.line(clip, bar - 3, clip, bar + BAR + 3, "clip " + look);
        canvas.text(clip + 6, middle + 4, "start", "value", Words.stops(range.headroom()));
        canvas.mark(reach.ink(), x.at(0), middle);
        if (floor == null) {
            canvas.text(x.at(0) - 12, middle + 4, "end", "note", "floor not known");
        } else {
            canvas.text(from - 6, middle + 4, "end", "value", Words.stops(-floor));
        }
    }
}
