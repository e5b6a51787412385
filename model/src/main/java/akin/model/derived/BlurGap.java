package akin.model.derived;

import akin.model.rig.Production;
import akin.model.rig.Unit;
import akin.model.timing.ExposureTiming;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How far the motion blur of a unit is from the hero's. Two units at one speed blur alike when they expose equally long.
 * Where one of them is off speed on purpose its movement is stretched on screen, and the blur of a projected frame is alike
 * when the exposure takes the same share of the frame interval: the same shutter angle.
 *
 * @param perProjectedFrame true when shares of the frame are compared rather than times
 * @param percent how much longer the longer is, in per cent of the shorter
 */
public record BlurGap(boolean perProjectedFrame, double percent) {

    /** The gap between the exposures of two units. */
    public static BlurGap between(
            Production production, Unit hero, ExposureTime ofHero, Unit other, ExposureTime ofOther) {
        boolean shares = RatePlan.offSpeed(production, hero) || RatePlan.offSpeed(production, other);
        return shares
                ? new BlurGap(true, ExposureTiming.percentApart(ofHero.shareOfFrame(), ofOther.shareOfFrame()))
                : new BlurGap(false, ofOther.percentFrom(ofHero));
    }

    /** The exposure time in seconds at which a unit blurs as the hero does. */
    static BigFraction wanted(Production production, Unit hero, BigFraction heroSeconds, Unit other) {
        boolean shares = RatePlan.offSpeed(production, hero) || RatePlan.offSpeed(production, other);
        return shares
                ? heroSeconds
                        .multiply(hero.rate().fraction())
                        .multiply(other.rate().frameSeconds())
                : heroSeconds;
    }

    /** What was compared, in words. */
    public String measure() {
        return perProjectedFrame ? "the blur of a projected frame is" : "they are";
    }
}
