package akin.engine.report.picture;

import akin.engine.assess.Numbers;
import akin.model.derived.ExposureTime;
import akin.model.derived.Flicker;
import akin.model.derived.PulsingLight;
import akin.model.rig.LightKind;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import akin.model.timing.ExposureTiming;
import akin.model.timing.LightPulses;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** The shutters against what pulsing light leaves free: how much exposures differ, over exposure time. */
final class SafeShutters {

    private static final int HEIGHT = 256;
    private static final double LEFT = 40;
    private static final double RIGHT = 384;
    private static final double TOP = 48;
    private static final double BOTTOM = 208;
    private static final int STEPS = 440;
    private static final int HALVINGS = 24;
    private static final double LEAST_PERCENT = 10;
    private static final double MOST_PERCENT = 80;
    private static final double LABEL_ROOM = 42;

    /** Pulses that are drawn at most; where more fit, every shutter is near enough to a whole number of them. */
    private static final int MOST_PULSES = 40;

    private SafeShutters() {}

    private record Shot(Ink ink, ExposureTime exposure, PulsingLight light) {

        double ripple() {
            return new Flicker(light, exposure).ripplePercent();
        }

        double milliseconds() {
            return exposure.milliseconds();
        }
    }

    /** A figure for each mains frequency that light pulses with; one that says so where no light is known to. */
    static List<Figure> of(Rig rig, List<Ink> inks) {
        Set<String> gaps = new LinkedHashSet<>();
        Map<BigFraction, Map<Ink, PulsingLight>> byMains = new TreeMap<>();
        Map<BigFraction, Set<String>> where = new LinkedHashMap<>();
        for (Ink ink : inks) {
            List<Object> lights = PulsingLight.derive(rig, rig.units().get(ink.index()));
            Facts.gaps(lights).forEach(gaps::add);
            Facts.all(lights, PulsingLight.class).forEach(light -> {
                byMains.computeIfAbsent(light.hertz(), hertz -> new TreeMap<>(SafeShutters::byIndex))
                        .putIfAbsent(ink, light);
                where.computeIfAbsent(light.hertz(), hertz -> new LinkedHashSet<>())
                        .add(light.lights().stream().map(LightKind::word).collect(Collectors.joining(" and ")) + " in "
                                + light.scene());
            });
        }
        if (byMains.isEmpty()) {
            return List.of(new Figure(
                    "shutters",
                    "Shutters under pulsing light",
                    gaps.isEmpty()
                            ? "No light that pulses with the mains is planned."
                            : "Whether light pulses is not known.",
                    null,
                    new Figure.Table(List.of(), List.of()),
                    List.copyOf(gaps)));
        }
        List<Figure> figures = new ArrayList<>();
        byMains.forEach((hertz, lit) -> figures.add(figure(
                rig, hertz, lit, String.join("; ", where.getOrDefault(hertz, Set.of())), gaps, figures.size() + 1)));
        return figures;
    }

    private static int byIndex(Ink a, Ink b) {
        return Integer.compare(a.index(), b.index());
    }

    private static Figure figure(
            Rig rig, BigFraction hertz, Map<Ink, PulsingLight> lit, String where, Set<String> lightGaps, int number) {
        Set<String> gaps = new LinkedHashSet<>(lightGaps);
        List<Shot> shots = new ArrayList<>();
        List<Figure.Row> rows = new ArrayList<>();
        BigFraction longest = BigFraction.ZERO;
        PulsingLight any = null;
        for (Map.Entry<Ink, PulsingLight> entry : lit.entrySet()) {
            Ink ink = entry.getKey();
            Unit unit = rig.units().get(ink.index());
            any = entry.getValue();
            longest = max(longest, unit.rate().frameSeconds());
            List<Object> derived = ExposureTime.derive(unit);
            Facts.gaps(derived).forEach(gaps::add);
            Optional<ExposureTime> exposure = Facts.first(derived, ExposureTime.class);
            if (exposure.isPresent()) {
                longest = max(longest, exposure.get().seconds());
                shots.add(new Shot(ink, exposure.get(), entry.getValue()));
            }
            rows.add(new Figure.Row(ink, cells(unit, exposure, entry.getValue())));
        }
        double allowed = rig.match().tolerances().of(Tolerance.FLICKER_RIPPLE);
        String mains = Numbers.spoken(hertz.doubleValue(), "Hz");
        String heading = "Shutters under light on " + mains;
        Figure.Table table =
                new Figure.Table(List.of("shutter", "exposes for", "exposures differ by", "nearest safe time"), rows);
        BigFraction end = longest.compareTo(capped(hertz)) < 0 ? longest : capped(hertz);
        return new Figure(
                "shutters-" + number,
                heading,
                "How much exposures differ at the worst, by how long they are. Shaded: safe windows, "
                        + Numbers.spoken(allowed, "%") + " or less, with their time in seconds. The light: " + where
                        + ".",
                shots.isEmpty() || any == null
                        ? null
                        : draw(shots, any, end, allowed).drawing(heading, table.words()),
                table,
                List.copyOf(gaps));
    }

    private static BigFraction capped(BigFraction hertz) {
        return BigFraction.of(MOST_PULSES).divide(LightPulses.pulseHz(hertz));
    }

