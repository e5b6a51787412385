package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Lens;
import akin.model.quantity.Length;
import akin.model.rig.FittedLens;
import akin.model.rig.Kit;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * How near a unit's lens can focus, from the image plane.
 *
 * @param unitName name of the unit
 * @param lens what the lens is called
 * @param nearest the nearest distance
 */
public record CloseFocus(String unitName, String lens, Length nearest) implements Derived {

    /** How near it focuses, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        FittedLens fitted = unit.lens();
        Inputs inputs = Inputs.of(CloseFocus.class, unit).setting("lens", fitted);
        if (fitted != null) {
            inputs.input(
                    fitted.lens().path("close-focus"),
                    WhereFound.LENS_MARKINGS,
                    fitted.lens().closeFocus());
        }
        return inputs.derive(() -> new CloseFocus(
                unit.name(),
                requireNonNull(fitted).lens().called(),
                requireNonNull(fitted.lens().closeFocus())));
    }

    /** Standing back, a lens of the kit that focuses nearer, or a close-up lens. Keys: stand-back, use-lens, close-up. */
    public List<Fix> fixes(Unit unit, Scene scene, Kit kit) {
        List<Fix> fixes = new ArrayList<>();
        FittedLens fitted = requireNonNull(unit.lens());
        Length subject = requireNonNull(scene.distanceOf(unit.name()));
        for (Lens other : Alternatives.lenses(unit, kit)) {
            Length near = other.closeFocus();
            Length focal = fitted.focal();
            if (near != null
                    && focal != null
                    && near.millimetres() <= subject.millimetres()
                    && focal.equals(Alternatives.nearestFocal(other, focal.millimetres()))) {
                fixes.add(Fix.set("use-lens", unit.path("lens.use"), other.id())
                        .with("other", null, other.called())
                        .with("near", null, near.metres(), "m"));
                break;
            }
        }
        fixes.add(Fix.set("stand-back", scene.path("distances." + unit.name()), nearest));
        fixes.add(Fix.advise("close-up"));
        return fixes;
    }
}
