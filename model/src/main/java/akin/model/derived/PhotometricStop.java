package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.exposure.Light;
import akin.model.finding.WhereFound;
import akin.model.gear.Adapter;
import akin.model.gear.Lens;
import akin.model.quantity.Aperture;
import akin.model.rig.FittedLens;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The stop that decides exposure: the light that arrives behind the lens and any converter.
 *
 * @param unitName name of the unit
 * @param setting the stop as set on the lens
 * @param tNumber T number behind the lens and its adapter: T x factor x 2^(light / 2)
 * @param basis where the T number comes from
 */
public record PhotometricStop(String unitName, Aperture setting, double tNumber, Basis basis) implements Derived {

    /** Where a T number comes from. */
    public enum Basis {
        /** Set on the lens as a T number. */
        ENGRAVED,
        /** From the f number set, and what the lens loses between its widest f and its widest T. */
        FROM_LENS,
        /** The f number taken for the T number, since what the lens loses is not known. */
        GUESSED
    }

    /** The photometric stop, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        return require(Inputs.of(PhotometricStop.class, unit), unit).derive(() -> of(unit));
    }

    /** Names what is needed of a unit for its photometric stop. */
    static Inputs require(Inputs inputs, Unit unit) {
        FittedLens fitted = unit.lens();
        inputs.setting("lens", fitted);
        if (fitted != null) {
            inputs.setting("lens.stop", fitted.stop());
            Adapter adapter = fitted.adapter();
            if (adapter != null) {
                inputs.input(adapter.path("factor"), WhereFound.SPEC_SHEET, adapter.factor());
            }
        }
        return inputs;
    }

    /** The photometric stop of a unit of which everything needed is known. */
    static PhotometricStop of(Unit unit) {
        FittedLens fitted = requireNonNull(unit.lens());
        Aperture stop = requireNonNull(fitted.stop());
        double factor = converted(fitted);
        if (stop.kind() == Aperture.Kind.PHOTOMETRIC) {
            return new PhotometricStop(unit.name(), stop, stop.number() * factor, Basis.ENGRAVED);
        }
        Double loss = loss(fitted.lens());
        return loss == null
                ? new PhotometricStop(unit.name(), stop, stop.number() * factor, Basis.GUESSED)
                : new PhotometricStop(unit.name(), stop, stop.number() * loss * factor, Basis.FROM_LENS);
    }

    /** True when the f number stands in for the T number. */
    public boolean guessed() {
        return basis == Basis.GUESSED;
    }

    /** How much darker the unit may be than its f number says: what a lens of its kind loses at most, in stops. */
    public static double doubt(Unit unit, Tolerances limits) {
        FittedLens fitted = unit.lens();
        return limits.of(fitted == null || fitted.lens().prime() ? Tolerance.PRIME_LOSS : Tolerance.ZOOM_LOSS);
    }

    /** The stop in words, with what it was taken from. */
    public String words() {
        if (guessed()) {
            return setting + " taken for T";
        }
        BigDecimal rounded =
                BigDecimal.valueOf(tNumber).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        String behind = "T" + rounded.toPlainString();
        return behind.equals(setting.toString()) ? behind : behind + " from " + setting;
    }

    /** T over f of a lens, at least 1; null when one of its widest stops is not known. */
    static @Nullable Double loss(Lens lens) {
        Aperture open = lens.open();
        Aperture openT = lens.openT();
        return open == null || openT == null ? null : Math.max(1, openT.number() / open.number());
    }

    private static double converted(FittedLens fitted) {
        Adapter adapter = fitted.adapter();
        if (adapter == null) {
            return 1;
        }
        double lost = adapter.light() == null ? 0 : adapter.light().value();
        return requireNonNull(adapter.factor()) * Light.ratio(lost / 2);
    }
}
