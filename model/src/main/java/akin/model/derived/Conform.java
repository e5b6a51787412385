package akin.model.derived;

import akin.model.quantity.FrameRate;
import akin.model.rig.Delivery;
import akin.model.rig.Production;
import akin.model.rig.Unit;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How what the hero records becomes what is delivered. Of the hero only: the others are compared with the hero.
 *
 * @param unitName name of the unit
 * @param recorded the rate at which its frames are meant to be played
 * @param delivered the rate delivered
 */
public record Conform(String unitName, FrameRate recorded, FrameRate delivered) implements Derived {

    /** The conform of the hero; nothing for any other unit. A delivery that names no rate is delivered at the production's. */
    public static List<Object> derive(Production production, Unit unit) {
        if (!unit.hero()) {
            return List.of();
        }
        Delivery delivery = production.delivery();
        FrameRate delivered = delivery == null || delivery.rate() == null ? production.rate() : delivery.rate();
        FrameRate recorded = RatePlan.offSpeed(production, unit) ? production.rate() : unit.rate();
        return List.of(new Conform(unit.name(), recorded, delivered));
    }

    /** True when every frame is shown, each as often as the others: the rates are equal or the delivery is a multiple. */
    public boolean clean() {
        return whole(delivered.fraction().divide(recorded.fraction()));
    }

    /** True when post can leave out frames evenly: what is recorded is a whole multiple of what is delivered. */
    public boolean dropsEvenly() {
        return !clean() && whole(recorded.fraction().divide(delivered.fraction()));
    }

    /** How much faster than life it plays when every frame is shown once, in per cent; negative for slower. Arithmetic. */
    public double percentFaster() {
        return delivered
                .fraction()
                .divide(recorded.fraction())
                .subtract(1)
                .multiply(100)
                .doubleValue();
    }

    /** What post has to do, in words. */
    public String work() {
        return dropsEvenly()
                ? "Post leaves out frames evenly, and the blur of each becomes short for the gap between them"
                : "Post must play it at another speed, sound and all, or make up frames that were never shot";
    }

    private static boolean whole(BigFraction ratio) {
        return ratio.getDenominator().equals(java.math.BigInteger.ONE);
    }
}
