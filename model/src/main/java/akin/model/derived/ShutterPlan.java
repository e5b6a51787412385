package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.gear.ShutterMenu;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Shutter;
import akin.model.rig.Match;
import akin.model.rig.Rig;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import akin.model.timing.ScreenRefresh;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * Looks through the shutter menus of a rig for settings that stand together: no flicker under the light and no bar on the
 * screens that are planned, blur alike within the tolerance, near a half turn, and as little as possible changed, in this order.
 */
public final class ShutterPlan {

    private static final String SHUTTER = "shutter";
    /** How much further a setting of the other kind (an angle for a time) must be to lose: people stay with what they know. */
    private static final double OTHER_KIND = 0.02;
    /** A limit met to within this part of itself is met: the same times reached by other roads of rounding. */
    private static final double ROUNDING = 1e-9;

    private final Rig rig;
    private final Seat hero;
    private final List<Seat> others;
    private final double blurLimit;
    private final Tolerances limits;

    /** A setting of one unit's menu, with what it does. */
    private record Choice(Shutter setting, double seconds, boolean flickers, boolean current) {}

    /** A unit with a planned shutter, and all settings that come into question for it. */
    private record Seat(Unit unit, Shutter planned, boolean deliberate, List<Choice> choices) {}

    /** A choice for one unit, with how well it stands. Lower is better, from the first number on. */
    private record Rated(Choice choice, int flickers, int offTurn, int apart, double distance) {
        static final Comparator<Rated> BEST = Comparator.comparingInt(Rated::flickers)
                .thenComparingInt(Rated::offTurn)
                .thenComparingInt(Rated::apart)
                .thenComparingDouble(Rated::distance);
    }

    private ShutterPlan(Rig rig, Seat hero, List<Seat> others) {
        this.rig = rig;
        this.hero = hero;
        this.others = others;
        Match match = rig.match();
        this.blurLimit = match.tolerances().of(Tolerance.BLUR) * (1 - ROUNDING);
        this.limits = match.tolerances();
    }

    /**
     * Fixes of a unit whose blur differs from the hero's: its own menu's setting next to the hero's ({@code set-shutter}), and
     * settings for several units ({@code set-together}) where that is the only way, or the way without flicker; or
     * {@code no-setting}.
     */
    public static List<Fix> forBlur(Rig rig, Unit unit) {
        ShutterPlan plan = of(rig, unit);
        Seat seat = plan == null ? null : plan.seat(unit);
        if (plan == null || seat == null) {
            return List.of();
        }
        Choice heroNow = plan.now(plan.hero);
        double wanted = plan.wanted(heroNow, unit);
        Rated alone =
                plan.best(seat, wanted, Comparator.comparingInt(Rated::apart).thenComparing(Rated.BEST));
        Choice own = alone == null || alone.apart() > 0 ? null : alone.choice();
        List<Fix> fixes = new ArrayList<>();
        Map<String, Shutter> joint = plan.joint(heroNow.seconds(), false);
        if (plan.alike(joint, unit) && (own == null || own.flickers() || heroNow.flickers())) {
            fixes.addAll(together(joint, unit, wanted));
        }
        if (own != null && (fixes.isEmpty() || !joint.equals(Map.of(unit.name(), own.setting())))) {
            fixes.add(set(unit, own.setting(), wanted));
        }
        return fixes.isEmpty() ? List.of(Fix.advise("no-setting")) : List.copyOf(fixes);
    }

    /**
     * Fixes of a unit that flickers: settings for all units together ({@code set-together}) or for this one
     * ({@code set-shutter}) from their own menus; or {@code no-safe-setting}. Where the menu is not known, {@code safe-time}.
     */
    public static List<Fix> forFlicker(Rig rig, Unit unit) {
        ShutterPlan plan = of(rig, unit);
        Seat seat = plan == null ? null : plan.seat(unit);
        if (plan == null || seat == null) {
            return List.of(Fix.advise("no-safe-setting"));
        }
        double planned = seconds(seat);
        if (unit.body().shutter() == null) {
            return plan.safeTime(seat);
        }
        Rated alone = plan.best(seat, planned, Rated.BEST);
        if (alone == null || alone.flickers() > 0) {
            return List.of(Fix.advise("no-safe-setting"));
        }
        List<Fix> fixes = new ArrayList<>();
        Map<String, Shutter> joint = plan.joint(seconds(plan.hero), false);
        if (joint.containsKey(unit.name())) {
            fixes.addAll(together(joint, unit, planned));
        }
        Shutter setting = alone.choice().setting();
        if (!joint.equals(Map.of(unit.name(), setting))) {
            fixes.add(set(unit, setting, planned));
        }
        return List.copyOf(fixes);
    }