    private static BigFraction max(BigFraction a, BigFraction b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private static List<String> cells(Unit unit, Optional<ExposureTime> known, PulsingLight light) {
        if (known.isEmpty()) {
            return List.of("not known", "not known", "not known", "not known");
        }
        ExposureTime exposure = known.get();
        BigFraction safe = LightPulses.nearestSafeTime(exposure.seconds(), light.hertz());
        return List.of(
                exposure.setting().toString(),
                Numbers.spoken(exposure.milliseconds(), "ms"),
                Numbers.spoken(new Flicker(light, exposure).ripplePercent(), "%"),
                seconds(safe) + " s, "
                        + Numbers.spoken(
                                ExposureTiming.degrees(safe, unit.rate().fraction()), "°"));
    }

    private static String seconds(BigFraction time) {
        return time.getNumerator() + "/" + time.getDenominator();
    }

    private static Canvas draw(List<Shot> shots, PulsingLight light, BigFraction end, double allowed) {
        double worst = shots.stream().mapToDouble(Shot::ripple).max().orElse(0);
        double top = Math.min(MOST_PERCENT, Math.max(LEAST_PERCENT, worst * 1.3));
        Scale x = Scale.even(0, end.doubleValue() * 1000 * 1.03, LEFT, RIGHT);
        Scale y = Scale.even(0, top, BOTTOM, TOP);
        Canvas canvas = new Canvas(HEIGHT);
        windows(canvas, x, light, end, allowed);
        for (double tick : y.ticks(5)) {
            canvas.line(LEFT, y.at(tick), RIGHT, y.at(tick), "grid");
            canvas.text(LEFT - 6, y.at(tick) + 4, "end", "tick", Numbers.spoken(tick, ""));
        }
        for (double tick : x.ticks(9)) {
            canvas.line(x.at(tick), BOTTOM, x.at(tick), BOTTOM + 4, "axis");
            canvas.text(x.at(tick), BOTTOM + 17, "middle", "tick", Numbers.spoken(tick, ""));
        }
        canvas.line(LEFT, BOTTOM, RIGHT, BOTTOM, "axis");
        canvas.text((LEFT + RIGHT) / 2, BOTTOM + 33, "middle", "axis-name", "exposure time in milliseconds");
        canvas.text(6, 17, "start", "axis-name", "% that exposures differ by");
        ripple(canvas, light, end, x, y, top);
        for (Shot shot : shots) {
            if (x.holds(shot.milliseconds())) {
                double at = x.at(shot.milliseconds());
                double level = y.at(Math.min(top, shot.ripple()));
                canvas.line(at, level, at, BOTTOM, "drop " + shot.ink().look());
                canvas.mark(shot.ink(), at, level);
            }
        }
        for (Shot shot : shots) {
            if (x.holds(shot.milliseconds())) {
                canvas.label(
                        x.at(shot.milliseconds()) + 9,
                        y.at(Math.min(top, shot.ripple())) - 4,
                        "start",
                        "name " + shot.ink().look(),
                        shot.ink().tag() + " " + shot.exposure().setting());
            }
        }
        return canvas;
    }

    /** The curve as far as it is under the top. */
    private static void ripple(Canvas canvas, PulsingLight light, BigFraction end, Scale x, Scale y, double top) {
        List<double[]> points = new ArrayList<>();
        for (int i = 1; i <= STEPS; i++) {
            BigFraction time = end.multiply(BigFraction.of(i, STEPS));
            double percent = light.ripplePercent(time);
            if (percent <= top) {
                points.add(new double[] {x.at(time.doubleValue() * 1000), y.at(percent)});
            } else {
                canvas.curve(points, "ripple");
                points.clear();
            }
        }
        canvas.curve(points, "ripple");
    }

    private static void windows(Canvas canvas, Scale x, PulsingLight light, BigFraction end, double allowed) {
        List<BigFraction> safe = LightPulses.safeTimes(light.hertz(), end);
        BigFraction half = LightPulses.pulseHz(light.hertz()).multiply(2).reciprocal();
        double apart = safe.size() < 2
                ? LABEL_ROOM
                : x.at(safe.get(1).doubleValue() * 1000) - x.at(safe.get(0).doubleValue() * 1000);
        int every = Math.max(1, (int) Math.ceil(LABEL_ROOM / apart));
        for (int i = 0; i < safe.size(); i++) {
            double from = x.at(1000 * edge(light, safe.get(i), half.negate(), allowed));
            double to = Math.min(RIGHT, x.at(1000 * edge(light, safe.get(i), half, allowed)));
            canvas.box(from, TOP - 8, Math.max(to - from, 1), BOTTOM - TOP + 8, "window");
            if ((i + 1) % every == 0) {
                canvas.text((from + to) / 2, TOP - 13, "middle", "note", seconds(safe.get(i)));
            }
        }
        if (safe.isEmpty()) {
            canvas.text((LEFT + RIGHT) / 2, TOP - 13, "middle", "note", "no frame holds a whole pulse: no safe window");
        }
    }

    /** Where a window around a safe time ends, in seconds, on the side that {@code reach} points to. */
    private static double edge(PulsingLight light, BigFraction safe, BigFraction reach, double allowed) {
        BigFraction inside = safe;
        BigFraction outside = safe.add(reach);
        for (int i = 0; i < HALVINGS; i++) {
            BigFraction middle = inside.add(outside).divide(2);
            if (light.ripplePercent(middle) <= allowed) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return inside.doubleValue();
    }
}
