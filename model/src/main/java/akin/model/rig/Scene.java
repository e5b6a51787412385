package akin.model.rig;

import akin.model.quantity.AngularSpeed;
import akin.model.quantity.Frequency;
import akin.model.quantity.Length;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A scene as far as it bears on matching.
 *
 * @param index its place in the rig file, from 0
 * @param name its name
 * @param subjectDistance from the image plane to the subject
 * @param distances from the image plane of a unit to the subject, by name, of units that stand elsewhere
 * @param lights the kinds of light in it; null when not said
 * @param pan speed of the fastest planned pan
 * @param mains mains frequency where this scene is shot, if not the production's
 * @param screens displays in the picture; empty when none is planned
 * @param dimming light dimmed by switching it on and off; empty when none is planned
 * @param flashes flashes of light a second that are planned, in the picture or on set; null when none are
 * @param takes how much of it is planned to be recorded
 * @param units names of the units that shoot it; empty: all
 */
public record Scene(
        int index,
        String name,
        @Nullable Length subjectDistance,
        Map<String, Length> distances,
        @Nullable List<LightKind> lights,
        @Nullable AngularSpeed pan,
        @Nullable Frequency mains,
        List<Screen> screens,
        List<Dimming> dimming,
        @Nullable Frequency flashes,
        @Nullable Takes takes,
        List<String> units) {

    /** Copies the lists. */
    public Scene {
        screens = List.copyOf(screens);
        dimming = List.copyOf(dimming);
    }

    /** A scene without screens, dimming, flashes and planned takes. */
    public Scene(
            int index,
            String name,
            @Nullable Length subjectDistance,
            Map<String, Length> distances,
            @Nullable List<LightKind> lights,
            @Nullable AngularSpeed pan,
            @Nullable Frequency mains,
            List<String> units) {
        this(index, name, subjectDistance, distances, lights, pan, mains, List.of(), List.of(), null, null, units);
    }

    /** The kinds of light in it; none when not said. */
    public List<LightKind> plannedLights() {
        return lights == null ? List.of() : lights;
    }

    /** The dotted path of one of its keys. */
    public String path(String key) {
        return "scenes." + index + "." + key;
    }

    /** How far a unit stands from the subject, or null when that is not planned. */
    public @Nullable Length distanceOf(String unit) {
        Length own = distances.get(unit);
        return own == null ? subjectDistance : own;
    }

    /** The dotted path of what {@link #distanceOf} gives. */
    public String distancePath(String unit) {
        return path(distances.containsKey(unit) ? "distances." + unit : "subject-distance");
    }

    /** True when this unit shoots it. */
    public boolean shotBy(String unit) {
        return units.isEmpty() || units.contains(unit);
    }
}
