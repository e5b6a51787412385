package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.quantity.FrameRate;
import akin.model.quantity.Shutter;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import akin.model.timing.ExposureTiming;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How long a unit exposes each frame: t = angle / (360 x rate), or the time set.
 *
 * @param unitName name of the unit
 * @param setting the shutter as set
 * @param rate recorded frame rate
 * @param seconds exposure time, exact
 */
public record ExposureTime(String unitName, Shutter setting, FrameRate rate, BigFraction seconds) implements Derived {

    /** The exposure time, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Shutter shutter = unit.shutter();
        return Inputs.of(ExposureTime.class, unit)
                .setting("shutter", shutter)
                .derive(() -> new ExposureTime(
                        unit.name(), requireNonNull(shutter), unit.rate(), shutter.seconds(unit.rate())));
    }

    /** Exposure time in milliseconds. */
    public double milliseconds() {
        return seconds.doubleValue() * 1000;
    }

    /** The same time as a shutter angle, in degrees. */
    public double degrees() {
        return setting.degrees(rate);
    }

    /** The shutter angle to the whole degree, as angles are spoken of: 1/60 at 24000/1001 is 143.9 and called 144. */
    public long wholeDegrees() {
        return Math.round(degrees());
    }

    /** The part of the frame interval that is exposed: 1/2 at 180 degrees; above 1 when the exposure outlasts the frame. */
    public BigFraction shareOfFrame() {
        return seconds.multiply(rate.fraction());
    }

    /** True when the exposure outlasts the frame. */
    public boolean outlastsFrame() {
        return seconds.compareTo(rate.frameSeconds()) > 0;
    }

    /**
     * How far the angle is outside the range that needs no reason, in parts of the nearer limit: 0 inside, 1 at half or
     * double of it. To the whole degree.
     */
    public double turnsOff(Tolerances limits) {
        double from = limits.of(Tolerance.HALF_TURN_FROM);
        double to = limits.of(Tolerance.HALF_TURN_TO);
        long angle = wholeDegrees();
        if (angle >= from && angle <= to) {
            return 0;
        }
        return angle < from ? from / degrees() - 1 : degrees() / to - 1;
    }

    /** What an angle far from a half turn looks like, in words. */
    public String look() {
        return shareOfFrame().compareTo(BigFraction.of(1, 2)) < 0
                ? "Movement is crisp and steps from frame to frame"
                : "Movement smears";
    }

    /** How far apart two exposure times are: the longer over the shorter, less one, in per cent. */
    public double percentFrom(ExposureTime other) {
        return ExposureTiming.percentApart(seconds, other.seconds);
    }
}
