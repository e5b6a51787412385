package akin.model.derived;

import akin.model.gear.Codec;
import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.gear.Profile;
import akin.model.gear.WhiteMenu;
import akin.model.quantity.Aperture;
import akin.model.quantity.ColourTemperature;
import akin.model.quantity.Iso;
import akin.model.quantity.Length;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.Shutter;
import akin.model.rig.FittedLens;
import akin.model.rig.Knob;
import akin.model.rig.Rig;
import akin.model.rig.Settings;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What a unit can be set to on its own gear and with what is on the van: for each {@link Knob} the settings that its menus, its
 * lens and the kit offer, with all the others as they are.
 */
public final class Room {

    /** Whole angles that a dial is tried at, beside what the hero's time and the lights ask for. */
    private static final List<Integer> DIALLED = List.of(45, 90, 144, 172, 180, 216, 270, 360);

    private final Rig rig;
    private final Unit hero;
    private final Unit unit;
    private final Set<Knob> keeps;
    private final StartingPlan matched;
    private final Function<Profile, Settings> profiled;
    private final Settings plan;

    /**
     * The room of a unit.
     *
     * @param rig the rig it is in
     * @param unit the unit as it is planned
     * @param keeps what stays as it is planned
     * @param matched settings that match the hero's, for any mode, profile and lens
     * @param profiled settings of the unit with another profile: encoding and gamut follow from it
     */
    public Room(Rig rig, Unit unit, Set<Knob> keeps, StartingPlan matched, Function<Profile, Settings> profiled) {
        this.rig = rig;
        this.hero = rig.units().stream().filter(Unit::hero).findFirst().orElseThrow();
        this.unit = unit;
        this.keeps = Set.copyOf(keeps);
        this.matched = matched;
        this.profiled = profiled;
        this.plan = Settings.of(unit);
    }

    /** How it is planned. */
    public Settings plan() {
        return plan;
    }

    /** How many plans there are: each setting with each other one, in each mode, profile and lens as many as it offers. */
    public long size() {
        long size = 0;
        for (Mode mode : modes()) {
            for (@Nullable Profile profile : profiles(mode)) {
                Settings based = with(plan, mode, profile);
                for (@Nullable Lens lens : lenses().stream().distinct().toList()) {
                    Settings fitted = lens == null ? based : lens(based, lens);
                    size += choices(Knob.CODEC, codecs(mode))
                            * choices(Knob.FOCAL, focals(fitted))
                            * choices(Knob.STOP, stops(fitted));
                }
            }
        }
        return size
                * choices(Knob.SHUTTER, shutters())
                * choices(Knob.ISO, isos())
                * choices(Knob.FILTERS, filters())
                * choices(Knob.WHITE, whites());
    }

    private long choices(Knob knob, List<?> offered) {
        return free(knob) ? Math.max(1, offered.size()) : 1;
    }

    /** True when a knob may be turned. */
    public boolean free(Knob knob) {
        return !knob.among(keeps);
    }

    /**
     * Starting points: the hero's picture as near as each mode, profile and lens comes to it, with what is kept as it is planned;
     * and the plan itself.
     */
    public List<Settings> starts() {
        Set<Settings> starts = new LinkedHashSet<>();
        starts.add(plan);
        for (Mode mode : modes()) {
            for (@Nullable Profile profile : profiles(mode)) {
                for (@Nullable Lens lens : lenses()) {
                    Settings like =
                            Settings.of(matched.unit(new StartingPlan.Choice(unit.body(), mode, profile, lens)));
                    starts.add(kept(like, mode, profile, lens));
                }
            }
        }
        return List.copyOf(starts);
    }

    /** Matched settings with what is kept put back. */
    private Settings kept(Settings like, Mode mode, @Nullable Profile profile, @Nullable Lens lens) {
        Settings based = with(plan, mode, profile);
        FittedLens planned = plan.lens();
        FittedLens found = like.lens();
        FittedLens fitted = planned == null || found == null || lens == null
                ? planned
                : new FittedLens(
                        lens,
                        free(Knob.FOCAL) || !lens.equals(planned.lens()) ? found.focal() : planned.focal(),
                        free(Knob.STOP) ? found.stop() : planned.stop(),
                        lens.equals(planned.lens()) ? planned.adapter() : found.adapter());
        return new Settings(
                based.mode(),
                based.profile(),
                based.encoding(),
                based.gamut(),
                based.codec(),
                fitted,
                reachable(Knob.SHUTTER, plan.shutter(), like.shutter(), shutters()),
                reachable(Knob.ISO, plan.iso(), like.iso(), isos()),
                free(Knob.FILTERS) && plan.filters() != null ? like.filters() : plan.filters(),
                reachable(Knob.WHITE, plan.white(), like.white(), whites()),
                plan.automatic());
    }

