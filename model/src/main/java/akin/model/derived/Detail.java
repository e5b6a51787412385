package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.finding.WhereFound;
import akin.model.gear.Mode;
import akin.model.gear.Sampling;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * How fine the detail is that a unit's mode resolves.
 *
 * @param unitName name of the unit
 * @param sampling how photosites become pixels
 */
public record Detail(String unitName, Sampling sampling) implements Derived {

    /** The detail, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Sampling sampling = unit.mode().sampling();
        return Inputs.of(Detail.class, unit)
                .mode("sampling", WhereFound.TEST, sampling)
                .derive(() -> new Detail(unit.name(), requireNonNull(sampling)));
    }

    /**
     * Skipped lines on one side leave moire that nothing takes out; binned or enlarged against fully read costs the finer
     * one its detail; two ways of reading every photosite differ little.
     */
    public Severity against(Detail other) {
        if (sampling == Sampling.LINE_SKIPPED || other.sampling == Sampling.LINE_SKIPPED) {
            return Severity.BAKED_IN;
        }
        return fine() && other.fine() ? Severity.ADVICE : Severity.LOSSY;
    }

    private boolean fine() {
        return sampling == Sampling.OVERSAMPLED || sampling == Sampling.ONE_TO_ONE;
    }

    /** A mode of the unit that samples as the hero's does; or care with patterns. Keys: like-hero, soften. */
    public List<Fix> fixes(Unit unit, Detail hero) {
        List<Fix> fixes = new ArrayList<>();
        for (Mode mode : Alternatives.modes(unit)) {
            if (mode.sampling() == hero.sampling) {
                fixes.add(Fix.set("like-hero", unit.path("mode"), mode.id()).with("mode", null, mode.id()));
                break;
            }
        }
        fixes.add(Fix.advise("soften"));
        return fixes;
    }
}
