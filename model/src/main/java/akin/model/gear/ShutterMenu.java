package akin.model.gear;

import akin.model.quantity.FrameRate;
import akin.model.quantity.Shutter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

    private static final double FULL_TURN = 360;

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
     * interval are left out. Of an angle and a time that are equally near, the angle.
     *
     * @param seconds wanted exposure time, over 0
     * @param rate recorded frame rate
     */
    public Optional<Shutter> nearest(BigFraction seconds, FrameRate rate) {
        double wanted = seconds.doubleValue();
        Shutter angle = nearestAngle(wanted, rate);
        Shutter time = nearestTime(wanted, rate);
        if (angle == null || time == null) {
            return Optional.ofNullable(angle == null ? time : angle);
        }
        return Optional.of(distance(time.seconds(rate), wanted) < distance(angle.seconds(rate), wanted) ? time : angle);
    }

    /**
     * The offered angle and the offered time that come nearest to a wanted exposure time, by ratio: one of each kind that
     * the menu has. Times longer than the frame interval are left out.
     *
     * @param seconds wanted exposure time, over 0
     * @param rate recorded frame rate
     */
    public List<Shutter> around(BigFraction seconds, FrameRate rate) {
        double wanted = seconds.doubleValue();
        return Stream.of(
                        Optional.ofNullable(nearestAngle(wanted, rate)), Optional.ofNullable(nearestTime(wanted, rate)))
                .flatMap(Optional::stream)
                .toList();
    }

    // Menus are looked through hundreds of times for one report, so distances are doubles; what is offered stays exact.

    private @Nullable Shutter nearestAngle(double wanted, FrameRate rate) {
        double degrees = wanted * rate.perSecond() * FULL_TURN;
        Shutter.Angle best = dial == null ? null : dial.nearest(degrees);
        double least =
                best == null ? Double.POSITIVE_INFINITY : ratio(best.degrees().doubleValue(), degrees);
        for (Shutter.Angle angle : angles) {
            double apart = ratio(angle.degrees().doubleValue(), degrees);
            if (apart < least) {
                least = apart;
                best = angle;
            }
        }
        return best;
    }

    private @Nullable Shutter nearestTime(double wanted, FrameRate rate) {
        Shutter.Time best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Shutter.Time time : times) {
            double apart = distance(time.seconds(), wanted);
            if (apart < least && time.seconds().compareTo(rate.frameSeconds()) <= 0) {
                least = apart;
                best = time;
            }
        }
        return best;
    }

    private static double distance(BigFraction seconds, double wanted) {
        return ratio(seconds.doubleValue(), wanted);
    }

    /** How far apart two positive numbers are, by the larger over the smaller. */
    private static double ratio(double a, double b) {
        return Math.max(a, b) / Math.min(a, b);
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
