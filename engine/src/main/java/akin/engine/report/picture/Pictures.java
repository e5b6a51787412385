package akin.engine.report.picture;

import akin.model.rig.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** All pictures of a rig. */
public final class Pictures {

    private Pictures() {}

    /** The pictures of a rig: tone, stops, areas, shapes, depth in each scene, shutters under pulsing light. */
    public static List<Figure> of(Rig rig) {
        List<Ink> inks = Ink.of(rig);
        Optional<BigFraction> common = PictureShapes.ratio(rig);
        List<Figure> figures = new ArrayList<>();
        figures.add(ToneCurves.of(rig, inks));
        figures.add(StopsOverGrey.of(rig, inks));
        figures.add(SensorAreas.of(rig, inks, common));
        figures.add(PictureShapes.of(rig, inks, common));
        rig.scenes().forEach(scene -> figures.add(DepthInScene.of(rig, inks, scene)));
        figures.addAll(SafeShutters.of(rig, inks));
        return List.copyOf(figures);
    }
}
