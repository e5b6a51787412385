package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.exposure.Light;
import akin.model.finding.Fix;
import akin.model.gear.IsoMenu;
import akin.model.gear.Lens;
import akin.model.quantity.Aperture;
import akin.model.quantity.Iso;
import akin.model.quantity.Length;
import akin.model.quantity.NeutralDensity;
import akin.model.rig.FittedLens;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Ways to change how bright a unit records, in what its menus and the van offer: neutral density first, since it changes
 * nothing else; then ISO, never under the floor; the iris only while depth stays matched. Never the shutter: it changes
 * blur.
 */
public final class LightFix {

    private static final int MOST_FIXES = 3;

    /** Harm of a filter more, in stops of noise or depth that one would trade for it. Common practice, no source. */
    private static final double FILTER = 0.05;

    /** Harm of infra-red in the blacks, or of highlights that then clip: more than any change of ISO. */
    private static final double SPOILT = 100;

    private final Rig rig;
    private final Unit unit;
    private final CollectedLight light;
    private final List<NeutralDensity> spare;

    private LightFix(Rig rig, Unit unit, CollectedLight light) {
        this.rig = rig;
        this.unit = unit;
        this.light = light;
        this.spare = NdPlan.spare(rig, unit);
    }

    private record Option(Fix fix, double harm) {}

    /**
     * Fixes that record a unit as bright as the hero, least harmful first; where nothing at hand does, what to hire.
     *
     * @param rig the whole rig, for what other units leave on the van
     * @param unit the unit to change
     * @param light the light it collects
     * @param hero the light the hero collects
     */
    public static List<Fix> toMatch(Rig rig, Unit unit, CollectedLight light, CollectedLight hero) {
        return toDarken(rig, unit, light, light.stopsFrom(hero));
    }

    /**
     * Fixes that record a unit darker by so many stops, least harmful first; where nothing at hand does, what to hire.
     *
     * @param brighter stops that it is too bright; negative when it is too dark
     */
    static List<Fix> toDarken(Rig rig, Unit unit, CollectedLight light, double brighter) {
        LightFix fixes = new LightFix(rig, unit, light);
        List<Option> options = new ArrayList<>();
        fixes.density(brighter).ifPresent(options::add);
        fixes.iso(brighter).ifPresent(options::add);
        fixes.iris(brighter).ifPresent(options::add);
        if (options.isEmpty()) {
            fixes.isoAndDensity(brighter).ifPresent(options::add);
        }
        if (options.isEmpty()) {
            double wanted = light.ndStops() + brighter;
            return wanted > 0
                    ? List.of(Fix.advise("hire-density").with("density", null, toHire(Light.densityOfStops(wanted))))
                    : List.of(Fix.advise("more-light").with("short", null, Math.abs(brighter), "stops"));
        }
        return options.stream()
                .sorted(Comparator.comparingDouble(Option::harm))
                .limit(MOST_FIXES)
                .map(Option::fix)
                .toList();
    }

    /**
     * A fix that sets another ISO and pays for it with neutral density, so that the unit stays as bright as it is; empty
     * where no density at hand pays for it.
     */
    static Optional<Fix> setIso(Rig rig, Unit unit, Iso to, String key) {
        List<NeutralDensity> filters = unit.filters();
        if (filters == null) {
            return Optional.empty();
        }
        double more = to.stopsFrom(requireNonNull(unit.iso()));
        double wanted = CollectedLight.stops(filters) + more;
        NdChoice choice = NdChoice.nearest(unit, NdPlan.spare(rig, unit), wanted);
        return Math.abs(choice.stops() - wanted) > rig.match().tolerances().of(Tolerance.EXPOSURE)
                ? Optional.empty()
                : Optional.of(Fix.set(key, unit.path("iso"), to)
                        .and(unit.path("filters"), choice.written())
                        .with("to", null, to)
                        .with("filters", null, choice.spoken()));
    }

    /** A fix that sets another ISO and leaves it to the crew to pay for it. */
    static Fix setIsoUnpaid(Unit unit, Iso to, String key) {
        double more = to.stopsFrom(requireNonNull(unit.iso()));
        return Fix.set(key, unit.path("iso"), to)
                .with("to", null, to)
                .with("change", null, Math.abs(more), "stops")
                .with("way", null, more > 0 ? "less" : "more");
    }

    private Optional<Option> density(double brighter) {
        double wanted = light.ndStops() + brighter;
        NdChoice choice = NdChoice.nearest(unit, spare, wanted);
        double left = wanted - choice.stops();
        if (!within(left) || choice.stops() == light.ndStops()) {
            return Optional.empty();
        }
        Fix fix = Fix.set("set-density", unit.path("filters"), choice.written())
                .with("filters", null, choice.spoken())
                .with("left", null, Math.abs(left), "stops");
        return Optional.of(new Option(fix, harm(choice)));
    }

    private Optional<Option> iso(double brighter) {
        IsoMenu menu = unit.body().iso();
        if (menu == null) {
            return Optional.empty();
        }
        double wanted = Light.isoBrighterBy(light.iso().value(), -brighter);
        return menu.nearest(wanted)
                .filter(this::overFloor)
                .filter(iso -> !iso.equals(light.iso()))
                .filter(iso -> within(brighter + iso.stopsFrom(light.iso())))
                .map(iso -> new Option(
                        Fix.set("set-iso", unit.path("iso"), iso)
                                .with("to", null, iso)
                                .with("left", null, Math.abs(brighter + iso.stopsFrom(light.iso())), "stops"),
                        harm(iso)));
    }

