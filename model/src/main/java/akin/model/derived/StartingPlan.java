package akin.model.derived;

import akin.model.colour.Gamut;
import akin.model.exposure.Light;
import akin.model.gear.Adapter;
import akin.model.gear.Body;
import akin.model.gear.Codec;
import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.gear.Output;
import akin.model.gear.Profile;
import akin.model.gear.Stabilisation;
import akin.model.quantity.Aperture;
import akin.model.quantity.ColourTemperature;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Iso;
import akin.model.quantity.Length;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.Shutter;
import akin.model.quantity.Tint;
import akin.model.rig.FittedLens;
import akin.model.rig.Recording;
import akin.model.rig.Rig;
import akin.model.rig.Setting;
import akin.model.rig.SyncPlan;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * The settings that gear nobody has planned for yet starts from, so that it can be compared with the hero: either the hero's,
 * as near as the gear comes to them, or those of a unit in whose place it stands.
 *
 * <p>Beside the hero: the setting of its own shutter menu with the exposure time nearest to the hero's; the focal length that
 * takes in what the hero does; the stop that gives the hero's depth; the native ISO of its profile nearest to the hero's, not
 * under the floor; neutral density from its body and from what the hero leaves on the van for the hero's exposure, or a higher
 * ISO where equal depth leaves too little light; the white balance of its menu nearest to the hero's. In the place of a unit,
 * all of that unit's settings stay; only a focal length that the lens does not have becomes its nearest one.
 *
 * <p>Either way an adapter of the kit joins lens and body where their mounts differ and one fits, and where the body does not
 * record what the unit it replaces does, it records inside what comes nearest to the hero's codec.
 */
public final class StartingPlan {

    private final Rig rig;
    private final Unit hero;
    private final @Nullable Unit replaced;
    private final String name;
    private final Function<String, @Nullable Encoding> encodings;
    private final Function<String, @Nullable Gamut> gamuts;

    /**
     * What is tried.
     *
     * @param body the body
     * @param mode one of its modes
     * @param profile one of the mode's profiles; null where none is known
     * @param lens the lens; null for none
     */
    public record Choice(
            Body body,
            Mode mode,
            @Nullable Profile profile,
            @Nullable Lens lens) {}

    /**
     * A plan for gear beside the hero of a rig.
     *
     * @param rig the rig that gives production, match, kit and the hero
     * @param replaced the unit in whose place the gear stands; null for none
     * @param name what the unit is to be called
     * @param encodings the encoding of an id; null where there is none
     * @param gamuts the gamut of an id; null where there is none
     */
    public StartingPlan(
            Rig rig,
            @Nullable Unit replaced,
            String name,
            Function<String, @Nullable Encoding> encodings,
            Function<String, @Nullable Gamut> gamuts) {
        this.rig = rig;
        this.hero = rig.units().stream().filter(Unit::hero).findFirst().orElseThrow();
        this.replaced = replaced;
        this.name = name;
        this.encodings = encodings;
        this.gamuts = gamuts;
    }

    /** The unit with its settings. */
    public Unit unit(Choice choice) {
        Unit planned = replaced;
        return planned == null ? besideHero(choice) : inPlaceOf(planned, choice);
    }

    private Unit besideHero(Choice choice) {
        Draft draft = new Draft(choice, hero, null, new Recording(null, null, inside(choice), null));
        draft.shutter = shutter(choice.body());
        draft.white = white(choice.body());
        draft.tint = tint(choice.body());
        draft.stabilisation = stabilisation(choice);
        draft.iso = iso(draft.unit());
        draft.filters = List.of();
        draft.lens = fitted(choice, null, null);
        focus(draft);
        stop(draft);
        light(draft);
        return draft.unit();
    }

    private Unit inPlaceOf(Unit planned, Choice choice) {
        Draft draft = new Draft(choice, planned, planned, kept(planned.recording(), choice));
        FittedLens old = planned.lens();
        Lens lens = choice.lens();
        Length focal = old == null || lens == null ? null : covered(lens, old.focal());
        draft.lens = fitted(choice, focal, old == null ? null : old.stop());
        return draft.unit();
    }

    private Recording kept(Recording planned, Choice choice) {
        Body body = choice.body();
        if (!planned.external()) {
            Codec codec = planned.codec() == null
                    ? null
                    : body.codecs().get(planned.codec().id());
            boolean same = codec != null && offers(choice.mode().codecs(), codec.id());
            return new Recording(null, null, same ? codec : inside(choice), null);
        }
        Output output = planned.output() == null
                ? null
                : body.outputs().get(planned.output().id());
        return new Recording(
                planned.recorder(),
                output != null && offers(choice.mode().outputs(), output.id()) ? output : null,
                planned.codec(),
                planned.reads(),
                planned.input(),
                planned.cable(),
                planned.overlays(),
                planned.startStop());
    }