    /**
     * One fix, keyed {@code set-shutter}, of a unit whose planned setting cannot be set: the offered setting that comes
     * nearest to it, or to a half turn where the planned one outlasts the frame. Of those as near to the hero's blur as the
     * tolerance asks, one without flicker. None when the menu is not known or has nothing short enough.
     */
    public static List<Fix> forMenu(Rig rig, Unit unit) {
        ShutterPlan plan = of(rig, unit);
        Seat seat = plan == null ? null : plan.seat(unit);
        if (plan == null || seat == null || unit.body().shutter() == null) {
            return List.of();
        }
        BigFraction planned = seat.planned().seconds(unit.rate());
        boolean tooLong = planned.compareTo(unit.rate().frameSeconds()) > 0;
        double wanted = (tooLong ? halfTurn(unit) : planned).doubleValue();
        Rated best =
                plan.best(seat, wanted, Comparator.comparingInt(Rated::apart).thenComparing(Rated.BEST));
        return best == null ? List.of() : List.of(set(unit, best.choice().setting(), wanted));
    }

    /**
     * Fixes of a unit far from a half turn: {@code set-shutter}, or {@code set-together} where the hero takes others along.
     * None when its menu has nothing nearer.
     */
    public static List<Fix> forHalfTurn(Rig rig, Unit unit) {
        ShutterPlan plan = of(rig, unit);
        Seat seat = plan == null ? null : plan.seat(unit);
        if (plan == null || seat == null) {
            return List.of();
        }
        Unit heroUnit = plan.hero.unit();
        double ofHero = seconds(plan.hero);
        boolean heroStays = plan.hero.deliberate() || plan.nearHalfTurn(heroUnit, ofHero);
        Map<String, Shutter> joint =
                plan.joint(heroStays ? ofHero : halfTurn(heroUnit).doubleValue(), true);
        Shutter moved = joint.get(unit.name());
        return moved != null
                        && plan.nearHalfTurn(unit, moved.seconds(unit.rate()).doubleValue())
                ? together(joint, unit, halfTurn(unit).doubleValue())
                : List.of();
    }

    /**
     * The offered setting at which a unit off speed has the hero's blur per projected frame; a fix without edits, keyed
     * {@code same-blur}. None when the hero's shutter or the unit's menu is not known.
     */
    public static List<Fix> sameBlur(Rig rig, Unit unit) {
        ShutterMenu menu = unit.body().shutter();
        Unit hero = heroOf(rig);
        Shutter ofHero = hero.shutter();
        if (menu == null || ofHero == null || unit.hero()) {
            return List.of();
        }
        BigFraction wanted = BlurGap.wanted(rig.production(), hero, ofHero.seconds(hero.rate()), unit);
        return menu.nearest(wanted, unit.rate()).stream()
                .map(setting -> Fix.advise("same-blur")
                        .with("setting", null, setting)
                        .with("angle", null, setting.degrees(unit.rate()), "°")
                        .with("to", null, hero.name()))
                .toList();
    }

    /** The plan as it concerns one unit; null when that has no shutter planned. Without a hero's shutter it stands alone. */
    private static @Nullable ShutterPlan of(Rig rig, Unit unitConcerned) {
        Unit heroUnit = heroOf(rig);
        Set<BigFraction> points = points(rig, heroUnit);
        Seat hero = sit(rig, heroUnit, points);
        if (hero == null) {
            Seat alone = sit(rig, unitConcerned, points);
            return alone == null ? null : new ShutterPlan(rig, alone, List.of());
        }
        List<Seat> others = rig.units().stream()
                .filter(unit -> !unit.hero())
                .map(unit -> sit(rig, unit, points))
                .filter(Objects::nonNull)
                .toList();
        return new ShutterPlan(rig, hero, others);
    }

    private static Unit heroOf(Rig rig) {
        return rig.units().stream().filter(Unit::hero).findFirst().orElseThrow();
    }

    /** Exposure times near which settings are looked for: what is planned, what lists offer, half a turn. */
    private static Set<BigFraction> points(Rig rig, Unit hero) {
        Set<BigFraction> points = new LinkedHashSet<>();
        points.add(halfTurn(hero));
        for (Unit unit : rig.units()) {
            Shutter planned = unit.shutter();
            if (planned != null) {
                points.add(planned.seconds(unit.rate()));
            }
            ShutterMenu menu = unit.body().shutter();
            if (menu != null) {
                menu.listed(unit.rate()).forEach(setting -> points.add(setting.seconds(unit.rate())));
            }
        }
        return points;
    }

