package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.quantity.FrameRate;
import akin.model.quantity.Shutter;
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

    /** How far apart two exposure times are: the longer over the shorter, less one, in per cent. */
    public double percentFrom(ExposureTime other) {
        return ExposureTiming.percentApart(seconds, other.seconds);
    }
}
