package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.exposure.NdStack;
import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.quantity.NeutralDensity;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The neutral densities a unit is to carry, and those of them that are neither in its body nor left on the van. Units
 * take from the van in turn, the hero first, then by name; a body gives one of its own densities at a time.
 *
 * @param unitName name of the unit
 * @param filters what it is to carry, without clear ones
 * @param lacking those that nobody has
 */
public record NdPlan(String unitName, List<NeutralDensity> filters, List<NeutralDensity> lacking) implements Derived {

    /** Densities nearer than this are one filter: ND4 (two stops exactly) is sold as ND 0.6. */
    private static final double SAME_DENSITY = 0.005;

    /** A kit is looked through up to so many filters, to bound the work. */
    private static final int LARGEST_KIT = 64;

    /** Copies the lists. */
    public NdPlan {
        filters = List.copyOf(filters);
        lacking = List.copyOf(lacking);
    }

    /** The plan, or what is missing for it. */
    public static List<Object> derive(Rig rig, Unit unit) {
        List<NeutralDensity> filters = unit.filters();
        Inputs inputs = Inputs.of(NdPlan.class, unit).setting("filters", filters);
        if (filters != null && !dense(filters).isEmpty()) {
            inputs.input("kit.filters", WhereFound.KIT_LIST, rig.kit().filters());
            inputs.body("internal-nd", WhereFound.SPEC_SHEET, unit.body().internalNd());
        }
        return inputs.derive(() -> {
            List<NeutralDensity> carried = dense(requireNonNull(filters));
            return new NdPlan(unit.name(), carried, lacking(rig, unit));
        });
    }

    /** What the unit's filters take together, in stops. */
    public double stops() {
        return CollectedLight.stops(filters);
    }

    /** Density of the unit's filters together. */
    public double density() {
        return NdChoice.of(filters).density();
    }

    /** What to say: the filters that are lacking. */
    public String lackingWords() {
        return NdChoice.of(lacking).spoken();
    }

    /** What the choice that comes nearest would be off by, in stops. */
    public double residual(Rig rig, Unit unit) {
        return nearest(rig, unit).stops() - stops();
    }

    /** The nearest that there is, and putting what is lacking on the van. */
    public List<Fix> fixes(Rig rig, Unit unit) {
        List<Fix> fixes = new ArrayList<>();
        NdChoice nearest = nearest(rig, unit);
        if (Math.abs(nearest.stops() - stops()) <= rig.match().tolerances().of(Tolerance.EXPOSURE)) {
            fixes.add(Fix.set("use-nearest", unit.path("filters"), nearest.written())
                    .with("filters", null, nearest.spoken())
                    .with("left", null, nearest.stops() - stops(), "stops"));
        }
        List<NeutralDensity> more = new ArrayList<>(requireNonNull(rig.kit().filters()));
        more.addAll(lacking);
        fixes.add(Fix.set("add-to-kit", "kit.filters", more.toString()));
        return List.copyOf(fixes);
    }

    /** The same density in as few filters as the tolerance allows, or what to hire. */
    public static List<Fix> fewer(Rig rig, Unit unit) {
        List<NeutralDensity> filters = requireNonNull(unit.filters());
        double wanted = CollectedLight.stops(filters);
        int most = (int) rig.match().tolerances().of(Tolerance.ND_STACK);
        NdChoice choice = NdChoice.nearest(unit, spare(rig, unit), wanted, most);
        if (Math.abs(choice.stops() - wanted) <= rig.match().tolerances().of(Tolerance.EXPOSURE)) {
            return List.of(Fix.set("fewer", unit.path("filters"), choice.written())
                    .with("filters", null, choice.spoken())
                    .with("left", null, Math.abs(choice.stops() - wanted), "stops"));
        }
        return List.of(Fix.advise("hire-denser")
                .with("density", null, NdChoice.of(filters).density(), ""));
    }

    /**
     * Every choice of filters that a unit could carry: what the other units leave on the van, one of its body's own, no more
     * than a stack may have; none first, then by number and density.
     */
    public static List<List<NeutralDensity>> choices(Rig rig, Unit unit) {
        List<List<NeutralDensity>> all = new ArrayList<>();
        List<NeutralDensity> spare = spare(rig, unit);
        stacks(List.of(), spare, 0, all);
        internal(unit).forEach(own -> stacks(List.of(own), spare, 0, all));
        Map<List<Long>, List<NeutralDensity>> distinct = new java.util.LinkedHashMap<>();
        all.stream()
                .sorted(Comparator.<List<NeutralDensity>>comparingInt(List::size)
                        .thenComparingDouble(CollectedLight::stops))
                .forEach(stack -> distinct.putIfAbsent(
                        stack.stream()
                                .map(filter -> Math.round(filter.density() * 1000))
                                .sorted()
                                .toList(),
                        stack));
        return List.copyOf(distinct.values());
    }

