package akin.model.derived;

import akin.model.colour.Matrix3;
import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a unit and the hero recorded the same chart, and what the best matrix makes of it.
 *
 * @param hero name of the hero
 * @param name name of the unit
 * @param before how far apart they are as recorded
 * @param balanced how far apart they stay once exposure and white are taken out
 * @param matrix from the unit's light to the hero's, keeping neutrals; null when the patches do not tell one
 * @param after how far apart they stay with it
 */
public record ColourMatch(
        String hero,
        String name,
        MeasuredColour.Apart before,
        MeasuredColour.Apart balanced,
        @Nullable Matrix3 matrix,
        MeasuredColour.Apart after) {

    /** The match of two charts. */
    public static ColourMatch of(MeasuredColour hero, MeasuredColour unit) {
        MeasuredColour.Apart before = unit.from(hero);
        MeasuredColour.Apart balanced = unit.balanced(hero);
        try {
            Matrix3 matrix = unit.fitTo(hero);
            return new ColourMatch(
                    hero.unitName(), unit.unitName(), before, balanced, matrix, unit.apart(hero, matrix));
        } catch (ArithmeticException alike) {
            return new ColourMatch(hero.unitName(), unit.unitName(), before, balanced, null, balanced);
        }
    }

    /** Fixable where the matrix brings the mean within the tolerance, lossy where colours stay apart. */
    public Severity severity(Tolerances limits) {
        return corrects(limits) ? Severity.FIXABLE : Severity.LOSSY;
    }

    private boolean corrects(Tolerances limits) {
        return after.surely() <= limits.of(Tolerance.PROOF_COLOUR);
    }

    /** Keys: correct, and look-for where colours stay apart. */
    public List<Fix> fixes(Tolerances limits) {
        return corrects(limits)
                ? List.of(Fix.advise("correct"))
                : List.of(Fix.advise("look-for"), Fix.advise("correct"));
    }
}
