package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Adapter;
import akin.model.gear.Stabilisation;
import akin.model.optics.FieldOfView;
import akin.model.quantity.Area;
import akin.model.rig.FittedLens;
import akin.model.rig.Match;
import akin.model.rig.Unit;
import java.util.List;

/**
 * What a unit takes in: the active area of its mode, less what electronic stabilisation cuts away, behind its lens and
 * adapter.
 *
 * @param unitName name of the unit
 * @param area the area used
 * @param squeeze horizontal squeeze of the lens; 1 for none
 * @param ringMm focal length set on the lens, before any adapter's optics
 * @param factor what the adapter multiplies it by; 1 without optics
 * @param axis the side by which views are matched
 */
public record View(String unitName, Area area, double squeeze, double ringMm, double factor, Match.ViewAxis axis)
        implements Derived {

    /** The view, or what is missing for it. */
    public static List<Object> derive(Unit unit, Match match) {
        FittedLens fitted = unit.lens();
        Inputs inputs = Inputs.of(View.class, unit)
                .mode("area", WhereFound.SPEC_SHEET, unit.mode().activeArea())
                .setting("lens", fitted);
        if (fitted != null) {
            inputs.setting("lens.focal", fitted.focal())
                    .input(
                            fitted.lens().path("squeeze"),
                            WhereFound.LENS_MARKINGS,
                            fitted.lens().squeeze());
            Adapter adapter = fitted.adapter();
            if (adapter != null) {
                inputs.input(adapter.path("factor"), WhereFound.SPEC_SHEET, adapter.factor());
            }
        }
        if (unit.stabilisation() == Stabilisation.ELECTRONIC) {
            inputs.body("steady-crop", WhereFound.TEST, unit.body().steadyCrop());
        }
        return inputs.derive(() -> of(unit, requireNonNull(fitted), match.view()));
    }

    private static View of(Unit unit, FittedLens fitted, Match.ViewAxis axis) {
        Area area = requireNonNull(unit.mode().activeArea());
        double used = Steadiness.shareUsed(unit);
        Adapter adapter = fitted.adapter();
        return new View(
                unit.name(),
                new Area(area.widthMm() * used, area.heightMm() * used),
                requireNonNull(fitted.lens().squeeze()),
                requireNonNull(fitted.focal()).millimetres(),
                adapter == null ? 1 : requireNonNull(adapter.factor()),
                axis);
    }

    /** Focal length that acts on the picture area, in millimetres. */
    public double focalMm() {
        return ringMm * factor;
    }

    /** The side by which views are matched, with the squeeze taken out, in millimetres. */
    public double sideMm() {
        double width = area.widthMm() * squeeze;
        return switch (axis) {
            case HORIZONTAL -> width;
            case VERTICAL -> area.heightMm();
            case DIAGONAL -> Math.hypot(width, area.heightMm());
        };
    }

    /** Angle of view along the side that is matched, in degrees. */
    public double degrees() {
        return FieldOfView.degrees(sideMm(), focalMm(), 1);
    }

    /** Horizontal angle of view, in degrees. */
    public double horizontalDegrees() {
        return FieldOfView.degrees(area.widthMm(), focalMm(), squeeze);
    }

    /** How much wider than another this view is from the same place, in per cent of the narrower; negative: narrower. */
    public double percentWider(View other) {
        return percentWider(sideMm() / focalMm(), other.sideMm() / other.focalMm());
    }

    private static double percentWider(double a, double b) {
        return a >= b ? 100 * (a / b - 1) : -100 * (b / a - 1);
    }

    /** Focal length to set on this unit's lens so that it takes in from the same place what another does. */
    public double ringFocalFor(View other) {
        return FieldOfView.matchedFocal(other.focalMm(), other.sideMm(), 1, sideMm(), 1) / factor;
    }

    /** This view with another focal length set. */
    public View at(double otherRingMm) {
        return new View(unitName, area, squeeze, otherRingMm, factor, axis);
    }

    /** This view with another lens at a focal length. */
    public View with(double otherSqueeze, double otherRingMm) {
        return new View(unitName, area, otherSqueeze, otherRingMm, factor, axis);
    }

    /** This view on another area. */
    public View on(Area other) {
        return new View(unitName, other, squeeze, ringMm, factor, axis);
    }
}
