package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.exposure.Light;
import akin.model.exposure.NdStack;
import akin.model.finding.Fix;
import akin.model.gear.Profile;
import akin.model.quantity.Aperture;
import akin.model.quantity.Iso;
import akin.model.quantity.NeutralDensity;
import akin.model.rig.FittedLens;
import akin.model.rig.Kit;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Ways to give a unit the hero's depth of focus.
 *
 * @param matched the unit that is matched
 * @param own its depth as planned
 * @param heroUnit the hero
 * @param hero the hero's depth
 * @param tolerances how far apart they may be
 */
public record DepthFix(Unit matched, FocusDepth own, Unit heroUnit, FocusDepth hero, Tolerances tolerances) {

    private static final int TWELFTHS = 12;

    /** How far the entrance pupils are apart, in stops. */
    public double apart() {
        return Math.abs(own.stopsShallower(hero));
    }

    /** How far they may be. */
    public double tolerance() {
        return tolerances.of(Tolerance.DEPTH);
    }

    /** True when the unit's depth is the shallower one. */
    public boolean shallower() {
        return own.stopsShallower(hero) > 0;
    }

    /** The stop that the hero's depth asks for, as one writes it. */
    public String written() {
        return (stop(matched).kind() == Aperture.Kind.GEOMETRIC ? "f/" : "T")
                + String.format(Locale.ROOT, "%.1f", wanted());
    }

    /** The number to set on the unit's ring for the hero's depth, in the kind that is planned. */
    public double wanted() {
        return stop(matched).number() * own.fNumberFor(hero) / own.fNumber();
    }

    /** The setting that comes nearest to it. */
    public Aperture nearest() {
        return nearest(wanted());
    }

    private Aperture nearest(double number) {
        StopRange range = StopRange.of(matched);
        Aperture set = stop(matched);
        return range == null
                ? new Aperture(Math.max(0.5, Math.min(128, Math.round(number * 10) / 10.0)), set.kind())
                : range.nearest(number);
    }

    /** How far the entrance pupils then still are apart, in stops. */
    public double left() {
        return left(nearest());
    }

    private double left(Aperture stop) {
        return Math.abs(at(own, stop(matched), stop).stopsShallower(hero));
    }

    /** True when the nearest setting is within tolerance. */
    public boolean isReachable() {
        return left() <= tolerances.of(Tolerance.DEPTH);
    }

    /** Stop alone, and before it stop with filters or ISO so that exposure matches too. Keys: set-stop, set-stop-and-nd,
     * set-stop-and-iso. */
    public List<Fix> fixes(Kit kit) {
        if (!isReachable()) {
            return List.of();
        }
        Aperture stop = nearest();
        List<Fix> fixes = new ArrayList<>();
        paidBack(kit, stop).ifPresent(fixes::add);
        fixes.add(Fix.set("set-stop", matched.path("lens.stop"), stop)
                .with("stop", null, stop)
                .with("left", null, left(), "stops")
                .with("light", null, Math.abs(brighterBy(stop)), "stops")
                .with("more", null, brighterBy(stop) > 0 ? "more" : "less"));
        return fixes;
    }

    /**
     * Where the unit cannot get there: the unit at its end and the hero set to meet it, or the nearest and what is left.
     * Keys: move-hero, nearest-stop.
     */
    public List<Fix> compromises() {
        Aperture end = nearest();
        FocusDepth there = at(own, stop(matched), end);
        List<Fix> fixes = new ArrayList<>();
        StopRange heroRange = StopRange.of(heroUnit);
        Aperture heroStop = stop(heroUnit);
        if (heroRange != null) {
            Aperture met = heroRange.nearest(heroStop.number() * hero.fNumberFor(there) / hero.fNumber());
            double apart = Math.abs(there.stopsShallower(at(hero, heroStop, met)));
            if (apart <= tolerances.of(Tolerance.DEPTH)) {
                double light = met.stopsFrom(heroStop);
                fixes.add(Fix.set("move-hero", heroUnit.path("lens.stop"), met)
                        .and(matched.path("lens.stop"), end)
                        .with("hero-stop", null, met)
                        .with("stop", null, end)
                        .with("light", null, Math.abs(light), "stops")
                        .with("cost", null, light > 0 ? "costs" : "gains"));
            }
        }
        fixes.add(Fix.advise("nearest-stop").with("stop", null, end).with("left", null, left(), "stops"));
        return fixes;
    }

    private static Aperture stop(Unit unit) {
        FittedLens fitted = requireNonNull(unit.lens());
        return requireNonNull(fitted.stop());
    }

    private static FocusDepth at(FocusDepth depth, Aperture from, Aperture to) {
        return new FocusDepth(
                depth.unitName(),
                depth.focalMm(),
                depth.fNumber() * to.number() / from.number(),
                depth.basis(),
                depth.confusionMm());
    }

    /** Stops of light that another setting lets in more. */
    private double brighterBy(Aperture stop) {
        return stop(matched).stopsFrom(stop);
    }

