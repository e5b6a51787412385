package akin.model.exposure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Neutral filters in front of one lens.
 *
 * @param densities optical densities of the filters, from the strongest to the weakest; empty for a bare lens
 * @param wantedStops how many stops were wanted
 */
public record NdStack(List<Double> densities, double wantedStops) {
    /**
     * Most filters stacked: reflections, vignetting and a matte box's stages end it there. Common practice, no source.
     */
    public static final int MOST_FILTERS = 3;

    /**
     * Density from which infrared may tint blacks on a body without a filter of its own against it, unless the neutral
     * filter cuts infrared itself. Common practice, no source: a threshold to warn at, not a limit of physics.
     */
    public static final double INFRARED_CARE_DENSITY = 1.2;

    /** Larger kits are refused, to bound the combinations tried. */
    private static final int LARGEST_KIT = 64;

    /** Densities are marked to 0.1 or 0.01; summing whole thousandths keeps 0.3 + 0.6 equal to 0.9. */
    private static final double PER_THOUSANDTH = 1000;

    private static final Comparator<NdStack> NEAREST_FIRST = Comparator.<NdStack>comparingLong(
                    stack -> Math.round(Math.abs(stack.residualStops()) * 1e9))
            .thenComparingInt(stack -> stack.densities().size())
            .thenComparing(Comparator.comparingDouble(NdStack::strongest).reversed())
            .thenComparing(Comparator.comparingDouble(NdStack::density));

    /**
     * Copies the list and checks it.
     *
     * @throws IllegalArgumentException if there are more than three filters, a density is not above 0, or the wanted
     *     stops are negative, infinite or not a number
     */
    public NdStack {
        densities = List.copyOf(densities);
        if (densities.size() > MOST_FILTERS) {
            throw new IllegalArgumentException(
                    "a stack holds at most " + MOST_FILTERS + " filters, was " + densities.size());
        }
        densities.forEach(density -> Require.positive("density of a filter", density, ""));
        Require.notNegative("wanted neutral density", wantedStops, "stops");
    }

    /**
     * The stack from a kit that comes nearest to a wanted number of stops.
     *
     * <p>All combinations of up to three filters are tried, each filter of the kit once; a kit that lists a density
     * twice has two of them. Of equally near stacks the one with fewer filters wins, then the one with the stronger
     * first filter. Check value: kit 0.3, 0.6, 0.9, 1.2 for 5 stops → 1.2 + 0.3, residual −0.017.
     *
     * @param kit densities of the filters at hand, up to 64 of them; may be empty
     * @param wantedStops stops wanted, 0 or above
     * @return the nearest stack, an empty one if no filter comes nearer
     * @throws IllegalArgumentException if the kit is too large, a density is not above 0, or the wanted stops are
     *     negative, infinite or not a number
     */
    public static NdStack choose(List<Double> kit, double wantedStops) {
        if (kit.size() > LARGEST_KIT) {
            throw new IllegalArgumentException(
                    "a kit holds at most " + LARGEST_KIT + " neutral filters, was " + kit.size());
        }
        kit.forEach(density -> Require.positive("density of a filter", density, ""));
        List<Double> strongestFirst =
                kit.stream().sorted(Comparator.reverseOrder()).toList();
        NdStack bare = new NdStack(List.of(), wantedStops);
        return best(bare, strongestFirst, 0, bare);
    }

    private static NdStack best(NdStack soFar, List<Double> kit, int from, NdStack best) {
        if (soFar.densities().size() == MOST_FILTERS) {
            return best;
        }
        NdStack nearest = best;
        for (int i = from; i < kit.size(); i++) {
            List<Double> more = new ArrayList<>(soFar.densities());
            more.add(kit.get(i));
            NdStack stack = new NdStack(more, soFar.wantedStops());
            nearest = NEAREST_FIRST.compare(stack, nearest) < 0 ? stack : nearest;
            nearest = best(stack, kit, i + 1, nearest);
        }
        return nearest;
    }

    /**
     * Density of the whole stack.
     *
     * <p>Densities add. Check value: 0.6 and 0.3 → 0.9.
     *
     * @return optical density, 0 for a bare lens
     */
    public double density() {
        long thousandths = 0;
        for (double density : densities) {
            thousandths += Math.round(density * PER_THOUSANDTH);
        }
        return thousandths / PER_THOUSANDTH;
    }

    /**
     * Stops that the whole stack takes.
     *
     * <p>density / log₁₀ 2. Check value: 0.9 → 2.989735.
     *
     * @return stops, 0 for a bare lens
     */
    public double stops() {
        return Light.stopsOfDensity(density());
    }

    /**
     * How far the stack misses what was wanted.
     *
     * <p>{@link #stops} − wanted. Check value: 0.6 for 2 stops → −0.0068.
     *
     * @return stops; positive where the stack takes too much light
     */
    public double residualStops() {
        return stops() - wantedStops;
    }

    /**
     * Whether the stack is so dense that infrared must be thought of.
     *
     * @return true from {@link #INFRARED_CARE_DENSITY} on
     */
    public boolean asksForInfraredCare() {
        return density() >= INFRARED_CARE_DENSITY;
    }

    private double strongest() {
        return densities.isEmpty() ? 0 : densities.get(0);
    }
}
