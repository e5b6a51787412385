package akin.model.rig;

import akin.model.footage.Clip;
import akin.model.gear.Mount;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A planned production with everything looked up: what the rules are given.
 *
 * @param production what the production has agreed
 * @param match what the units are matched to
 * @param scenes its scenes, in the order of the rig file
 * @param kit what is on the van
 * @param mounts the mounts of the catalogue, by id
 * @param units its units, the hero first, then by name: what is said must not hang on the order of the rig file
 * @param waivers agreements that findings stay as they are, in the order of the rig file
 * @param footage clips that its units shot, by unit in the order of units, then by name; each is of one of the units
 * @param readings what was read of test shots on the day; null when nothing was
 */
public record Rig(
        Production production,
        Match match,
        List<Scene> scenes,
        Kit kit,
        Map<String, Mount> mounts,
        List<Unit> units,
        List<Waiver> waivers,
        List<Clip> footage,
        @Nullable Readings readings) {

    /** A rig of which nothing is shot yet. */
    public Rig(
            Production production,
            Match match,
            List<Scene> scenes,
            Kit kit,
            Map<String, Mount> mounts,
            List<Unit> units,
            List<Waiver> waivers) {
        this(production, match, scenes, kit, mounts, units, waivers, List.of(), null);
    }

    /** Copies the lists; the hero must be a unit and there must be another one. */
    public Rig {
        scenes = List.copyOf(scenes);
        units = units.stream()
                .sorted(Comparator.comparing((Unit unit) -> !unit.hero()).thenComparing(Unit::name))
                .toList();
        waivers = List.copyOf(waivers);
        mounts = Map.copyOf(mounts);
        List<String> names = units.stream().map(Unit::name).toList();
        footage = footage.stream()
                .sorted(Comparator.comparingInt((Clip clip) -> names.indexOf(clip.unitName()))
                        .thenComparing(Clip::name))
                .toList();
        if (!footage.stream().allMatch(clip -> names.contains(clip.unitName()))) {
            throw new IllegalArgumentException("a clip is of one of the units");
        }
        if (units.size() < 2 || units.stream().filter(Unit::hero).count() != 1) {
            throw new IllegalArgumentException("a rig has one hero and at least one other unit");
        }
    }

    /** False of a waiver for something about shot clips, or test shots, while there are none: it cannot have met its finding. */
    public boolean shows(Waiver waiver) {
        return (!footage.isEmpty() || !waiver.ofFootage()) && (readings != null || !waiver.ofProof());
    }

    /** What was read of a unit's test shots; null when nothing was. */
    public @Nullable Reading reading(Unit unit) {
        return readings == null ? null : readings.units().get(unit.name());
    }

    /** The hero with each of the others, by name. */
    public List<Pairing> pairings() {
        return units.stream()
                .filter(unit -> !unit.hero())
                .map(unit -> new Pairing(match.hero(), unit.name()))
                .toList();
    }
}
