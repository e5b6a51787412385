package akin.model.derived;

import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.timing.LightPulses;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;

/**
 * What pulsing light does to a unit's picture at its exposure time. How deep the light dips between pulses is not known of
 * such lamps, so the worst is taken: it goes dark.
 *
 * @param light the light
 * @param exposure the exposure
 */
public record Flicker(PulsingLight light, ExposureTime exposure) {

    /** The worst that a unit is known to meet at an exposure: one, or none where no pulsing light is known. */
    public static List<Flicker> worst(Rig rig, Unit unit, ExposureTime exposure) {
        return PulsingLight.known(rig, unit)
                .map(light -> new Flicker(light, exposure))
                .max(Comparator.comparingDouble(Flicker::ripplePercent)
                        .thenComparing(flicker -> flicker.light().scene(), Comparator.reverseOrder()))
                .stream()
                .toList();
    }

    /** Change of exposure from frame to frame or row to row, peak to peak, in per cent of the mean. */
    public double ripplePercent() {
        return light.ripplePercent(exposure.seconds());
    }

    /** Pulses a second: two for each cycle of the mains. */
    public double pulsesPerSecond() {
        return LightPulses.pulseHz(light.hertz()).doubleValue();
    }

    /** Pulses within one exposure. */
    public double pulses() {
        return LightPulses.pulses(exposure.seconds(), light.hertz());
    }

    /** How often a second frames slide through a whole pulse, in Hz; 0 when every frame meets the light in one phase. */
    public double beatHz() {
        return phase().beatHz();
    }

    /** What that looks like, in words. */
    public String looks() {
        if (phase().standsStill()) {
            return "At this rate every frame meets the light in the same phase: the picture does not pulse, but bands"
                    + " stand still rather than vanish, creep as the mains drift, and differ from camera to camera";
        }
        double beat = beatHz();
        return beat >= 1
                ? "The picture pulses, or bands roll through it, about " + plain(beat) + " times a second"
                : "The picture pulses, or bands roll through it, about once in " + plain(1 / beat) + " s";
    }

    private LightPulses.Phase phase() {
        return LightPulses.phase(exposure.rate().fraction(), light.hertz());
    }

    private static String plain(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(2));
        return rounded.stripTrailingZeros().toPlainString();
    }
}