    /** A setting to start from where it may be turned and is one that the menu has; else the planned one. */
    private <T> @Nullable T reachable(Knob knob, @Nullable T planned, @Nullable T wanted, List<T> offered) {
        return free(knob) && wanted != null && offered.contains(wanted) ? wanted : planned;
    }

    private Settings with(Settings from, Mode mode, @Nullable Profile profile) {
        Settings based = profile == null || profile.equals(from.profile()) ? from : profiled.apply(profile);
        Codec codec = from.codec();
        boolean inside = !unit.recording().external();
        if (inside
                && codec != null
                && mode.codecs() != null
                && !mode.codecs().contains(codec.id())
                && free(Knob.CODEC)) {
            codec = codecs(mode).stream().findFirst().orElse(codec);
        }
        return new Settings(
                mode,
                based.profile(),
                based.encoding(),
                based.gamut(),
                codec,
                from.lens(),
                from.shutter(),
                from.iso(),
                from.filters(),
                from.white(),
                from.automatic());
    }

    /** Every way to turn one knob from here, in the order of menus; what is set now is left out, and one may be there twice. */
    public List<Settings> turns(Settings from, Knob knob) {
        return turned(from, knob).filter(settings -> !settings.equals(from)).toList();
    }

    private Stream<Settings> turned(Settings from, Knob knob) {
        if (!free(knob)) {
            return Stream.empty();
        }
        return switch (knob) {
            case MODE -> modes().stream().map(mode -> with(from, mode, from.profile()));
            case PROFILE ->
                profiles(from.mode()).stream()
                        .filter(profile -> profile != null)
                        .map(profile -> with(from, from.mode(), profile));
            case CODEC -> codecs(from.mode()).stream().map(codec -> codec(from, codec));
            case LENS -> Stream.empty();
            case LENS_USE -> lenses().stream().filter(lens -> lens != null).map(lens -> lens(from, lens));
            case FOCAL ->
                focals(from).stream()
                        .map(focal -> lens(
                                from, fitted -> new FittedLens(fitted.lens(), focal, fitted.stop(), fitted.adapter())));
            case STOP ->
                stops(from).stream()
                        .map(stop -> lens(
                                from, fitted -> new FittedLens(fitted.lens(), fitted.focal(), stop, fitted.adapter())));
            case SHUTTER -> shutters().stream().map(shutter -> shutter(from, shutter));
            case ISO -> isos().stream().map(iso -> iso(from, iso));
            case FILTERS -> filters().stream().map(filters -> filters(from, filters));
            case WHITE -> whites().stream().map(white -> white(from, white));
        };
    }

    /**
     * Ways to turn one of stop, shutter, ISO and filters, and ISO or filters with it so that the light is the hero's. What is set
     * now may be among them, and one may be there twice.
     */
    public List<Settings> balanced(Settings from) {
        List<Settings> found = new ArrayList<>();
        Double wanted = light(Settings.of(hero), hero);
        if (wanted == null) {
            return found;
        }
        for (Knob first : List.of(Knob.STOP, Knob.SHUTTER, Knob.FILTERS, Knob.ISO)) {
            List<Settings> once = turns(from, first);
            for (Knob second : List.of(Knob.ISO, Knob.FILTERS)) {
                if (first != second && free(second)) {
                    once.forEach(one -> nearest(one, second, wanted).ifPresent(found::add));
                }
            }
        }
        return found;
    }

    /** With this knob turned so that the light is as near as can be; the first of those that are equally near. */
    private Optional<Settings> nearest(Settings from, Knob knob, double wanted) {
        Double now = light(from);
        if (now == null) {
            return Optional.empty();
        }
        Settings nearest = from;
        double least = Math.abs(now - wanted);
        for (Settings turned : turned(from, knob).toList()) {
            Double light = light(turned);
            if (light != null && Math.abs(light - wanted) < least) {
                nearest = turned;
                least = Math.abs(light - wanted);
            }
        }
        return Optional.of(nearest);
    }

    /** Collected light in stops; null when something for it is not known. */
    private @Nullable Double light(Settings settings) {
        return light(settings, unit);
    }

