package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.gear.Mode;
import akin.model.quantity.FrameRate;
import akin.model.rig.Production;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which rates the units of a rig are to record at, together. */
public final class RatePlan {

    private RatePlan() {}

    /** The key of a unit's intent under which a deliberate off-speed rate is explained. */
    private static final String RATE = "rate";

    /** True when a unit runs off speed and the rig file says why. */
    public static boolean offSpeed(Production production, Unit unit) {
        return unit.intends(RATE) && !unit.rate().equals(production.rate());
    }

    /** True when two units record different rates and neither does so on purpose. */
    public static boolean apart(Production production, Unit hero, Unit other) {
        return !hero.rate().equals(other.rate()) && !offSpeed(production, hero) && !offSpeed(production, other);
    }

    /**
     * True when a unit leaves the production's rate without a reason and no comparison with another unit says so: all
     * that record for the same cut leave it together, or the hero runs off speed.
     */
    public static boolean strays(Rig rig, Unit unit) {
        Production production = rig.production();
        if (unit.rate().equals(production.rate()) || offSpeed(production, unit)) {
            return false;
        }
        return unit.hero()
                ? rig.units().stream().noneMatch(other -> apart(production, unit, other))
                : rig.units().stream().anyMatch(hero -> hero.hero() && offSpeed(production, hero));
    }

    /**
     * The setting to look at first when two units differ: of the unit that leaves the production's rate, else of the other.
     */
    public static String cause(Production production, Unit hero, Unit other) {
        boolean heroStrays =
                !hero.rate().equals(production.rate()) && other.rate().equals(production.rate());
        return (heroStrays ? hero : other).path(RATE);
    }

    /**
     * One fix, keyed {@code set-rate}: brings every unit that is not off speed on purpose to the production's rate, or, where
     * not all of them offer it, production and units to the nearest rate that all offer. None when no rate is offered by all.
     */
    public static List<Fix> together(Rig rig) {
        Production production = rig.production();
        List<Unit> units = inTime(rig);
        FrameRate agreed = nearest(production.rate(), offers(units)).orElse(null);
        if (agreed == null) {
            return List.of();
        }
        List<Unit> moved =
                units.stream().filter(unit -> !unit.rate().equals(agreed)).toList();
        return fix(production, moved, agreed).stream().toList();
    }

    /** One fix, keyed {@code set-rate}, that brings the whole production to a rate; none where a unit does not offer it. */
    public static List<Fix> bring(Rig rig, FrameRate rate) {
        List<Unit> units = inTime(rig);
        boolean possible = offers(units).stream().allMatch(offered -> offered.offers(rate));
        // Units that follow the production's rate need no word, but the plan does not say which do.
        return possible ? fix(rig.production(), units, rate).stream().toList() : List.of();
    }

    /**
     * Fixes of a unit whose planned rate is not passed: another mode of its body that offers it ({@code other-mode}), recording
     * inside ({@code record-inside}), the nearest rate that everything passes ({@code nearest-rate}).
     */
    public static List<Fix> offered(Unit unit, OfferedRates offered) {
        List<Fix> fixes = new ArrayList<>();
        boolean byMode = offered.refusal().map(OfferedRates.Link::mode).orElse(false);
        if (byMode && !unit.recording().external()) {
            unit.body().modes().values().stream()
                    .filter(mode -> mode.rates() != null && mode.rates().offers(unit.rate()))
                    .filter(mode -> unit.profile() == null
                            || mode.profiles() == null
                            || mode.profiles().contains(unit.profile().id()))
                    .map(Mode::id)
                    .sorted()
                    .map(mode -> Fix.set("other-mode", unit.path("mode"), mode).with("mode", null, mode))
                    .forEach(fixes::add);
        }
        if (!byMode) {
            fixes.add(Fix.advise("record-inside"));
        }
        offered.nearest(unit.rate())
                .map(rate -> Fix.set("nearest-rate", unit.path(RATE), rate).with("rate", null, rate.spoken()))
                .ifPresent(fixes::add);
        return List.copyOf(fixes);
    }

    /** The rate nearest to a wanted one that all of these offer: the wanted one itself where nothing is known. */
    static Optional<FrameRate> nearest(FrameRate wanted, List<OfferedRates> offers) {
        Stream<FrameRate> candidates = offers.stream().flatMap(offered -> offered.candidates(wanted).stream());
        return Stream.concat(Stream.of(wanted), candidates)
                .filter(rate -> offers.stream().allMatch(offered -> offered.offers(rate)))
                .min(OfferedRates.closestTo(wanted));
    }

    private static List<Unit> inTime(Rig rig) {
        return rig.units().stream()
                .filter(unit -> !offSpeed(rig.production(), unit))
                .toList();
    }

    private static List<OfferedRates> offers(List<Unit> units) {
        List<OfferedRates> offers = new ArrayList<>();
        for (Unit unit : units) {
            for (Object fact : OfferedRates.derive(unit)) {
                if (fact instanceof OfferedRates offered) {
                    offers.add(offered);
                }
            }
        }
        return offers;
    }

    private static Optional<Fix> fix(Production production, List<Unit> moved, FrameRate rate) {
        List<String> names = moved.stream().map(Unit::name).toList();
        List<String> paths = new ArrayList<>();
        if (!rate.equals(production.rate())) {
            paths.add("production.rate");
        }
        moved.forEach(unit -> paths.add(unit.path(RATE)));
        if (paths.isEmpty()) {
            return Optional.empty();
        }
        Fix fix = Fix.set("set-rate", paths.get(0), rate);
        for (String path : paths.subList(1, paths.size())) {
            fix = fix.and(path, rate);
        }
        return Optional.of(fix.with("rate", null, rate.spoken())
                .with("who", null, names.isEmpty() ? "the production" : String.join(", ", names)));
    }
}
