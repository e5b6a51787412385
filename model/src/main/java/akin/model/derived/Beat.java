package akin.model.derived;

import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import akin.model.timing.LightPulses;
import akin.model.timing.ScreenRefresh;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Something that repeats in front of a unit, and shows when an exposure does not hold a whole number of it.
 *
 * @param form what repeats
 * @param hertz how often a second
 * @param on the part of each cycle that the light is on, where it is switched
 */
record Beat(Form form, BigFraction hertz, double on) {

    /** A limit met to within this part of itself is met: the same times reached by other roads of rounding. */
    private static final double ROUNDING = 1e-9;

    private static final double DARK_BETWEEN_PULSES = 1;

    /** What repeats. */
    enum Form {
        /** Light that follows the mains, as a raised cosine. */
        MAINS,
        /** Light that is switched on and off. */
        SWITCHED,
        /** A screen that is drawn anew. */
        SCREEN
    }

    static Beat mains(BigFraction mainsHz) {
        return new Beat(Form.MAINS, LightPulses.pulseHz(mainsHz), 1);
    }

    /** All that a unit is known to meet, without repeats. */
    static List<Beat> of(Rig rig, Unit unit) {
        Stream<Beat> lights = PulsingLight.known(rig, unit).map(light -> mains(light.hertz()));
        Stream<Beat> dimmed = DimmedLight.known(rig, unit).map(DimmedLight::beat);
        Stream<Beat> screens = ScreenInShot.known(rig, unit).map(ScreenInShot::beat);
        return Stream.of(lights, dimmed, screens)
                .flatMap(beats -> beats)
                .distinct()
                .toList();
    }

    /** Of light the change of exposure, peak to peak, in per cent of the mean; of a screen the bar, in per cent of it. */
    double percent(BigFraction seconds) {
        return switch (form) {
            case MAINS -> LightPulses.bandingPercent(seconds, hertz, DARK_BETWEEN_PULSES);
            case SWITCHED -> LightPulses.switchedBandingPercent(seconds, hertz, on);
            case SCREEN -> ScreenRefresh.percentOff(seconds, hertz);
        };
    }

    /** Whether that is more than is allowed. */
    boolean shows(BigFraction seconds, Tolerances limits) {
        Tolerance limit = form == Form.SCREEN ? Tolerance.SCREEN_BAR : Tolerance.FLICKER_RIPPLE;
        return percent(seconds) > limits.of(limit) * (1 + ROUNDING);
    }
}