    private static @Nullable Double light(Settings settings, Unit of) {
        return CollectedLight.derive(settings.on(of)).get(0) instanceof CollectedLight light ? light.stops() : null;
    }

    private List<Mode> modes() {
        if (!free(Knob.MODE)) {
            return List.of(plan.mode());
        }
        return unit.body().modes().values().stream()
                .filter(mode -> unit.recording().output() == null
                        || mode.outputs() == null
                        || mode.outputs().contains(unit.recording().output().id()))
                .filter(mode -> unit.recording().external()
                        || mode.codecs() == null
                        || !mode.codecs().isEmpty())
                .sorted(Comparator.comparing(Mode::id))
                .toList();
    }

    private List<@Nullable Profile> profiles(Mode mode) {
        List<@Nullable Profile> profiles = new ArrayList<>();
        if (!free(Knob.PROFILE) || plan.profile() == null) {
            profiles.add(plan.profile());
            return profiles;
        }
        unit.body().profiles().values().stream()
                .filter(profile -> mode.profiles() == null || mode.profiles().contains(profile.id()))
                .sorted(Comparator.comparing(Profile::id))
                .forEach(profiles::add);
        if (profiles.isEmpty()) {
            profiles.add(plan.profile());
        }
        return profiles;
    }

    private List<Codec> codecs(Mode mode) {
        if (plan.codec() == null) {
            return List.of();
        }
        Map<String, Codec> all = unit.recording().recorder() == null
                ? unit.body().codecs()
                : unit.recording().recorder().codecs();
        boolean inside = !unit.recording().external();
        return all.values().stream()
                .filter(codec ->
                        !inside || mode.codecs() == null || mode.codecs().contains(codec.id()))
                .sorted(Comparator.comparing(Codec::id))
                .toList();
    }

    private List<@Nullable Lens> lenses() {
        List<@Nullable Lens> lenses = new ArrayList<>();
        FittedLens planned = plan.lens();
        lenses.add(planned == null ? null : planned.lens());
        if (planned != null && free(Knob.LENS_USE)) {
            List<Lens> kit = new ArrayList<>(Alternatives.lenses(unit, rig.kit()));
            // What another unit carries is not on the van any more.
            rig.units().stream()
                    .filter(other -> !other.name().equals(unit.name()))
                    .map(Unit::lens)
                    .filter(fitted -> fitted != null)
                    .forEach(fitted -> kit.remove(fitted.lens()));
            lenses.addAll(kit);
        }
        return lenses;
    }

    /** A prime's one focal length; of a zoom its ends, the one that is planned, and the one that frames as the hero does. */
    private List<Length> focals(Settings from) {
        FittedLens fitted = from.lens();
        if (fitted == null
                || fitted.focal() == null
                || fitted.lens().prime()
                || fitted.lens().focal() == null) {
            return List.of();
        }
        Set<Length> focals = new LinkedHashSet<>();
        FittedLens planned = plan.lens();
        if (planned != null && planned.lens().equals(fitted.lens()) && planned.focal() != null) {
            focals.add(planned.focal());
        }
        Settings like = Settings.of(
                matched.unit(new StartingPlan.Choice(unit.body(), from.mode(), from.profile(), fitted.lens())));
        if (like.lens() != null && like.lens().focal() != null) {
            focals.add(like.lens().focal());
        }
        focals.add(fitted.lens().focal());
        focals.add(
                fitted.lens().focalTo() == null
                        ? fitted.lens().focal()
                        : fitted.lens().focalTo());
        return List.copyOf(focals);
    }

    private List<Aperture> stops(Settings from) {
        FittedLens fitted = from.lens();
        if (fitted == null || fitted.stop() == null) {
            return List.of();
        }
        StopRange range = StopRange.of(from.on(unit));
        Set<Aperture> stops = new LinkedHashSet<>();
        FittedLens planned = plan.lens();
        if (planned != null && planned.stop() != null) {
            stops.add(planned.stop());
        }
        if (range != null) {
            stops.addAll(range.offered());
        }
        return List.copyOf(stops);
    }

