package akin.engine.report.picture;

import akin.engine.assess.Numbers;
import akin.model.derived.CommonShape;
import akin.model.derived.Frame;
import akin.model.optics.PictureShape;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** The picture shapes of the units, laid over each other so that the common extraction is one and the same. */
final class PictureShapes {

    /** Width that the extraction is given; all else follows from it. */
    private static final double UNIT = 100;

    private PictureShapes() {}

    /** The extraction that all known pictures have in common: the delivery's, or else that of the narrowest. */
    static Optional<BigFraction> ratio(Rig rig) {
        List<Frame> frames = rig.units().stream()
                .flatMap(unit -> Facts.first(Frame.derive(unit), Frame.class).stream())
                .toList();
        return frames.stream()
                .map(frame -> CommonShape.of(rig.units().get(0), frame, frames.get(0), rig.production())
                        .ratio())
                .min(Comparator.naturalOrder());
    }

    static Figure of(Rig rig, List<Ink> inks, Optional<BigFraction> ratio) {
        List<Nest.Frame> frames = new ArrayList<>();
        List<String> gaps = new ArrayList<>();
        List<Figure.Row> rows = new ArrayList<>();
        for (Ink ink : inks) {
            Unit unit = rig.units().get(ink.index());
            List<Object> derived = Frame.derive(unit);
            Facts.gaps(derived).forEach(gaps::add);
            Optional<Frame> known = Facts.first(derived, Frame.class);
            if (known.isEmpty() || ratio.isEmpty()) {
                rows.add(new Figure.Row(ink, List.of("not known", "not known", "not known")));
                continue;
            }
            Frame frame = known.get();
            BigFraction common = ratio.get();
            PictureShape.Extraction part = frame.cutTo(common);
            double height = UNIT / common.doubleValue();
            frames.add(new Nest.Frame(
                    ink,
                    UNIT / (1 - part.widthPercentLost() / 100),
                    height / (1 - part.heightPercentLost() / 100),
                    UNIT,
                    height,
                    ink.tag() + " " + CommonShape.said(frame.ratio())));
            rows.add(new Figure.Row(
                    ink,
                    List.of(
                            frame.picture() + " (" + CommonShape.said(frame.ratio()) + ")",
                            frame.guide(common),
                            Numbers.spoken(frame.percentLost(common), "%"))));
        }
        Figure.Table table = new Figure.Table(List.of("records", "frame guide", "cut away"), rows);
        String heading = "Picture shapes";
        String common = ratio.map(r -> CommonShape.said(r.doubleValue())).orElse("");
        return new Figure(
                "picture-shapes",
                heading,
                "The recorded pictures around the extraction that all have in common"
                        + (common.isEmpty() ? "." : ", " + common + ", shaded."),
                frames.isEmpty() ? null : Nest.draw(frames, common).drawing(heading, table.words()),
                table,
                gaps);
    }
}
