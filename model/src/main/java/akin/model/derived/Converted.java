package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Adapter;
import akin.model.quantity.Aperture;
import akin.model.rig.FittedLens;
import akin.model.rig.Unit;
import java.util.List;
import java.util.Locale;

/**
 * What the optics of an adapter make of the numbers engraved on a lens.
 *
 * @param unitName name of the unit
 * @param factor what the focal length is multiplied by; 1 without optics
 * @param focalMm focal length that acts, in millimetres
 * @param number f or T number that acts
 * @param kind which of the two
 */
public record Converted(String unitName, double factor, double focalMm, double number, Aperture.Kind kind)
        implements Derived {

    /** The numbers that act, or what is missing for them. */
    public static List<Object> derive(Unit unit) {
        FittedLens fitted = unit.lens();
        Inputs inputs = Inputs.of(Converted.class, unit).setting("lens", fitted);
        if (fitted != null) {
            inputs.setting("lens.focal", fitted.focal()).setting("lens.stop", fitted.stop());
            Adapter adapter = fitted.adapter();
            if (adapter != null) {
                inputs.input(adapter.path("factor"), WhereFound.SPEC_SHEET, adapter.factor());
            }
        }
        return inputs.derive(() -> of(unit.name(), requireNonNull(fitted)));
    }

    private static Converted of(String unit, FittedLens fitted) {
        double factor =
                fitted.adapter() == null ? 1 : requireNonNull(fitted.adapter().factor());
        Aperture stop = requireNonNull(fitted.stop());
        return new Converted(
                unit,
                factor,
                requireNonNull(fitted.focal()).millimetres() * factor,
                stop.number() * factor,
                stop.kind());
    }

    /** The stop that acts, as one writes it, to one decimal. */
    public String stop() {
        String tenths = String.format(Locale.ROOT, "%.1f", number);
        return (kind == Aperture.Kind.GEOMETRIC ? "f/" : "T") + tenths;
    }

    /** Stops of light that a reducer gains or an extender (negative) loses: -2 log2 of the factor. */
    public double stopsGained() {
        return -2 * Math.log(factor) / Math.log(2);
    }
}