    private List<Shutter> shutters() {
        if (plan.shutter() == null) {
            return List.of();
        }
        Set<Shutter> shutters = new LinkedHashSet<>();
        shutters.add(plan.shutter());
        var menu = unit.body().shutter();
        if (menu != null) {
            shutters.addAll(menu.listed(unit.rate()));
            if (hero.shutter() != null) {
                shutters.addAll(menu.around(hero.shutter().seconds(hero.rate()), unit.rate()));
            }
            // A dial offers thousands: those that a whole number of pulses of the mains asks for, and the usual angles.
            Stream.concat(
                            pulses(),
                            DIALLED.stream()
                                    .map(angle -> BigFraction.of(angle, 360)
                                            .multiply(unit.rate().frameSeconds())))
                    .forEach(seconds -> shutters.addAll(menu.around(seconds, unit.rate())));
        }
        return List.copyOf(shutters);
    }

    private Stream<BigFraction> pulses() {
        return Stream.of(50, 60)
                .flatMap(mains -> Stream.of(1, 2, 3, 4).map(pulses -> BigFraction.of(pulses, 2 * mains)))
                .filter(seconds -> seconds.compareTo(unit.rate().frameSeconds()) <= 0);
    }

    private List<Iso> isos() {
        if (plan.iso() == null) {
            return List.of();
        }
        Set<Iso> isos = new LinkedHashSet<>();
        isos.add(plan.iso());
        if (unit.body().iso() != null) {
            isos.addAll(unit.body().iso().offered());
        }
        return List.copyOf(isos);
    }

    private List<List<NeutralDensity>> filters() {
        if (plan.filters() == null) {
            return List.of();
        }
        Set<List<NeutralDensity>> filters = new LinkedHashSet<>();
        filters.add(plan.filters());
        filters.addAll(NdPlan.choices(rig, unit));
        return List.copyOf(filters);
    }

    private List<ColourTemperature> whites() {
        if (plan.white() == null) {
            return List.of();
        }
        // The farther from the hero's the worse, whatever the lamp: what is nearest, and what stands beside it in the
        // menu.
        Set<ColourTemperature> whites = new LinkedHashSet<>();
        whites.add(plan.white());
        WhiteMenu menu = unit.body().white();
        ColourTemperature wanted = hero.white();
        if (menu != null && wanted != null) {
            menu.nearest(wanted).ifPresent(near -> {
                List<ColourTemperature> offered = menu.offered();
                int at = offered.indexOf(near);
                whites.add(near);
                whites.addAll(offered.subList(Math.max(0, at - 1), Math.min(offered.size(), at + 2)));
            });
        }
        return List.copyOf(whites);
    }

    private Settings lens(Settings from, Lens lens) {
        FittedLens like = matched.unit(new StartingPlan.Choice(unit.body(), from.mode(), from.profile(), lens))
                .lens();
        FittedLens now = from.lens();
        return like == null || now == null
                ? from
                : copy(
                        from,
                        from.codec(),
                        new FittedLens(lens, like.focal(), now.stop(), like.adapter()),
                        from.shutter(),
                        from.iso(),
                        from.filters(),
                        from.white());
    }

    private static Settings lens(Settings from, UnaryOperator<FittedLens> turned) {
        FittedLens now = from.lens();
        return now == null
                ? from
                : copy(from, from.codec(), turned.apply(now), from.shutter(), from.iso(), from.filters(), from.white());
    }

    private static Settings codec(Settings from, Codec codec) {
        return copy(from, codec, from.lens(), from.shutter(), from.iso(), from.filters(), from.white());
    }

    private static Settings shutter(Settings from, Shutter shutter) {
        return copy(from, from.codec(), from.lens(), shutter, from.iso(), from.filters(), from.white());
    }

    private static Settings iso(Settings from, Iso iso) {
        return copy(from, from.codec(), from.lens(), from.shutter(), iso, from.filters(), from.white());
    }

    private static Settings filters(Settings from, List<NeutralDensity> filters) {
        return copy(from, from.codec(), from.lens(), from.shutter(), from.iso(), filters, from.white());
    }

    private static Settings white(Settings from, ColourTemperature white) {
        return copy(from, from.codec(), from.lens(), from.shutter(), from.iso(), from.filters(), white);
    }

    private static Settings copy(
            Settings from,
            @Nullable Codec codec,
            @Nullable FittedLens lens,
            @Nullable Shutter shutter,
            @Nullable Iso iso,
            @Nullable List<NeutralDensity> filters,
            @Nullable ColourTemperature white) {
        return new Settings(
                from.mode(),
                from.profile(),
                from.encoding(),
                from.gamut(),
                codec,
                lens,
                shutter,
                iso,
                filters,
                white,
                from.automatic());
    }
}
