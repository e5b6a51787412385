package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Value;
import akin.model.finding.WhereFound;
import akin.model.gear.Adapter;
import akin.model.gear.Lens;
import akin.model.optics.DepthOfField;
import akin.model.optics.HyperfocalConvention;
import akin.model.quantity.Aperture;
import akin.model.quantity.Length;
import akin.model.rig.FittedLens;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What decides how deep a unit's focus is.
 *
 * @param unitName name of the unit
 * @param focalMm focal length that acts, behind any adapter's optics, in millimetres
 * @param fNumber geometric stop that acts
 * @param basis where the geometric stop comes from
 * @param confusionMm circle of confusion: diagonal of the picture area / 1440, in millimetres
 */
public record FocusDepth(String unitName, double focalMm, double fNumber, Basis basis, double confusionMm)
        implements Derived {

    /** Where a geometric stop comes from. */
    public enum Basis {
        /** Set on the lens as an f number. */
        SET("as set"),
        /** From the T number set, and what the lens loses between its widest f and its widest T. */
        FROM_LENS("from its T number and what the lens loses"),
        /** The T number taken for the f number, since what the lens loses is not known. */
        BORROWED("its T number, the f number being unknown");

        private final String words;

        Basis(String words) {
            this.words = words;
        }

        /** Where it comes from, in words. */
        @Override
        public String toString() {
            return words;
        }
    }

    /** What decides the depth, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        FittedLens fitted = unit.lens();
        Inputs inputs = Inputs.of(FocusDepth.class, unit)
                .mode("area", WhereFound.SPEC_SHEET, unit.mode().activeArea())
                .setting("lens", fitted);
        if (fitted != null) {
            inputs.setting("lens.focal", fitted.focal()).setting("lens.stop", fitted.stop());
            Adapter adapter = fitted.adapter();
            if (adapter != null) {
                inputs.input(adapter.path("factor"), WhereFound.SPEC_SHEET, adapter.factor());
            }
        }
        return inputs.derive(() -> of(unit, requireNonNull(fitted)));
    }

    private static FocusDepth of(Unit unit, FittedLens fitted) {
        double factor =
                fitted.adapter() == null ? 1 : requireNonNull(fitted.adapter().factor());
        Aperture stop = requireNonNull(fitted.stop());
        Lens lens = fitted.lens();
        Basis basis = Basis.SET;
        double number = stop.number();
        if (stop.kind() == Aperture.Kind.PHOTOMETRIC) {
            Aperture open = lens.open();
            Aperture openT = lens.openT();
            basis = open == null || openT == null ? Basis.BORROWED : Basis.FROM_LENS;
            number *= open == null || openT == null ? 1 : Math.min(1, open.number() / openT.number());
        }
        double diagonal = requireNonNull(unit.mode().activeArea()).diagonalMm() * Steadiness.shareUsed(unit);
        return new FocusDepth(
                unit.name(),
                requireNonNull(fitted.focal()).millimetres() * factor,
                number * factor,
                basis,
                DepthOfField.circleOfConfusion(diagonal));
    }

    /** Diameter of the entrance pupil, in millimetres. */
    public double pupilMm() {
        return DepthOfField.entrancePupil(focalMm, fNumber);
    }

    /** How much larger the entrance pupil is than another's, in stops: positive is the shallower depth. */
    public double stopsShallower(FocusDepth other) {
        return DepthOfField.pupilStopsApart(focalMm, fNumber, other.focalMm, other.fNumber);
    }

    /** Geometric stop with which this unit, from the same place and with a matched view, has another's depth. */
    public double fNumberFor(FocusDepth other) {
        return DepthOfField.equalDepthStop(other.fNumber, other.focalMm, focalMm);
    }

    /** Hyperfocal distance f^2 / (N c), in millimetres. */
    public double hyperfocalMm() {
        return DepthOfField.hyperfocal(focalMm, fNumber, confusionMm, HyperfocalConvention.SIMPLIFIED);
    }

    /** The depth around a subject farther than the focal length. */
    public DepthOfField at(Length distance) {
        return DepthOfField.of(focalMm, fNumber, confusionMm, distance.millimetres(), HyperfocalConvention.SIMPLIFIED);
    }

    /** A scene that this unit shoots, its distance and the depth around it. */
    public record InScene(Scene scene, Length distance, DepthOfField depth) {}

    /** The depth in each scene that this unit shoots and whose distance is planned. */
    public List<InScene> inScenes(Rig rig) {
        List<InScene> all = new ArrayList<>();
        for (Scene scene : rig.scenes()) {
            Length distance = scene.distanceOf(unitName);
            if (scene.shotBy(unitName) && distance != null && distance.millimetres() > focalMm) {
                all.add(new InScene(scene, distance, at(distance)));
            }
        }
        return all;
    }

    /** Distance, near, far and total depth of each scene, in metres; from the second scene on with its number. */
    public List<Value> evidence(Rig rig) {
        List<Value> all = new ArrayList<>();
        for (InScene in : inScenes(rig)) {
            String of = in.scene().index() == 0 ? "" : "-scene-" + (in.scene().index() + 1);
            all.add(new Value.Quantity("distance" + of, unitName, in.distance().metres(), "m"));
            all.add(new Value.Quantity("near" + of, unitName, in.depth().nearMm() / 1000, "m"));
            all.add(new Value.Quantity("far" + of, unitName, in.depth().farMm() / 1000, "m"));
            all.add(new Value.Quantity("depth" + of, unitName, in.depth().totalMm() / 1000, "m"));
        }
        return all;
    }

    /** What is sharp in each scene, in words. */
    public String sharp(Rig rig) {
        List<String> all = inScenes(rig).stream()
                .map(in -> in.scene().name() + " at " + in.distance() + ": "
                        + (in.depth().reachesInfinity()
                                ? String.format(
                                        Locale.ROOT,
                                        "%.2f m to infinity",
                                        in.depth().nearMm() / 1000)
                                : String.format(
                                        Locale.ROOT,
                                        "%.2f m to %.2f m, %.2f m deep",
                                        in.depth().nearMm() / 1000,
                                        in.depth().farMm() / 1000,
                                        in.depth().totalMm() / 1000)))
                .toList();
        return all.isEmpty() ? "no subject distance is planned" : String.join("; ", all);
    }
}