    private static void stacks(
            List<NeutralDensity> soFar, List<NeutralDensity> kit, int from, List<List<NeutralDensity>> all) {
        all.add(soFar);
        if (soFar.size() < NdStack.MOST_FILTERS) {
            for (int i = from; i < kit.size(); i++) {
                List<NeutralDensity> more = new ArrayList<>(soFar);
                more.add(kit.get(i));
                stacks(List.copyOf(more), kit, i + 1, all);
            }
        }
    }

    private NdChoice nearest(Rig rig, Unit unit) {
        return NdChoice.nearest(unit, spare(rig, unit), stops());
    }

    /** The densities built into a unit's body, without the clear position. */
    static List<NeutralDensity> internal(Unit unit) {
        List<NeutralDensity> own = unit.body().internalNd();
        return own == null ? List.of() : dense(own);
    }

    /** The filters of the van that this unit may carry: what the other units do not. */
    static List<NeutralDensity> spare(Rig rig, Unit unit) {
        List<NeutralDensity> left = stock(rig);
        for (Unit other : rig.units()) {
            if (!other.name().equals(unit.name())) {
                take(left, other);
            }
        }
        Map<Long, Integer> seen = new HashMap<>();
        // A stack never holds more of one density than it holds filters.
        return left.stream()
                .filter(filter ->
                        seen.merge(Math.round(filter.density() * 1000), 1, Integer::sum) <= NdStack.MOST_FILTERS)
                .limit(LARGEST_KIT)
                .toList();
    }

    private static List<NeutralDensity> lacking(Rig rig, Unit unit) {
        List<NeutralDensity> left = stock(rig);
        for (Unit each : rig.units()) {
            List<NeutralDensity> lacking = take(left, each);
            if (each.name().equals(unit.name())) {
                return lacking;
            }
        }
        throw new IllegalArgumentException(unit.name() + " is not in the rig");
    }

    /**
     * Takes what a unit carries from what is left; gives what was not there. Of several filters that the body could give
     * itself, it gives the one that leaves least to be lacking, the densest of those.
     */
    private static List<NeutralDensity> take(List<NeutralDensity> left, Unit unit) {
        List<NeutralDensity> wanted = new ArrayList<>(unit.filters() == null ? List.of() : dense(unit.filters()));
        wanted.sort(Comparator.comparingDouble(NeutralDensity::density).reversed());
        List<NeutralDensity> own = internal(unit);
        List<NeutralDensity> bestRest = wanted;
        int fewest = lacking(left, wanted).size();
        boolean inside = false;
        for (int i = 0; i < wanted.size(); i++) {
            NeutralDensity filter = wanted.get(i);
            if (own.stream().anyMatch(o -> same(o, filter))) {
                List<NeutralDensity> rest = new ArrayList<>(wanted);
                rest.remove(i);
                int lacking = lacking(left, rest).size();
                if (lacking < fewest || !inside) {
                    bestRest = rest;
                    fewest = lacking;
                    inside = true;
                }
            }
        }
        List<NeutralDensity> gone = lacking(left, bestRest);
        for (NeutralDensity filter : bestRest) {
            left.stream().filter(there -> same(there, filter)).findFirst().ifPresent(left::remove);
        }
        return gone;
    }

    private static List<NeutralDensity> lacking(List<NeutralDensity> there, List<NeutralDensity> wanted) {
        List<NeutralDensity> left = new ArrayList<>(there);
        List<NeutralDensity> lacking = new ArrayList<>();
        for (NeutralDensity filter : wanted) {
            left.stream()
                    .filter(one -> same(one, filter))
                    .findFirst()
                    .ifPresentOrElse(left::remove, () -> lacking.add(filter));
        }
        return lacking;
    }

    private static List<NeutralDensity> stock(Rig rig) {
        List<NeutralDensity> filters = rig.kit().filters();
        return filters == null ? new ArrayList<>() : new ArrayList<>(dense(filters));
    }

    private static List<NeutralDensity> dense(List<NeutralDensity> filters) {
        return filters.stream().filter(filter -> filter.density() > 0).toList();
    }

    private static boolean same(NeutralDensity a, NeutralDensity b) {
        return Math.abs(a.density() - b.density()) < SAME_DENSITY;
    }
}