    private static @Nullable Seat sit(Rig rig, Unit unit, Set<BigFraction> points) {
        Shutter planned = unit.shutter();
        if (planned == null) {
            return null;
        }
        List<Beat> beats = Beat.of(rig, unit);
        Tolerances limits = rig.match().tolerances();
        ShutterMenu menu = unit.body().shutter();
        Set<Shutter> settings = new LinkedHashSet<>();
        if (menu == null || menu.offers(planned)) {
            settings.add(planned);
        }
        if (menu != null) {
            settings.addAll(menu.listed(unit.rate()));
            Unit hero = heroOf(rig);
            for (BigFraction point : points) {
                BigFraction wanted = unit.hero() ? point : BlurGap.wanted(rig.production(), hero, point, unit);
                for (BigFraction near : aroundPulses(wanted, beats)) {
                    settings.addAll(menu.around(near, unit.rate()));
                }
            }
        }
        List<Choice> choices = settings.stream()
                .map(setting -> {
                    BigFraction seconds = setting.seconds(unit.rate());
                    boolean flickers = beats.stream().anyMatch(beat -> beat.shows(seconds, limits));
                    return new Choice(setting, seconds.doubleValue(), flickers, setting.equals(planned));
                })
                .toList();
        return new Seat(unit, planned, unit.intends(SHUTTER), choices);
    }

    /** A time, and the whole pulses and refreshes just below and above it. */
    private static List<BigFraction> aroundPulses(BigFraction seconds, List<Beat> beats) {
        List<BigFraction> around = new ArrayList<>(List.of(seconds));
        for (Beat beat : beats) {
            BigFraction pulse = beat.hertz().reciprocal();
            BigFraction safe = ScreenRefresh.nearestCleanTime(seconds, beat.hertz());
            around.add(safe);
            around.add(safe.add(pulse));
            if (safe.compareTo(pulse) > 0) {
                around.add(safe.subtract(pulse));
            }
        }
        return around;
    }

    /** The whole number of pulses nearest to what is planned, for a body of which the menu is not known. */
    private List<Fix> safeTime(Seat seat) {
        FrameRate rate = seat.unit().rate();
        List<Beat> beats = Beat.of(rig, seat.unit());
        BigFraction planned = seat.planned().seconds(rate);
        return beats.stream()
                .flatMap(beat -> aroundPulses(planned, List.of(beat)).stream().skip(1))
                .filter(seconds -> seconds.compareTo(rate.frameSeconds()) <= 0)
                .filter(seconds -> beats.stream().noneMatch(beat -> beat.shows(seconds, limits)))
                .min(Comparator.comparingDouble(seconds -> percent(seconds.doubleValue(), planned.doubleValue())))
                .map(seconds -> Fix.advise("safe-time")
                        .with("time", null, seconds.doubleValue() * 1000, "ms")
                        .with("angle", null, new Shutter.Time(seconds).degrees(rate), "°"))
                .map(List::of)
                .orElseGet(() -> List.of(Fix.advise("no-safe-setting")));
    }

    private static BigFraction halfTurn(Unit unit) {
        return unit.rate().frameSeconds().divide(2);
    }

    private @Nullable Seat seat(Unit unit) {
        if (hero.unit().name().equals(unit.name())) {
            return hero;
        }
        return others.stream()
                .filter(seat -> seat.unit().name().equals(unit.name()))
                .findFirst()
                .orElse(null);
    }

    private boolean leads(Seat seat) {
        return seat.unit().name().equals(hero.unit().name());
    }

    private static double seconds(Seat seat) {
        return seat.planned().seconds(seat.unit().rate()).doubleValue();
    }

    /** The planned setting, whether or not the menu offers it. */
    private Choice now(Seat seat) {
        BigFraction planned = seat.planned().seconds(seat.unit().rate());
        boolean flickers = Beat.of(rig, seat.unit()).stream().anyMatch(beat -> beat.shows(planned, limits));
        return new Choice(seat.planned(), planned.doubleValue(), flickers, true);
    }

    /** The exposure time at which a unit blurs as the hero does with this choice. */
    private double wanted(Choice ofHero, Unit unit) {
        return BlurGap.wanted(
                        rig.production(),
                        hero.unit(),
                        ofHero.setting().seconds(hero.unit().rate()),
                        unit)
                .doubleValue();
    }

    private @Nullable Rated best(Seat seat, double wanted, Comparator<Rated> order) {
        double alike = leads(seat) || seat.deliberate() ? wanted : wanted(now(hero), seat.unit());
        return rated(seat, wanted, alike, false, false, order);
    }

