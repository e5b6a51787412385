package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.exposure.Light;
import akin.model.finding.Fix;
import akin.model.quantity.Aperture;
import akin.model.quantity.ColourTemperature;
import akin.model.rig.FittedLens;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What to set after test shots. None of these edits the rig file: levels were read with the settings as they were, so a card
 * has to be shot again before the change counts as proven.
 */
public final class ProofFix {

    private static final Set<String> OFFERED = Set.of("set-density", "set-iso", "set-stop");
    private static final double MIRED = 1e6;
    private static final int COOLEST = 20_000;

    private ProofFix() {}

    /**
     * The exact correction on iris, ISO and neutral density, then the nearest that the unit offers of each. Keys: exact,
     * move, set-density, set-iso, set-stop.
     *
     * @param brighter stops by which the unit's grey is brighter than the hero's
     */
    public static List<Fix> exposure(Rig rig, Unit unit, double brighter) {
        List<Fix> fixes = new ArrayList<>();
        CollectedLight light = CollectedLight.derive(unit).get(0) instanceof CollectedLight known ? known : null;
        FittedLens fitted = unit.lens();
        Aperture stop = fitted == null ? null : fitted.stop();
        if (light == null || stop == null) {
            return List.of(Fix.advise("move")
                    .with("by", null, Math.abs(brighter), "stops")
                    .with("way", null, brighter > 0 ? "less" : "more"));
        }
        double density = light.ndStops() + brighter;
        String iris = (stop.kind() == Aperture.Kind.PHOTOMETRIC ? "T" : "f/")
                + hundredths(stop.number() * Light.ratio(brighter / 2));
        fixes.add(Fix.advise("exact")
                .with("iris", null, iris)
                .with("iso", null, Math.round(Light.isoBrighterBy(light.iso().value(), -brighter)))
                .with(
                        "density",
                        null,
                        density < 0
                                ? "no neutral density and " + hundredths(-density) + " stops more light"
                                : "neutral density of " + hundredths(density) + " stops in all"));
        LightFix.toDarken(rig, unit, light, brighter).stream()
                .filter(fix -> OFFERED.contains(fix.key()))
                .map(fix -> new Fix(fix.key(), List.of(), fix.values()))
                .forEach(fixes::add);
        return List.copyOf(fixes);
    }

    private static String hundredths(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    /**
     * The white balance that brings a unit's neutral to the hero's. Keys: set-white, and grade where its setting is not
     * known or none would.
     *
     * @param mired mired by which the unit's neutral is more amber than the hero's
     */
    public static List<Fix> white(Unit unit, double mired) {
        ColourTemperature planned = unit.white();
        return wanted(unit, mired)
                .filter(to -> !to.equals(planned))
                .map(to -> List.of(Fix.advise("set-white")
                        .with("to", null, to)
                        .with("left", null, Math.abs(requireNonNull(planned).mired() + mired - to.mired()), "mired")))
                .orElseGet(() -> List.of(Fix.advise("grade")));
    }

    /** A picture too amber was told of cooler light than there was: the unit is set so many mired warmer. */
    private static Optional<ColourTemperature> wanted(Unit unit, double mired) {
        ColourTemperature planned = unit.white();
        if (planned == null) {
            return Optional.empty();
        }
        double kelvin = MIRED / (planned.mired() + mired);
        if (!(kelvin >= 1000 && kelvin <= COOLEST)) {
            return Optional.empty();
        }
        ColourTemperature exact = new ColourTemperature((int) Math.round(kelvin));
        return unit.body().white() == null
                ? Optional.of(exact)
                : unit.body().white().nearest(exact);
    }
}