    /** What the mode records inside that comes nearest to the hero's codec: its kind, then the most bits; null for nothing. */
    private @Nullable Codec inside(Choice choice) {
        Codec ofHero = hero.recording().codec();
        Codec.Kind kind = ofHero == null || ofHero.kind() == null ? Codec.Kind.ENCODED : ofHero.kind();
        return choice.body().codecs().values().stream()
                .filter(codec -> offers(choice.mode().codecs(), codec.id()))
                .min(Comparator.<Codec, Boolean>comparing(codec -> codec.kind() != kind)
                        .thenComparing(codec -> codec.bits() == null ? 0 : codec.bits(), Comparator.reverseOrder())
                        .thenComparing(Codec::id))
                .orElse(null);
    }

    private static boolean offers(@Nullable List<String> offered, String id) {
        return offered == null || offered.contains(id);
    }

    private @Nullable Shutter shutter(Body body) {
        Shutter wanted = hero.shutter();
        if (wanted == null || body.shutter() == null || body.shutter().offers(wanted)) {
            return wanted;
        }
        BigFraction seconds = wanted.seconds(hero.rate());
        return body.shutter().nearest(seconds, hero.rate()).orElse(wanted);
    }

    private @Nullable ColourTemperature white(Body body) {
        ColourTemperature wanted = hero.white();
        return wanted == null || body.white() == null
                ? wanted
                : body.white().nearest(wanted).orElse(wanted);
    }

    /** Tints compare only on one scale; no tint is none on all of them. */
    private @Nullable Tint tint(Body body) {
        Tint wanted = hero.tint();
        boolean alike =
                body.tintScale() != null && body.tintScale().equals(hero.body().tintScale());
        return wanted == null || alike || wanted.value() == 0 ? wanted : null;
    }

    /** The hero's where this gear has it too, otherwise none. */
    private @Nullable Stabilisation stabilisation(Choice choice) {
        Stabilisation wanted = hero.stabilisation();
        if (wanted == null) {
            return null;
        }
        Lens lens = choice.lens();
        boolean has = wanted == Stabilisation.OPTICAL
                ? lens != null && Boolean.TRUE.equals(lens.stabilised())
                : wanted == choice.body().stabilisation();
        return has ? wanted : Stabilisation.NONE;
    }

    /** The native ISO nearest to the hero's that can be set and is not under the floor; without one, the nearest ISO. */
    private @Nullable Iso iso(Unit draft) {
        Iso wanted = hero.iso();
        Profile profile = draft.profile();
        if (wanted == null) {
            return null;
        }
        List<Iso> bases = profile == null ? null : IsoBases.known(draft, profile);
        Iso floor = IsoFloor.known(draft);
        var menu = draft.body().iso();
        Iso lowest = floor == null || floor.value() < wanted.value() ? wanted : floor;
        Function<Iso, Double> apart = base -> Math.abs(base.stopsFrom(wanted));
        return (bases == null ? List.<Iso>of() : bases)
                .stream()
                        .filter(base -> menu == null || menu.offers(base))
                        .filter(base -> floor == null || base.value() >= floor.value())
                        .min(Comparator.comparing(apart).thenComparing(Iso::value))
                        .orElseGet(() -> menu == null
                                ? lowest
                                : menu.nearest(lowest.value())
                                        .filter(iso -> floor == null || iso.value() >= floor.value())
                                        .or(() -> menu.atLeast(lowest))
                                        .orElse(lowest));
    }

    private @Nullable FittedLens fitted(Choice choice, @Nullable Length focal, @Nullable Aperture stop) {
        Lens lens = choice.lens();
        if (lens == null) {
            return null;
        }
        return new FittedLens(
                lens, focal == null && lens.prime() ? lens.focal() : focal, stop, adapter(choice.body(), lens));
    }

    /** The first adapter of the kit, by id, that joins lens and body; one that passes lens data comes first. */
    private @Nullable Adapter adapter(Body body, Lens lens) {
        if (lens.mount() == null || body.mount() == null || lens.mount().equals(body.mount())) {
            return null;
        }
        List<Adapter> kit = rig.kit().adapters() == null ? List.of() : rig.kit().adapters();
        return kit.stream()
                .filter(adapter -> Objects.equals(adapter.lensMount(), lens.mount())
                        && Objects.equals(adapter.bodyMount(), body.mount()))
                .min(Comparator.<Adapter, Boolean>comparing(adapter -> !Boolean.TRUE.equals(adapter.electronics()))
                        .thenComparing(Adapter::id))
                .orElse(null);
    }

    /** A focal length as planned where the lens has it, else its nearest end. */
    private static @Nullable Length covered(Lens lens, @Nullable Length planned) {
        Length shortest = lens.focal();
        if (planned == null || shortest == null || lens.prime()) {
            return lens.prime() && shortest != null ? shortest : planned;
        }
        Length longest = lens.focalTo() == null ? shortest : lens.focalTo();
        return new Length(Math.max(shortest.millimetres(), Math.min(longest.millimetres(), planned.millimetres())));
    }

