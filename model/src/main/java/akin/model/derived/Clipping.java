package akin.model.derived;

import akin.model.finding.Severity;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** When a unit that records brighter or darker than the hero can still be put right. */
public final class Clipping {

    /** Stops are sums of logarithms: what is two stops may come out a hair under. */
    private static final double HAIR = 1e-9;

    private Clipping() {}

    /**
     * Stops left over the hero's middle grey before a unit clips: its headroom less the stops by which it is brighter.
     *
     * @return null when its headroom is not known
     */
    public static @Nullable Double roomLeft(Unit unit, double brighter) {
        ToneRange range = ToneRange.known(unit);
        return range == null ? null : range.headroom() - brighter;
    }

    /**
     * Baked in when a unit that is brighter than the hero clips below the highlights that have to hold; lossy when it is so
     * much darker that the push shows; otherwise fixable in raw or 10 bits and more; lossy in fewer, and where the grading
     * room is not known.
     */
    public static Severity severity(Rig rig, Unit unit, Unit hero, double brighter) {
        Double left = roomLeft(unit, brighter);
        if (brighter > 0 && left != null && left < rig.match().tolerances().of(Tolerance.HIGHLIGHTS)) {
            return Severity.BAKED_IN;
        }
        if (-brighter >= rig.match().tolerances().of(Tolerance.PUSH) - HAIR) {
            return Severity.LOSSY;
        }
        return severity(unit, hero);
    }

    /** As {@link #severity(Rig, Unit, Unit, double)}, for what takes no highlights. */
    public static Severity severity(Unit unit, Unit hero) {
        return roomy(unit) && roomy(hero) ? Severity.FIXABLE : Severity.LOSSY;
    }

    /** Where the highlights of a unit end, in words, to be read after its name. */
    public static String words(Unit unit, double brighter) {
        Double left = roomLeft(unit, brighter);
        if (left == null) {
            return "clips at a level that is not known";
        }
        BigDecimal rounded = BigDecimal.valueOf(left).setScale(1, RoundingMode.HALF_EVEN);
        return "clips " + rounded.stripTrailingZeros().toPlainString() + " stops over the grey of the hero";
    }

    private static boolean roomy(Unit unit) {
        return GradingRoom.derive(unit).get(0) instanceof GradingRoom room && room.roomy();
    }
}
