package akin.engine.report.picture;

import akin.engine.assess.Numbers;
import akin.model.derived.Frame;
import akin.model.finding.WhereFound;
import akin.model.optics.PictureShape;
import akin.model.quantity.Area;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** The sensor areas that the units read, to one scale, with the part of each that the common extraction uses. */
final class SensorAreas {

    private SensorAreas() {}

    static Figure of(Rig rig, List<Ink> inks, Optional<BigFraction> ratio) {
        List<Nest.Frame> frames = new ArrayList<>();
        Set<String> gaps = new LinkedHashSet<>();
        List<Figure.Row> rows = new ArrayList<>();
        for (Ink ink : inks) {
            Unit unit = rig.units().get(ink.index());
            Area area = unit.mode().activeArea();
            if (area == null) {
                gaps.add(Facts.gap(
                        unit.name(), unit.body().path("modes." + unit.mode().id() + ".area"), WhereFound.SPEC_SHEET));
                rows.add(new Figure.Row(ink, List.of("not known", "not known", "not known")));
                continue;
            }
            List<Object> derived = Frame.derive(unit);
            Facts.gaps(derived).forEach(gaps::add);
            Optional<Part> part = Facts.first(derived, Frame.class).flatMap(frame -> ratio.map(r -> Part.of(frame, r)));
            double width = area.widthMm();
            double height = area.heightMm();
            frames.add(new Nest.Frame(
                    ink,
                    width,
                    height,
                    part.map(p -> width * p.width()).orElse(0.0),
                    part.map(p -> height * p.height()).orElse(0.0),
                    ink.tag() + " " + millimetres(width) + " × " + millimetres(height)));
            rows.add(new Figure.Row(
                    ink,
                    List.of(
                            millimetres(width) + " × " + Numbers.spoken(height, "mm"),
                            Numbers.spoken(area.diagonalMm(), "mm"),
                            part.map(Part::words).orElse("not known"))));
        }
        Figure.Table table = new Figure.Table(List.of("area read", "diagonal", "common extraction"), rows);
        String heading = "Sensor areas";
        return new Figure(
                "sensor-areas",
                heading,
                "What each mode reads of the sensor, all to one scale, in millimetres. Shaded: what the common extraction"
                        + " uses of it, less what electronic stabilisation takes.",
                frames.isEmpty() ? null : Nest.draw(frames, "").drawing(heading, table.words()),
                table,
                List.copyOf(gaps));
    }

    /** What is used of an area, as shares of its width and height. */
    private record Part(double width, double height) {

        static Part of(Frame frame, BigFraction ratio) {
            PictureShape.Extraction cut = frame.cutTo(ratio);
            return new Part(
                    frame.shareUsed() * (1 - cut.widthPercentLost() / 100),
                    frame.shareUsed() * (1 - cut.heightPercentLost() / 100));
        }

        String words() {
            return Numbers.spoken(100 * width, "%") + " of the width, " + Numbers.spoken(100 * height, "%")
                    + " of the height";
        }
    }

    private static String millimetres(double value) {
        return Numbers.spoken(value, "mm").replace(" mm", "");
    }
}
