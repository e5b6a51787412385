package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.rig.FittedLens;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The series that the lens of a unit belongs to.
 *
 * @param unitName name of the unit
 * @param lens what the lens is called
 * @param family the series
 */
public record LensFamily(String unitName, String lens, String family) implements Derived {

    /** The series, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        FittedLens fitted = unit.lens();
        Inputs inputs = Inputs.of(LensFamily.class, unit).setting("lens", fitted);
        if (fitted != null) {
            inputs.input(
                    fitted.lens().path("family"),
                    WhereFound.LENS_MARKINGS,
                    fitted.lens().family());
        }
        return inputs.derive(() -> new LensFamily(
                unit.name(),
                requireNonNull(fitted).lens().called(),
                requireNonNull(fitted.lens().family())));
    }
}