    /** The best choice of a unit; a setting that stays alike enough is not changed where the unit {@code stays}. */
    private @Nullable Rated rated(
            Seat seat, double wanted, double alike, boolean stays, boolean mendTurn, Comparator<Rated> order) {
        Rated best = null;
        for (Choice choice : seat.choices()) {
            boolean apart = !leads(seat) && !seat.deliberate() && percent(choice.seconds(), alike) > blurLimit;
            boolean offTurn = !seat.deliberate()
                    && !nearHalfTurn(seat.unit(), choice.seconds())
                    && (mendTurn || nearHalfTurn(seat.unit(), seconds(seat)));
            boolean otherKind =
                    !choice.setting().getClass().equals(seat.planned().getClass());
            double distance = Math.abs(Math.log(choice.seconds() / wanted)) + (otherKind ? OTHER_KIND : 0);
            Rated rated = new Rated(
                    choice,
                    choice.flickers() ? 1 : 0,
                    offTurn ? 1 : 0,
                    apart ? 1 : 0,
                    stays && choice.current() && !apart ? 0 : distance);
            if (best == null || order.compare(rated, best) < 0) {
                best = rated;
            }
        }
        return best;
    }

    /** The best settings for all units, by unit, of those that change; the hero stays as near as can be to a time. */
    private Map<String, Shutter> joint(double heroWanted, boolean mendTurn) {
        Map<String, Shutter> best = Map.of();
        Rated bestTotal = null;
        for (Choice ofHero : hero.choices()) {
            Rated own = rated(
                    new Seat(hero.unit(), hero.planned(), hero.deliberate(), List.of(ofHero)),
                    heroWanted,
                    heroWanted,
                    false,
                    mendTurn,
                    Rated.BEST);
            if (own == null) {
                continue;
            }
            int flickers = own.flickers();
            int offTurn = own.offTurn();
            int apart = 0;
            double distance = own.distance();
            Map<String, Shutter> changed = new LinkedHashMap<>();
            if (!ofHero.current()) {
                changed.put(hero.unit().name(), ofHero.setting());
            }
            for (Seat seat : others) {
                double alike = seat.deliberate() ? seconds(seat) : wanted(ofHero, seat.unit());
                Rated other = rated(seat, alike, alike, true, mendTurn, Rated.BEST);
                if (other == null) {
                    apart++;
                    continue;
                }
                flickers += other.flickers();
                offTurn += other.offTurn();
                apart += other.apart();
                distance += other.distance();
                if (!other.choice().current()) {
                    changed.put(seat.unit().name(), other.choice().setting());
                }
            }
            Rated total = new Rated(ofHero, flickers, offTurn, apart, distance);
            if (bestTotal == null || Rated.BEST.compare(total, bestTotal) < 0) {
                bestTotal = total;
                best = changed;
            }
        }
        return best;
    }

    private boolean alike(Map<String, Shutter> joint, Unit unit) {
        Shutter ofHero = joint.getOrDefault(hero.unit().name(), hero.planned());
        Shutter ofUnit = joint.getOrDefault(unit.name(), Objects.requireNonNull(unit.shutter()));
        double wanted = BlurGap.wanted(
                        rig.production(),
                        hero.unit(),
                        ofHero.seconds(hero.unit().rate()),
                        unit)
                .doubleValue();
        return percent(ofUnit.seconds(unit.rate()).doubleValue(), wanted) <= blurLimit;
    }

    private boolean nearHalfTurn(Unit unit, double seconds) {
        long degrees = Math.round(seconds * unit.rate().perSecond() * 360);
        return degrees >= rig.match().tolerances().of(Tolerance.HALF_TURN_FROM)
                && degrees <= rig.match().tolerances().of(Tolerance.HALF_TURN_TO);
    }

    private static double percent(double a, double b) {
        return (Math.max(a, b) / Math.min(a, b) - 1) * 100;
    }

    private static Fix set(Unit unit, Shutter setting, double wanted) {
        double seconds = setting.seconds(unit.rate()).doubleValue();
        return Fix.set("set-shutter", unit.path(SHUTTER), setting)
                .with("setting", null, setting)
                .with("time", null, seconds * 1000, "ms")
                .with("left", null, percent(seconds, wanted), "%");
    }

    /** Settings for several units as one fix; for one unit alone it is worded as that unit's, held against a wanted time. */
    private static List<Fix> together(Map<String, Shutter> joint, Unit unit, double wanted) {
        Shutter only = joint.get(unit.name());
        if (joint.isEmpty()) {
            return List.of();
        }
        if (joint.size() == 1 && only != null) {
            return List.of(set(unit, only, wanted));
        }
        Fix fix = null;
        StringBuilder words = new StringBuilder();
        for (Map.Entry<String, Shutter> entry : joint.entrySet()) {
            String path = "units." + entry.getKey() + "." + SHUTTER;
            fix = fix == null ? Fix.set("set-together", path, entry.getValue()) : fix.and(path, entry.getValue());
            words.append(words.isEmpty() ? "" : ", ")
                    .append(entry.getKey())
                    .append(" to ")
                    .append(entry.getValue());
        }
        return List.of(Objects.requireNonNull(fix).with("settings", null, words));
    }
}
