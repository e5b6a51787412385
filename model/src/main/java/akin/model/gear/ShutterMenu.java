package akin.model.gear;

import akin.model.quantity.FrameRate;
import akin.model.quantity.Shutter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What a body's shutter menu offers. A body offers angles, times or both.
 *
 * @param angles the angles listed, in degrees
 * @param dial angles that can be dialled in even steps
 * @param times the times listed
 * @param option a menu item that has to be switched on first for angles to appear
 */
public record ShutterMenu(
        List<Shutter.Angle> angles,
        @Nullable AngleDial dial,
        List<Shutter.Time> times,
        @Nullable String option) {

    /**
     * Angles in even steps.
     *
     * @param from smallest angle
     * @param to largest angle
     * @param step distance between neighbours
     */
    public record AngleDial(Shutter.Angle from, Shutter.Angle to, Shutter.Angle step) {

        /** The smallest angle must not be over the largest. */
        public AngleDial {
            if (from.degrees().compareTo(to.degrees()) > 0) {
                throw new IllegalArgumentException("the dial goes from " + from + " to " + to + ", which is smaller");
            }
        }

        boolean offers(BigDecimal degrees) {
            return degrees.compareTo(from.degrees()) >= 0
                    && degrees.compareTo(to.degrees()) <= 0
                    && degrees.subtract(from.degrees())
                                    .remainder(step.degrees())
                                    .signum()
                            == 0;
        }

        Shutter.Angle nearest(double degrees) {
            BigDecimal clamped = BigDecimal.valueOf(degrees).max(from.degrees()).min(to.degrees());
            BigDecimal steps = clamped.subtract(from.degrees()).divide(step.degrees(), 0, RoundingMode.HALF_EVEN);
            BigDecimal found = from.degrees().add(steps.multiply(step.degrees()));
            if (found.compareTo(to.degrees()) > 0) {
                found = found.subtract(step.degrees());
            }
            return new Shutter.Angle(found.stripTrailingZeros());
        }
    }

    /** Copies the lists; an empty menu is an error. */
    public ShutterMenu {
        angles = List.copyOf(angles);
        times = List.copyOf(times);
        if (angles.isEmpty() && times.isEmpty() && dial == null) {
            throw new IllegalArgumentException("a shutter menu offers angles, times or both");
        }
    }

    /** True when it offers angles. */
    public boolean hasAngles() {
        return !angles.isEmpty() || dial != null;
    }

    /** True when it offers times. */
    public boolean hasTimes() {
        return !times.isEmpty();
    }

    /** True when this setting stands in the menu as written: an angle among angles, a time among times. */
    public boolean offers(Shutter setting) {
        if (setting instanceof Shutter.Angle angle) {
            return angles.stream().anyMatch(a -> a.degrees().compareTo(angle.degrees()) == 0)
                    || (dial != null && dial.offers(angle.degrees()));
        }
        return times.contains(setting);
    }

    /**
     * The offered setting whose exposure time is nearest to the wanted one, by ratio. Times longer than the frame
     * interval are left out. Of equally near ones, the kind {@code alike} is of, where given.
     *
     * @param seconds wanted exposure time, over 0
     * @param rate recorded frame rate
     */
    public Optional<Shutter> nearest(BigFraction seconds, FrameRate rate) {
        List<Shutter> candidates = new ArrayList<>(angles);
        double degrees = new Shutter.Time(seconds).degrees(rate);
        if (dial != null) {
            candidates.add(dial.nearest(degrees));
        }
        for (Shutter.Time time : times) {
            if (time.seconds().compareTo(rate.frameSeconds()) <= 0) {
                candidates.add(time);
            }
        }
        double wanted = seconds.doubleValue();
        return candidates.stream()
                .min(Comparator.comparingDouble(
                        s -> Math.abs(Math.log(s.seconds(rate).doubleValue() / wanted))));
    }

    /**
     * The offered angle and the offered time that come nearest to a wanted exposure time, by ratio: one of each kind that
     * the menu has. Times longer than the frame interval are left out.
     *
     * @param seconds wanted exposure time, over 0
     * @param rate recorded frame rate
     */
    public List<Shutter> around(BigFraction seconds, FrameRate rate) {
        List<Shutter> found = new ArrayList<>();
        if (hasAngles()) {
            new ShutterMenu(angles, dial, List.of(), option)
                    .nearest(seconds, rate)
                    .ifPresent(found::add);
        }
        if (hasTimes()) {
            new ShutterMenu(List.of(), null, times, option)
                    .nearest(seconds, rate)
                    .ifPresent(found::add);
        }
        return List.copyOf(found);
    }

    /** Every listed setting with its exposure time no longer than a frame; a dial is left out (ask {@link #nearest}). */
    public List<Shutter> listed(FrameRate rate) {
        List<Shutter> all = new ArrayList<>(angles);
        times.stream()
                .filter(t -> t.seconds().compareTo(rate.frameSeconds()) <= 0)
                .forEach(all::add);
        return List.copyOf(all);
    }
}
