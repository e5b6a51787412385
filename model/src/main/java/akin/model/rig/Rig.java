package akin.model.rig;

import akin.model.gear.Mount;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

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
 */
public record Rig(
        Production production,
        Match match,
        List<Scene> scenes,
        Kit kit,
        Map<String, Mount> mounts,
        List<Unit> units,
        List<Waiver> waivers) {

    /** Copies the lists; the hero must be a unit and there must be another one. */
    public Rig {
        scenes = List.copyOf(scenes);
        units = units.stream()
                .sorted(Comparator.comparing((Unit unit) -> !unit.hero()).thenComparing(Unit::name))
                .toList();
        waivers = List.copyOf(waivers);
        mounts = Map.copyOf(mounts);
        if (units.size() < 2 || units.stream().filter(Unit::hero).count() != 1) {
            throw new IllegalArgumentException("a rig has one hero and at least one other unit");
        }
    }

    /** The hero with each of the others, by name. */
    public List<Pairing> pairings() {
        return units.stream()
                .filter(unit -> !unit.hero())
                .map(unit -> new Pairing(match.hero(), unit.name()))
                .toList();
    }
}
