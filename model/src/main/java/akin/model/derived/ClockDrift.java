package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Clock;
import akin.model.gear.TimecodeSource;
import akin.model.quantity.Timespan;
import akin.model.rig.Production;
import akin.model.rig.Unit;
import akin.model.timing.FrameDrift;
import java.util.ArrayList;
import java.util.List;

/**
 * How far the clock that a unit's timecode is counted by may drift until clocks are set again. Only for timecode that is
 * common with other units.
 *
 * @param unitName name of the unit
 * @param ppm how far it may be off, in parts per million
 * @param hours time from one setting of the clocks to the next
 * @param framesPerSecond recorded frame rate
 */
public record ClockDrift(String unitName, double ppm, double hours, double framesPerSecond) implements Derived {

    private static final double HOUR = 3_600_000;

    /** Where a rig file says how often clocks are set. */
    public static final String EVERY = "production.jam-every";

    /** The drift, or what is missing for it. */
    public static List<Object> derive(Production production, Unit unit) {
        TimecodeSource source = unit.sync().source();
        // What runs off speed has no sync sound, and its timecode counts another rate.
        if (source == null || !source.common() || RatePlan.offSpeed(production, unit)) {
            return List.of();
        }
        Inputs inputs = Inputs.of(ClockDrift.class, unit);
        Clock clock = unit.body().clock();
        boolean own = source == TimecodeSource.JAMMED;
        Double ppm = own ? (clock == null ? null : clock.ppm()) : unit.sync().boxPpm();
        if (own) {
            inputs.body("clock.ppm", WhereFound.TEST, ppm);
        } else {
            inputs.input(unit.path("timecode.box-ppm"), WhereFound.SPEC_SHEET, ppm);
        }
        Timespan every = production.jamEvery();
        return inputs.input(EVERY, WhereFound.PLAN, every)
                .derive(() -> new ClockDrift(
                        unit.name(),
                        requireNonNull(ppm),
                        requireNonNull(every).milliseconds() / HOUR,
                        unit.rate().perSecond()));
    }

    /** How far the two clocks may be apart at the worst, in parts per million. */
    public double worstPpm(ClockDrift other) {
        return FrameDrift.worstPpm(ppm, other.ppm);
    }

    /** Frames of this unit that the two may be apart by the next setting. */
    public double framesFrom(ClockDrift other) {
        return FrameDrift.frames(worstPpm(other), hours, framesPerSecond);
    }

    /** Hours until the two may be this many frames apart. */
    public double hoursUntil(double frames, ClockDrift other) {
        return FrameDrift.hoursUntil(frames, worstPpm(other), framesPerSecond);
    }

    /** Setting the clocks more often, to the whole minute; or generators that stay on. Keys: jam-sooner, boxes. */
    public List<Fix> fixes(double frames, ClockDrift other) {
        List<Fix> fixes = new ArrayList<>();
        double minutes = Math.floor(hoursUntil(frames, other) * 60);
        if (minutes >= 1) {
            Timespan every = new Timespan(minutes * 60_000);
            fixes.add(Fix.set("jam-sooner", EVERY, every).with("every", null, every));
        }
        fixes.add(Fix.advise("boxes"));
        return fixes;
    }
}
