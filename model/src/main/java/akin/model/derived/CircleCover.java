package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Adapter;
import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.gear.Stabilisation;
import akin.model.optics.ImageCircle;
import akin.model.quantity.Area;
import akin.model.quantity.Length;
import akin.model.rig.FittedLens;
import akin.model.rig.Kit;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The image circle that reaches the sensor, and the one that the mode needs.
 *
 * @param unitName name of the unit
 * @param hasMm diameter of the circle behind lens and adapter, in millimetres
 * @param diagonalMm diagonal of the active area, in millimetres
 * @param travelMm how far the sensor may move from the centre to steady the picture, in millimetres
 */
public record CircleCover(String unitName, double hasMm, double diagonalMm, double travelMm) implements Derived {

    /** The two circles, or what is missing for them. */
    public static List<Object> derive(Unit unit) {
        FittedLens fitted = unit.lens();
        Stabilisation steady = Steadiness.of(unit);
        Inputs inputs = Inputs.of(CircleCover.class, unit)
                .mode("area", WhereFound.SPEC_SHEET, unit.mode().activeArea())
                .setting("stabilisation", steady)
                .setting("lens", fitted);
        if (steady == Stabilisation.SENSOR) {
            inputs.body("steady-travel", WhereFound.TEST, unit.body().steadyTravel());
        }
        if (fitted != null) {
            inputs.input(
                    fitted.lens().path("circle"),
                    WhereFound.LENS_MARKINGS,
                    fitted.lens().circle());
            Adapter adapter = fitted.adapter();
            if (adapter != null) {
                inputs.input(adapter.path("factor"), WhereFound.SPEC_SHEET, adapter.factor());
                if (adapter.factor() != null && adapter.factor() != 1) {
                    inputs.input(adapter.path("circle"), WhereFound.SPEC_SHEET, adapter.circle());
                }
            }
        }
        return inputs.derive(() -> new CircleCover(
                unit.name(),
                behind(
                        requireNonNull(fitted).adapter(),
                        requireNonNull(fitted.lens().circle())),
                requireNonNull(unit.mode().activeArea()).diagonalMm(),
                travel(unit)));
    }

    private static double travel(Unit unit) {
        return Steadiness.of(unit) == Stabilisation.SENSOR
                ? requireNonNull(unit.body().steadyTravel())
                : 0;
    }

    /** What an adapter leaves of a lens's circle: the circle times its factor, within its own opening. */
    private static double behind(@Nullable Adapter adapter, Length circle) {
        if (adapter == null) {
            return circle.millimetres();
        }
        double scaled = circle.millimetres() * requireNonNull(adapter.factor());
        return adapter.circle() == null
                ? scaled
                : Math.min(scaled, adapter.circle().millimetres());
    }

    /** Diameter that is needed, in millimetres. */
    public double neededMm() {
        return ImageCircle.needed(diagonalMm, travelMm);
    }

    /** How far the corners reach out of the circle, in millimetres; 0 where it covers. */
    public double shortMm() {
        return ImageCircle.cornersShortBy(hasMm, neededMm());
    }

    /**
     * Ways out: switching sensor stabilisation off, the largest mode that is covered, a lens of the kit that covers and
     * can be set to the same focal length, or a lens to be found. Keys: hold-sensor, smaller-mode, use-lens, find-lens.
     */
    public List<Fix> fixes(Unit unit, Kit kit) {
        List<Fix> fixes = new ArrayList<>();
        if (travelMm > 0 && hasMm >= diagonalMm) {
            fixes.add(Fix.set("hold-sensor", unit.path("stabilisation"), Stabilisation.NONE));
        }
        Alternatives.modes(unit).stream()
                .filter(mode -> covered(mode))
                .max(Comparator.comparingDouble(CircleCover::diagonal))
                .ifPresent(mode -> fixes.add(Fix.set("smaller-mode", unit.path("mode"), mode.id())
                        .with("mode", null, mode.id())
                        .with("diagonal", null, diagonal(mode), "mm")));
        FittedLens fitted = requireNonNull(unit.lens());
        Alternatives.lenses(unit, kit).stream()
                .filter(lens -> lens.circle() != null
                        && behind(fitted.adapter(), lens.circle()) >= neededMm()
                        && fitted.focal() != null
                        && fitted.focal()
                                .equals(Alternatives.nearestFocal(
                                        lens, fitted.focal().millimetres())))
                .findFirst()
                .ifPresent(lens -> fixes.add(useLens(unit, lens)));
        fixes.add(Fix.advise("find-lens"));
        return fixes;
    }

    private static Fix useLens(Unit unit, Lens lens) {
        return Fix.set("use-lens", unit.path("lens.use"), lens.id())
                .with("lens", null, lens.called())
                .with("circle", null, requireNonNull(lens.circle()).millimetres(), "mm");
    }

    private boolean covered(Mode mode) {
        double diagonal = diagonal(mode);
        return diagonal > 0 && ImageCircle.needed(diagonal, travelMm) <= hasMm;
    }

    private static double diagonal(Mode mode) {
        Area area = mode.activeArea();
        return area == null ? 0 : area.diagonalMm();
    }
}