    /** Sets a zoom to the focal length that takes in what the hero does; leaves it open where that cannot be said. */
    private void focus(Draft draft) {
        FittedLens bare = draft.lens;
        if (bare == null || bare.focal() != null || bare.lens().focal() == null) {
            return;
        }
        draft.lens = new FittedLens(bare.lens(), bare.lens().focal(), null, bare.adapter());
        Length focal = View.derive(hero, rig.match()).get(0) instanceof View ofHero
                        && View.derive(draft.unit(), rig.match()).get(0) instanceof View own
                ? Alternatives.nearestFocal(bare.lens(), own.ringFocalFor(ofHero))
                : null;
        draft.lens = new FittedLens(bare.lens(), focal, null, bare.adapter());
    }

    /** Sets the stop that gives the hero's depth; the hero's stop where that cannot be said. */
    private void stop(Draft draft) {
        FittedLens ofHero = hero.lens();
        Aperture wanted = ofHero == null ? null : ofHero.stop();
        FittedLens bare = draft.lens;
        if (bare == null || wanted == null) {
            return;
        }
        Aperture written = new Aperture(wanted.number(), kind(bare.lens(), wanted));
        draft.lens = new FittedLens(bare.lens(), bare.focal(), written, bare.adapter());
        Unit unit = draft.unit();
        if (FocusDepth.derive(hero).get(0) instanceof FocusDepth depth
                && FocusDepth.derive(unit).get(0) instanceof FocusDepth own) {
            DepthFix fix = new DepthFix(unit, own, hero, depth, rig.match().tolerances());
            draft.lens = new FittedLens(bare.lens(), bare.focal(), fix.nearest(), bare.adapter());
        }
    }

    /** The kind of number engraved on a lens: the hero's kind where both are known, or neither is. */
    private static Aperture.Kind kind(Lens lens, Aperture wanted) {
        if ((lens.open() == null) == (lens.openT() == null)) {
            return wanted.kind();
        }
        return lens.openT() == null ? Aperture.Kind.GEOMETRIC : Aperture.Kind.PHOTOMETRIC;
    }

    /** Filters that give the hero's exposure; where there is too little light even without, a higher ISO. */
    private void light(Draft draft) {
        Unit unit = draft.unit();
        if (!(CollectedLight.derive(hero).get(0) instanceof CollectedLight ofHero)
                || !(CollectedLight.derive(unit).get(0) instanceof CollectedLight own)) {
            return;
        }
        double brighter = own.stopsFrom(ofHero);
        double tolerance = rig.match().tolerances().of(Tolerance.EXPOSURE);
        var menu = unit.body().iso();
        if (brighter > 0) {
            draft.filters = NdChoice.nearest(unit, NdPlan.spare(pair(unit), unit), brighter)
                    .filters();
        } else if (-brighter > tolerance && menu != null) {
            draft.iso = menu.nearest(Light.isoBrighterBy(own.iso().value(), -brighter))
                    .orElse(draft.iso);
        }
    }

    /** Only the hero shares the van with it. */
    private Rig pair(Unit unit) {
        return new Rig(rig.production(), rig.match(), List.of(), rig.kit(), Map.of(), List.of(hero, unit), List.of());
    }

    /** A unit on its way, whose settings are found one after the other, since later ones build on earlier ones. */
    private final class Draft {
        private final Choice choice;
        private final @Nullable Unit as;
        private FrameRate rate;
        private Recording recording;
        private SyncPlan sync;
        private Set<Setting> automatic;
        private @Nullable Shutter shutter;
        private @Nullable Iso iso;
        private @Nullable FittedLens lens;
        private @Nullable List<NeutralDensity> filters;
        private @Nullable ColourTemperature white;
        private @Nullable Tint tint;
        private @Nullable Stabilisation stabilisation;

        /**
         * A draft.
         *
         * @param from the unit that rate, sync and automatic settings come from
         * @param as the unit whose every other setting stays; null for none
         */
        Draft(Choice choice, Unit from, @Nullable Unit as, Recording recording) {
            this.choice = choice;
            this.as = as;
            this.rate = from.rate();
            this.sync = from.sync();
            this.automatic = from.automatic();
            this.recording = recording;
            if (as != null) {
                shutter = as.shutter();
                iso = as.iso();
                filters = as.filters();
                white = as.white();
                tint = as.tint();
                stabilisation = as.stabilisation();
            }
        }

        Unit unit() {
            String encoding = recording.encodingWith(choice.profile());
            String gamut = recording.gamutWith(choice.profile());
            return new Unit(
                    name,
                    false,
                    choice.body(),
                    choice.mode(),
                    choice.profile(),
                    encoding == null ? null : encodings.apply(encoding),
                    gamut == null ? null : gamuts.apply(gamut),
                    rate,
                    shutter,
                    iso,
                    lens,
                    filters,
                    as == null ? null : as.variableNd(),
                    white,
                    tint,
                    stabilisation,
                    recording,
                    as == null ? null : as.media(),
                    as == null ? null : as.clipNames(),
                    sync,
                    automatic,
                    as == null ? Map.of() : as.intents(),
                    as == null ? null : as.build(),
                    as == null ? null : as.monitor(),
                    as == null ? Set.of() : as.keeps());
        }
    }
}
