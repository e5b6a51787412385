package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.quantity.Frequency;
import akin.model.rig.LightKind;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Light that may pulse with the mains in a scene that a unit shoots.
 *
 * @param unitName name of the unit
 * @param scene name of the scene
 * @param lights the kinds of light in it that may pulse
 * @param mains mains frequency where the scene is shot
 */
public record PulsingLight(String unitName, String scene, List<LightKind> lights, Frequency mains) implements Derived {

    /** Copies the list. */
    public PulsingLight {
        lights = List.copyOf(lights);
    }

    /**
     * One fact for each scene with pulsing light that a unit shoots, and what is missing: the scenes, the lights of one, or
     * the mains that a pulsing light hangs on. Nothing for a scene whose light is known to be steady.
     */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (rig.scenes().isEmpty()) {
            return Inputs.of(PulsingLight.class, unit)
                    .input("scenes", WhereFound.PLAN, null)
                    .derive(() -> {
                        throw new IllegalStateException("no scene has no light");
                    });
        }
        List<Object> facts = new ArrayList<>();
        for (Scene scene : rig.scenes()) {
            if (scene.shotBy(unit.name())) {
                facts.addAll(derive(rig, unit, scene));
            }
        }
        return List.copyOf(facts);
    }

    private static List<Object> derive(Rig rig, Unit unit, Scene scene) {
        Inputs inputs = Inputs.of(PulsingLight.class, unit);
        List<LightKind> lights = scene.lights();
        if (lights == null) {
            inputs.input(scene.path("lights"), WhereFound.PLAN, null);
        }
        List<LightKind> pulsing = lights == null
                ? List.of()
                : lights.stream().filter(LightKind::pulses).toList();
        if (lights != null && pulsing.isEmpty()) {
            return List.of();
        }
        Frequency mains = scene.mains() == null ? rig.production().mains() : scene.mains();
        if (!pulsing.isEmpty()) {
            inputs.input("production.mains", WhereFound.PLAN, mains);
        }
        return inputs.derive(() -> new PulsingLight(unit.name(), scene.name(), pulsing, requireNonNull(mains)));
    }

    /** The pulsing light that a unit is known to shoot. */
    static Stream<PulsingLight> known(Rig rig, Unit unit) {
        return derive(rig, unit).stream().filter(PulsingLight.class::isInstance).map(PulsingLight.class::cast);
    }

    /** The kinds of light in words. */
    public String words() {
        return lights.stream().distinct().map(LightKind::word).collect(Collectors.joining(", "));
    }

    /** Mains frequency in Hz, exactly as written. */
    public BigFraction hertz() {
        return BigFraction.from(mains.hertz());
    }

    /**
     * Change of exposure from frame to frame or row to row at an exposure time, peak to peak, in per cent of the mean; at the
     * worst, the light going dark between pulses.
     */
    public double ripplePercent(BigFraction seconds) {
        return Beat.mains(hertz()).percent(seconds);
    }
}