    /** Settings of the ring within the tolerance, the exact one first: a twelfth of a stop is finer than any ring is read. */
    private List<Aperture> within() {
        List<Aperture> stops = new ArrayList<>();
        for (int step = 0; step <= TWELFTHS * tolerance(); step++) {
            for (int side : new int[] {-1, 1}) {
                Aperture stop = nearest(wanted() * Light.ratio(side * step / (2.0 * TWELFTHS)));
                if (left(stop) <= tolerance() && !stops.contains(stop)) {
                    stops.add(stop);
                }
            }
        }
        return stops;
    }

    /**
     * The stop with the filters, or the ISO and filters, that give the hero's exposure: filters alone where they can, at the
     * stop that is exact or else at one that is within the tolerance; otherwise the ISO nearest to the planned one that is
     * not under the profile's floor.
     */
    private Optional<Fix> paidBack(Kit kit, Aperture exact) {
        List<NeutralDensity> filters = matched.filters();
        if (filters == null) {
            return Optional.empty();
        }
        List<Double> pool = Stream.concat(
                        filters.stream(), kit.filters() == null ? Stream.of() : kit.filters().stream())
                .map(NeutralDensity::density)
                .filter(density -> density > 0)
                .limit(32)
                .toList();
        for (Aperture stop : within()) {
            Optional<List<NeutralDensity>> alone = stack(pool, wantedNd(filters, stop));
            if (alone.isPresent() && stop.equals(exact) && same(alone.get(), filters)) {
                return Optional.empty();
            }
            if (alone.isPresent()) {
                return Optional.of(described(
                        carrying(Fix.set("set-stop-and-nd", matched.path("lens.stop"), stop), filters, alone.get()),
                        stop,
                        alone.get()));
            }
        }
        Iso planned = matched.iso();
        if (planned == null) {
            return Optional.empty();
        }
        return usable(planned).stream()
                .flatMap(iso -> stack(pool, wantedNd(filters, exact) + iso.stopsFrom(planned)).stream()
                        .map(found -> described(
                                        carrying(
                                                Fix.set("set-stop-and-iso", matched.path("lens.stop"), exact)
                                                        .and(matched.path("iso"), iso),
                                                filters,
                                                found),
                                        exact,
                                        found)
                                .with("iso", null, iso)))
                .findFirst();
    }

    /** With other filters, where they are others. */
    private Fix carrying(Fix fix, List<NeutralDensity> now, List<NeutralDensity> then) {
        return same(then, now) ? fix : fix.and(matched.path("filters"), then);
    }

    private double wantedNd(List<NeutralDensity> filters, Aperture stop) {
        return filters.stream().mapToDouble(NeutralDensity::stops).sum() + brighterBy(stop) + brighterThanHero();
    }

    private static boolean same(List<NeutralDensity> a, List<NeutralDensity> b) {
        Comparator<NeutralDensity> order = Comparator.comparingDouble(NeutralDensity::density);
        return a.stream()
                .sorted(order)
                .toList()
                .equals(b.stream().filter(f -> f.density() > 0).sorted(order).toList());
    }

    private Fix described(Fix fix, Aperture stop, List<NeutralDensity> filters) {
        String written = filters.isEmpty()
                ? "no filter"
                : String.join(
                        " + ", filters.stream().map(NeutralDensity::toString).toList());
        return fix.with("stop", null, stop).with("filters", null, written).with("left", null, left(stop), "stops");
    }

    private Optional<List<NeutralDensity>> stack(List<Double> pool, double stops) {
        if (stops < -tolerances.of(Tolerance.EXPOSURE)) {
            return Optional.empty();
        }
        double wanted = Math.max(0, stops);
        NdStack stack = NdStack.choose(pool, wanted);
        return Math.abs(stack.stops() - stops) <= tolerances.of(Tolerance.EXPOSURE)
                ? Optional.of(
                        stack.densities().stream().map(NeutralDensity::new).toList())
                : Optional.empty();
    }

    private List<Iso> usable(Iso planned) {
        Profile profile = matched.profile();
        Iso floor = profile == null ? null : matched.mode().isoFloors().getOrDefault(profile.id(), profile.isoFloor());
        if (matched.body().iso() == null || floor == null) {
            return List.of();
        }
        return matched.body().iso().offered().stream()
                .filter(iso -> iso.value() >= floor.value() && !iso.equals(planned))
                .sorted(Comparator.<Iso>comparingDouble(iso -> Math.abs(iso.stopsFrom(planned)))
                        .thenComparing(Iso::value))
                .toList();
    }

    /** How much brighter than the hero the unit records as planned, in stops; 0 where that is not known. */
    private double brighterThanHero() {
        @Nullable Double a = collected(heroUnit);
        @Nullable Double b = collected(matched);
        return a == null || b == null ? 0 : b - a;
    }

    private static @Nullable Double collected(Unit unit) {
        return CollectedLight.derive(unit).get(0) instanceof CollectedLight light ? (Double) light.stops() : null;
    }
}
