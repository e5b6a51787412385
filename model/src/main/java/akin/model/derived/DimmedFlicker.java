package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.quantity.Frequency;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import akin.model.timing.LightPulses;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * What light dimmed by switching does to a unit's picture at its exposure time.
 *
 * @param light the light
 * @param exposure the exposure
 */
public record DimmedFlicker(DimmedLight light, ExposureTime exposure) {

    /** Dimmers are set in whole steps of this, in Hz; what they offer beyond is not known. */
    private static final double STEP_HERTZ = 100;

    /** The worst that a unit is known to meet at an exposure: one, or none where no such light is known. */
    public static List<DimmedFlicker> worst(Rig rig, Unit unit, ExposureTime exposure) {
        return DimmedLight.known(rig, unit)
                .map(light -> new DimmedFlicker(light, exposure))
                .max(Comparator.comparingDouble(DimmedFlicker::bandingPercent)
                        .thenComparing(flicker -> flicker.light().path(), Comparator.reverseOrder()))
                .stream()
                .toList();
    }

    /** Change of exposure from frame to frame or row to row, peak to peak, in per cent of the mean. */
    public double bandingPercent() {
        return light.beat().percent(exposure.seconds());
    }

    /** Pulses within one exposure. */
    public double pulses() {
        return exposure.seconds().doubleValue() * light.frequency().hertz();
    }

    /** What that looks like on this unit, in words. */
    public String looks(Unit unit) {
        if (Boolean.FALSE.equals(unit.body().rolls())) {
            return "The whole picture is taken at once, so frames differ";
        }
        if (!(Readout.derive(unit).get(0) instanceof Readout readout)) {
            return "Where the picture is read out line by line, bands cross it";
        }
        double bands = readout.milliseconds() / 1000 * light.frequency().hertz();
        return String.format(Locale.ROOT, "About %.0f bands cross the picture", bands);
    }

    /**
     * Settings without banding (keys of {@link ShutterPlan#forFlicker}), and {@code raise-frequency}: the frequency from
     * which no exposure this long shows it.
     */
    public List<Fix> fixes(Rig rig, Unit unit) {
        List<Fix> fixes = new ArrayList<>(ShutterPlan.forFlicker(rig, unit));
        Tolerances limits = rig.match().tolerances();
        double least = LightPulses.pulseHzFor(exposure.seconds(), light.onShare(), limits.of(Tolerance.FLICKER_RIPPLE));
        Frequency to = new Frequency(Math.ceil(least / STEP_HERTZ) * STEP_HERTZ);
        fixes.add(Fix.set("raise-frequency", light.path() + ".frequency", to).with("to", null, to));
        return List.copyOf(fixes);
    }
}