    private Optional<Option> isoAndDensity(double brighter) {
        IsoMenu menu = unit.body().iso();
        if (menu == null) {
            return Optional.empty();
        }
        List<Option> options = new ArrayList<>();
        for (Iso iso : menu.offered()) {
            if (!overFloor(iso) || iso.equals(light.iso())) {
                continue;
            }
            double wanted = light.ndStops() + brighter + iso.stopsFrom(light.iso());
            if (!within(Math.min(0, wanted))) {
                continue;
            }
            NdChoice choice = NdChoice.nearest(unit, spare, wanted);
            if (within(wanted - choice.stops())) {
                options.add(new Option(
                        Fix.set("set-both", unit.path("iso"), iso)
                                .and(unit.path("filters"), choice.written())
                                .with("to", null, iso)
                                .with("filters", null, choice.spoken())
                                .with("left", null, Math.abs(wanted - choice.stops()), "stops"),
                        harm(iso) + harm(choice)));
            }
        }
        return options.stream().min(Comparator.comparingDouble(Option::harm));
    }

    private Optional<Option> iris(double brighter) {
        FittedLens fitted = unit.lens();
        if (fitted == null || fitted.lens().iris() == Lens.Iris.FIXED) {
            return Optional.empty();
        }
        PhotometricStop stop = light.stop();
        double ring = stop.setting().number() * Light.ratio(brighter / 2);
        double mark = fitted.lens().iris() == Lens.Iris.STEPLESS
                ? Math.round(ring * 10) / 10.0
                : Aperture.nearestThirdStopMark(ring);
        if (!reaches(fitted.lens(), stop.setting().kind(), mark)) {
            return Optional.empty();
        }
        Aperture to = new Aperture(mark, stop.setting().kind());
        double left = brighter - to.stopsFrom(stop.setting());
        if (!within(left) || !keepsDepth(to)) {
            return Optional.empty();
        }
        return Optional.of(new Option(
                Fix.set("set-stop", unit.path("lens.stop"), to)
                        .with("to", null, to)
                        .with("left", null, Math.abs(left), "stops"),
                Math.abs(to.stopsFrom(stop.setting()))));
    }

    private static boolean reaches(Lens lens, Aperture.Kind kind, double number) {
        boolean photometric = kind == Aperture.Kind.PHOTOMETRIC;
        Aperture open = photometric ? lens.openT() : lens.open();
        Aperture closed = photometric ? lens.closedT() : lens.closed();
        return open != null && closed != null && number >= open.number() && number <= closed.number();
    }

    /** True when the entrance pupil at another stop is still as wide as the hero's, within the tolerance of depth. */
    private boolean keepsDepth(Aperture stop) {
        Unit hero = rig.units().stream().filter(Unit::hero).findFirst().orElseThrow();
        Double mine = pupil(unit, stop);
        Double other = hero.lens() == null ? null : pupil(hero, hero.lens().stop());
        return mine != null
                && other != null
                && Math.abs(2 * Light.stops(mine / other))
                        <= rig.match().tolerances().of(Tolerance.DEPTH);
    }

    /** Focal length over f number; the adapter's factor is in both and cancels. Without an f number, over the T number. */
    private static @Nullable Double pupil(Unit unit, @Nullable Aperture stop) {
        FittedLens fitted = unit.lens();
        Length focal = fitted == null ? null : fitted.focal();
        if (fitted == null || focal == null || stop == null) {
            return null;
        }
        Double loss = PhotometricStop.loss(fitted.lens());
        double number = stop.kind() == Aperture.Kind.PHOTOMETRIC && loss != null ? stop.number() / loss : stop.number();
        return focal.millimetres() / number;
    }

    private boolean overFloor(Iso iso) {
        Iso floor = IsoFloor.known(unit);
        return floor == null || iso.value() >= floor.value();
    }

    private boolean within(double left) {
        return Math.abs(left) <= rig.match().tolerances().of(Tolerance.EXPOSURE);
    }

    private double harm(NdChoice choice) {
        boolean infrared = !Boolean.TRUE.equals(unit.body().irCut())
                && choice.density() >= rig.match().tolerances().of(Tolerance.INFRARED_ND);
        int more = choice.filters().size()
                - (unit.filters() == null ? 0 : unit.filters().size());
        return FILTER * Math.max(0, more) + (infrared ? SPOILT : 0);
    }

    private double harm(Iso iso) {
        double moved = Math.abs(iso.stopsFrom(light.iso()));
        Double headroom = ToneRange.headroomAt(unit, iso);
        boolean clips = headroom != null && headroom < rig.match().tolerances().of(Tolerance.HIGHLIGHTS);
        return moved + (clips ? SPOILT : 0);
    }

    private static Object toHire(double density) {
        return density > NeutralDensity.DENSEST
                ? "more than ND " + Math.round(NeutralDensity.DENSEST)
                : new NeutralDensity(Math.round(density * 100) / 100.0);
    }
}
