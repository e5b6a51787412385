package akin.engine.equip;

import akin.engine.read.GearSheet;
import akin.model.derived.StartingPlan;
import akin.model.gear.Adapter;
import akin.model.gear.Body;
import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.gear.Profile;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A kit list that units are to be chosen from: each body in each of its modes with each profile of the mode, with each lens.
 * They are counted through by number, in the order of their ids, so that a hundred thousand of them take no room.
 */
public final class Candidates {

    private final List<Setup> setups;
    private final List<@Nullable Lens> lenses;
    private final int bodies;
    private final List<Adapter> adapters;
    private final List<String> withoutModes;

    /** A body in a mode with a profile. */
    private record Setup(Body body, Mode mode, @Nullable Profile profile) {}

    private Candidates(
            List<Setup> setups,
            List<@Nullable Lens> lenses,
            int bodies,
            List<Adapter> adapters,
            List<String> withoutModes) {
        this.setups = setups;
        this.lenses = lenses;
        this.bodies = bodies;
        this.adapters = adapters;
        this.withoutModes = List.copyOf(withoutModes);
    }

    /** Everything that these sheets hold; of two entries of one id the one of the earlier sheet. */
    public static Candidates of(List<GearSheet> sheets) {
        TreeMap<String, Body> bodies = new TreeMap<>();
        TreeMap<String, Lens> lenses = new TreeMap<>();
        TreeMap<String, Adapter> adapters = new TreeMap<>();
        for (GearSheet sheet : sheets) {
            sheet.bodies().forEach(bodies::putIfAbsent);
            sheet.lenses().forEach(lenses::putIfAbsent);
            sheet.adapters().forEach(adapters::putIfAbsent);
        }
        List<Setup> setups = new ArrayList<>();
        List<String> withoutModes = new ArrayList<>();
        for (Body body : bodies.values()) {
            if (body.modes().isEmpty()) {
                withoutModes.add(body.id());
            }
            body.modes().values().stream()
                    .sorted(Comparator.comparing(Mode::id))
                    .forEach(mode ->
                            profiles(body, mode).forEach(profile -> setups.add(new Setup(body, mode, profile))));
        }
        return new Candidates(
                setups,
                new ArrayList<>(lenses.values()),
                bodies.size() - withoutModes.size(),
                List.copyOf(adapters.values()),
                withoutModes);
    }

    private static List<@Nullable Profile> profiles(Body body, Mode mode) {
        List<String> offered = mode.profiles();
        List<@Nullable Profile> profiles = new ArrayList<>(body.profiles().values().stream()
                .filter(profile -> offered == null || offered.contains(profile.id()))
                .sorted(Comparator.comparing(Profile::id))
                .toList());
        if (profiles.isEmpty()) {
            profiles.add(null);
        }
        return profiles;
    }

    /** The same with this one body in this mode and profile where the list names none. */
    public Candidates orOn(Body body, Mode mode, @Nullable Profile profile) {
        return setups.isEmpty()
                ? new Candidates(List.of(new Setup(body, mode, profile)), lenses, 1, adapters, withoutModes)
                : this;
    }

    /** The same with these lenses where the list names none; none at all: each body without one. */
    public Candidates orWith(Collection<Lens> others) {
        if (!lenses.isEmpty()) {
            return this;
        }
        List<@Nullable Lens> instead = new ArrayList<>(others);
        if (instead.isEmpty()) {
            instead.add(null);
        }
        return new Candidates(setups, instead, bodies, adapters, withoutModes);
    }

    /** How many there are. */
    public long size() {
        return (long) setups.size() * lenses.size();
    }

    /** How many bodies there are among them. */
    public int bodies() {
        return bodies;
    }

    /** How many lenses there are among them. */
    public int lenses() {
        return (int) lenses.stream().filter(lens -> lens != null).count();
    }

    /** How many ways to record: bodies times modes times profiles. */
    public int setups() {
        return setups.size();
    }

    /** The adapters that the list brings, by id. */
    public List<Adapter> adapters() {
        return adapters;
    }

    /** Ids of the bodies of which no mode is known, and which are therefore not among them. */
    public List<String> withoutModes() {
        return withoutModes;
    }

    /**
     * One of them.
     *
     * @param number from 0 up to, not including, {@link #size}
     */
    public StartingPlan.Choice get(int number) {
        Setup setup = setups.get(number / lenses.size());
        return new StartingPlan.Choice(setup.body(), setup.mode(), setup.profile(), lenses.get(number % lenses.size()));
    }
}
