package akin.model.derived;

import akin.model.exposure.NdStack;
import akin.model.quantity.NeutralDensity;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Neutral densities for one unit, chosen from its body's own and from what other units leave on the van.
 *
 * @param filters what to carry, the body's own first
 * @param stops what they take together, in stops
 */
record NdChoice(List<NeutralDensity> filters, double stops) {

    /** Stops that a choice must come nearer for each filter more: glass is not put on for nothing. */
    private static final double WORTH_A_FILTER = 0.02;

    NdChoice {
        filters = List.copyOf(filters);
    }

    /** A choice of these filters. */
    static NdChoice of(List<NeutralDensity> filters) {
        return new NdChoice(filters, CollectedLight.stops(filters));
    }

    /** As {@link #nearest(Unit, List, double, int)}, of as many filters as a stack may have. */
    static NdChoice nearest(Unit unit, List<NeutralDensity> kit, double stops) {
        return nearest(unit, kit, stops, NdStack.MOST_FILTERS);
    }

    /**
     * The choice that comes nearest to so many stops.
     *
     * @param unit the unit that is to carry it; one of its body's own densities may be part of it
     * @param kit what it may take from the van
     * @param stops stops wanted; below 0 as 0
     * @param most filters that the choice may have, the body's own included
     */
    static NdChoice nearest(Unit unit, List<NeutralDensity> kit, double stops, int most) {
        NdChoice best = deeper(of(List.of()), kit, 0, Math.max(0, stops), most);
        for (NeutralDensity own : NdPlan.internal(unit)) {
            if (most > 0) {
                best = better(best, deeper(of(List.of(own)), kit, 0, Math.max(0, stops), most), stops);
            }
        }
        return best;
    }

    private static NdChoice deeper(NdChoice soFar, List<NeutralDensity> kit, int from, double stops, int most) {
        NdChoice best = soFar;
        if (soFar.filters().size() < most) {
            for (int i = from; i < kit.size(); i++) {
                List<NeutralDensity> more = new ArrayList<>(soFar.filters());
                more.add(kit.get(i));
                best = better(best, deeper(of(more), kit, i + 1, stops, most), stops);
            }
        }
        return best;
    }

    private static NdChoice better(NdChoice a, NdChoice b, double stops) {
        return b.cost(stops) < a.cost(stops) ? b : a;
    }

    private double cost(double wanted) {
        return Math.abs(stops - wanted) + WORTH_A_FILTER * filters.size();
    }

    /** Density of all of them together. */
    double density() {
        return filters.stream().mapToDouble(NeutralDensity::density).sum();
    }

    /** What to write behind the key {@code filters}. */
    String written() {
        return filters.toString();
    }

    /** What to say: the filters, or that there are none. */
    String spoken() {
        return filters.isEmpty()
                ? "no filter"
                : String.join(" + ", filters.stream().map(Object::toString).toList());
    }
}
