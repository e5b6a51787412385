package akin.engine.equip;

import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Choice;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.RigSheet;
import akin.engine.read.Say;
import akin.model.colour.Gamut;
import akin.model.gear.Adapter;
import akin.model.gear.Body;
import akin.model.gear.Codec;
import akin.model.gear.Input;
import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.gear.Output;
import akin.model.gear.Profile;
import akin.model.gear.Recorder;
import akin.model.quantity.Aperture;
import akin.model.quantity.ColourTemperature;
import akin.model.quantity.Iso;
import akin.model.quantity.Length;
import akin.model.quantity.Shutter;
import akin.model.rig.Delivery;
import akin.model.rig.FittedLens;
import akin.model.rig.Kit;
import akin.model.rig.LutHolder;
import akin.model.rig.Match;
import akin.model.rig.MediaPlan;
import akin.model.rig.Monitor;
import akin.model.rig.Production;
import akin.model.rig.Readings;
import akin.model.rig.Recording;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Setting;
import akin.model.rig.SyncPlan;
import akin.model.rig.Takes;
import akin.model.rig.Unit;
import akin.model.rig.Waiver;
import akin.model.tone.Encoding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Looks up every word of a rig sheet. A word that nothing answers to is bad input, at its place. */
public final class Equipper {

    static final String DEFAULT_TOLERANCE = "intercut";
    private static final int SMALLEST_TABLE = 2;
    private static final Pattern ZONE = Pattern.compile("UTC([+-][01][0-9]:[0-5][0-9])?");

    private final Document document;
    private final RigSheet sheet;
    private final Binder binder;
    private final Catalogue catalogue;
    private @Nullable Map<String, Gamut> gamuts;

    private Equipper(Document document, RigSheet sheet, Catalogue catalogue, Binder binder) {
        this.binder = binder;
        this.document = document;
        this.sheet = sheet;
        this.catalogue = sheet.gear() == null ? catalogue : catalogue.with(sheet.gear());
    }

    /**
     * Reads a rig document and equips it.
     *
     * @param terms what the check goes by, beside the rig file
     * @throws BadInput at the first word that cannot be looked up
     */
    public static Rig equip(Document document, Binder binder, Catalogue catalogue, Terms terms) {
        Equipper.requireVersion(document);
        RigSheet sheet = binder.bind(document, RigSheet.class);
        if (sheet.gear() != null) {
            requireNoClaims(document, "overrides", sheet.gear().overrides());
            requireNoClaims(document, "amends", sheet.gear().amends());
        }
        return new Equipper(document, sheet, catalogue, binder).rig(terms);
    }

    /** The version comes first: every other complaint about a file of another version would mislead. */
    private static void requireVersion(Document document) {
        String found = document.at("akin")
                .map(node -> node instanceof Node.Scalar s
                        ? Say.quote(s.plain() ? s.text() : '"' + s.text() + '"')
                        : "a list or mapping")
                .orElseThrow(() -> new BadInput(
                        document.file(),
                        document.root().place(),
                        "the key 'akin' is missing; a rig file starts with akin: " + RigSheet.VERSION));
        if (!found.equals(Say.quote(String.valueOf(RigSheet.VERSION)))) {
            throw document.error(
                    "akin",
                    "read " + found + "; this program reads rig files that start with akin: " + RigSheet.VERSION);
        }
    }

    private static void requireNoClaims(Document document, String key, @Nullable List<String> ids) {
        if (ids != null) {
            throw new BadInput(
                    document.file(),
                    document.keyOf("gear." + key).orElseGet(() -> document.placeOf("gear")),
                    "the key " + Say.quote(key) + " is for files of their own; gear in a rig file goes before all other"
                            + " without saying so");
        }
    }

    private Rig rig(Terms terms) {
        String tolerance = terms.tolerance();
        Collection<String> names = sheet.units().keySet();
        if (names.size() < 2) {
            throw new BadInput(
                    document.file(),
                    document.keyOf("units").orElseGet(() -> document.placeOf("units")),
                    "a pairing needs at least two units; read "
                            + (names.isEmpty() ? "none" : "one, " + Say.list(names)));
        }
        for (String name : names) {
            if (!name.matches("[A-Za-z0-9][A-Za-z0-9_-]{0,30}")) {
                throw new BadInput(
                        document.file(),
                        document.keyOf("units." + name).orElseGet(() -> document.placeOf("units")),
                        "the unit name " + Say.quote(name) + " is not a letter or a short word such as A or crash");
            }
        }
        String hero = sheet.match().hero();
        if (!names.contains(hero)) {
            throw document.error(
                    "match.hero",
                    "the hero " + Say.quote(hero) + " is not one of the units: " + Say.list(names) + "."
                            + Say.nearest(hero, names));
        }
        Match match = new Match(
                hero,
                ToleranceReader.read(
                        document,
                        catalogue,
                        tolerance != null
                                ? tolerance
                                : Optional.ofNullable(sheet.match().tolerance()).orElse(DEFAULT_TOLERANCE),
                        tolerance == null ? "match.tolerance" : "",
                        sheet.tolerances()),
                Optional.ofNullable(sheet.match().view()).orElse(Match.ViewAxis.HORIZONTAL));
        List<Unit> units = new ArrayList<>();
        sheet.units().forEach((name, unit) -> units.add(unit(name, unit, name.equals(hero))));
        return new Rig(
                production(),
                match,
                scenes(names),
                kit(),
                catalogue.mounts(),
                units,
                waivers(names, terms.on()),
                terms.footage(),
                readings(terms, names));
    }

    /** Readings of the call go before those in the rig file: they were taken later. */
    private @Nullable Readings readings(Terms terms, Collection<String> names) {
        ReadingsFile readings = terms.readings();
        if (readings == null && sheet.readings() != null) {
            readings = ReadingsFile.inRig(document, sheet.readings(), binder);
        }
        return readings == null ? null : readings.of(names);
    }

    private Production production() {
        RigSheet.ProductionSheet p = sheet.production();
        RigSheet.DeliverySheet d = p.delivery();
        if (d != null && d.encoding() != null) {
            encoding(d.encoding(), "production.delivery.encoding");
        }
        return new Production(
                p.name(),
                p.rate(),
                p.mains(),
                p.jamEvery(),
                d == null ? null : new Delivery(d.picture(), d.rate(), d.encoding()));
    }

    private List<Scene> scenes(Collection<String> unitNames) {
        List<Scene> scenes = new ArrayList<>();
        List<RigSheet.SceneSheet> sheets = sheet.scenes() == null ? List.of() : sheet.scenes();
        for (RigSheet.SceneSheet s : sheets) {
            int index = scenes.size();
            List<String> shooting = s.units() == null ? List.of() : s.units();
            requireUnits(shooting, "scenes." + index + ".units.", unitNames);
            for (String unit : s.distances().keySet()) {
                if (!unitNames.contains(unit)) {
                    throw document.error(
                            "scenes." + index + ".distances." + unit,
                            "read " + Say.quote(unit) + "; the units are " + Say.list(unitNames));
                }
            }
            scenes.add(new Scene(
                    index,
                    s.name(),
                    s.subjectDistance(),
                    Map.copyOf(s.distances()),
                    s.lights(),
                    s.pan(),
                    s.mains(),
                    s.screens() == null ? List.of() : s.screens(),
                    s.dimming() == null ? List.of() : s.dimming(),
                    s.flashes(),
                    s.takes() == null
                            ? null
                            : new Takes(s.takes().longest(), s.takes().total()),
                    shooting));
        }
        return scenes;
    }

    private List<Waiver> waivers(Collection<String> unitNames, @Nullable LocalDate on) {
        List<Waiver> waivers = new ArrayList<>();
        List<RigSheet.WaiverSheet> sheets = sheet.waivers() == null ? List.of() : sheet.waivers();
        for (RigSheet.WaiverSheet w : sheets) {
            String path = "waivers." + waivers.size();
            List<String> of = w.units() == null ? List.of() : w.units();
            requireUnits(of, path + ".units.", unitNames);
            if (w.because().isBlank()) {
                throw document.error(path + ".because", "a waiver needs a reason");
            }
            boolean expired = on != null && w.until() != null && w.until().isBefore(on);
            waivers.add(new Waiver(waivers.size(), w.rule(), of, w.because(), w.until(), expired));
        }
        return waivers;
    }

    private void requireUnits(List<String> names, String path, Collection<String> units) {
        for (int i = 0; i < names.size(); i++) {
            if (!units.contains(names.get(i))) {
                throw document.error(
                        path + i,
                        "read " + Say.quote(names.get(i)) + "; the units are " + Say.list(units) + "."
                                + Say.nearest(names.get(i), units));
            }
        }
    }

    private Kit kit() {
        RigSheet.KitSheet k = sheet.kit();
        if (k == null) {
            return new Kit(null, null, null);
        }
        return new Kit(
                k.filters(),
                all(k.lenses(), "kit.lenses", "lens", catalogue::lens, "lenses"),
                all(k.adapters(), "kit.adapters", "adapter", catalogue::adapter, "adapters"));
    }

    private <T> @Nullable List<T> all(
            @Nullable List<String> ids, String path, String what, Function<String, Optional<T>> in, String kind) {
        if (ids == null) {
            return null;
        }
        List<T> found = new ArrayList<>();
        for (String id : ids) {
            found.add(found(id, path + "." + found.size(), what, in, () -> catalogue.ids(kind)));
        }
        return found;
    }

    private Unit unit(String name, RigSheet.UnitSheet u, boolean hero) {
        String path = "units." + name + ".";
        Body body = found(u.body(), path + "body", "body", catalogue::body, () -> catalogue.ids("bodies"));
        Mode mode = one(u.mode(), path + "mode", "mode of " + body.called(), body.modes());
        List<String> profilesOfMode = mode.profiles();
        Profile profile = u.profile() == null
                ? null
                : one(u.profile(), path + "profile", "profile of " + body.called(), body.profiles());
        if (profile != null && profilesOfMode != null && !profilesOfMode.contains(profile.id())) {
            throw document.error(
                    path + "profile",
                    body.called() + " does not offer the profile " + Say.quote(profile.id()) + " in the mode "
                            + Say.quote(mode.id()) + "; it offers " + Say.list(profilesOfMode));
        }
        Recording recording = recording(path, body, mode, u);
        Output output = recording.output();
        String encodingId = recording.encodingWith(profile);
        String gamutId = recording.gamutWith(profile);
        Gamut gamut = gamutId == null
                ? null
                : one(
                        gamutId,
                        wordOf(path, body, profile, output != null && output.gamut() != null ? output : null, "gamut"),
                        "gamut",
                        gamuts());
        Encoding encoding = encoding(
                encodingId,
                wordOf(path, body, profile, output != null && output.encoding() != null ? output : null, "encoding"));
        Set<Setting> automatic = EnumSet.noneOf(Setting.class);
        Shutter shutter = given(u.shutter(), Setting.SHUTTER, automatic);
        Iso iso = given(u.iso(), Setting.ISO, automatic);
        ColourTemperature white = given(u.white(), Setting.WHITE, automatic);
        FittedLens lens = u.lens() == null ? null : lens(path + "lens.", u.lens(), automatic);
        return new Unit(
                name,
                hero,
                body,
                mode,
                profile,
                encoding,
                gamut,
                u.rate() == null ? sheet.production().rate() : u.rate(),
                shutter,
                iso,
                lens,
                u.filters() == null ? null : List.copyOf(u.filters()),
                u.variableNd(),
                white,
                u.tint(),
                u.stabilisation(),
                recording,
                media(path + "media.", u.media()),
                u.clipNames(),
                sync(path, u),
                java.util.Collections.unmodifiableSet(automatic),
                Map.copyOf(u.intent()),
                u.build(),
                monitor(path + "monitor.", u.monitor(), recording),
                u.keep() == null ? Set.of() : Set.copyOf(u.keep()));
    }

    /** Where a word of a profile or an output stands: in the rig file's own gear, or else where the unit chooses. */
    private String wordOf(String unit, Body body, @Nullable Profile profile, @Nullable Output output, String key) {
        String gear = "gear.bodies." + body.id() + (output == null ? ".profiles." : ".outputs.")
                + (output != null ? output.id() : profile != null ? profile.id() : "") + "." + key;
        return document.at(gear).isPresent() ? gear : unit + (output == null ? "profile" : "recorder.output");
    }

    private static <T> @Nullable T given(@Nullable Choice<T> choice, Setting setting, Set<Setting> automatic) {
        if (choice == null) {
            return null;
        }
        if (choice.automatic()) {
            automatic.add(setting);
        }
        return choice.value();
    }

    /** The gamuts, read once. */
    private Map<String, Gamut> gamuts() {
        if (gamuts == null) {
            gamuts = catalogue.gamuts();
        }
        return gamuts;
    }

    private FittedLens lens(String path, RigSheet.LensSheet l, Set<Setting> automatic) {
        Lens lens = found(l.use(), path + "use", "lens", catalogue::lens, () -> catalogue.ids("lenses"));
        Length focal = l.focal();
        Length shortest = lens.focal();
        Length longest = lens.focalTo() == null ? shortest : lens.focalTo();
        if (focal == null && lens.prime()) {
            focal = shortest;
        } else if (focal != null
                && shortest != null
                && longest != null
                && (focal.millimetres() < shortest.millimetres() || focal.millimetres() > longest.millimetres())) {
            throw document.error(
                    path + "focal",
                    "read " + focal + "; " + lens.called()
                            + (lens.prime() ? " is a prime of " + shortest : " covers " + shortest + " to " + longest));
        }
        Aperture stop = given(l.stop(), Setting.STOP, automatic);
        Adapter adapter = l.adapter() == null
                ? null
                : found(l.adapter(), path + "adapter", "adapter", catalogue::adapter, () -> catalogue.ids("adapters"));
        return new FittedLens(lens, focal, stop, adapter);
    }

    private @Nullable MediaPlan media(String path, RigSheet.@Nullable MediaPlanSheet m) {
        if (m == null) {
            return null;
        }
        if (m.count() < 1) {
            throw document.error(path + "count", "read " + m.count() + "; a unit that records has 1 or more");
        }
        return new MediaPlan(
                found(m.use(), path + "use", "card or drive", catalogue::media, () -> catalogue.ids("media")),
                m.count());
    }

    private @Nullable Monitor monitor(String path, RigSheet.@Nullable MonitorSheet m, Recording recording) {
        if (m == null) {
            return null;
        }
        if (m.look().isBlank()) {
            throw document.error(
                    path + "look", "a look needs a name; a picture watched as it is recorded has look: none");
        }
        if (m.look().equals(Monitor.NO_LOOK)) {
            if (!m.equals(new RigSheet.MonitorSheet(m.look(), null, null, null, null, null, null, null))) {
                throw document.error(
                        path + "look",
                        "read " + Say.quote(m.look())
                                + "; a picture watched as it is recorded has no table, so no other"
                                + " key stands beside it");
            }
            return Monitor.PLAIN;
        }
        if (m.size() != null && m.size() < SMALLEST_TABLE) {
            throw document.error(
                    path + "size",
                    "read " + m.size() + "; a table has " + SMALLEST_TABLE
                            + " points or more along an edge, such as 33");
        }
        if (m.heldBy() == LutHolder.RECORDER && !recording.external()) {
            throw document.error(path + "held-by", "read 'recorder'; this unit records inside and has none");
        }
        return new Monitor(
                m.look(),
                encoding(m.encoding(), path + "encoding"),
                m.gamut() == null ? null : one(m.gamut(), path + "gamut", "gamut", gamuts()),
                m.size(),
                encoding(m.viewing(), path + "viewing"),
                m.heldBy(),
                m.accepts(),
                m.recorded());
    }

    private @Nullable Encoding encoding(@Nullable String id, String path) {
        return id == null ? null : found(id, path, "encoding", catalogue::encoding, () -> catalogue.ids("encodings"));
    }

    private SyncPlan sync(String path, RigSheet.UnitSheet u) {
        RigSheet.TimecodeSheet t = u.timecode();
        RigSheet.SoundSheet s = u.sound();
        if (t != null && t.boxPpm() != null && t.boxPpm() < 0) {
            throw document.error(path + "timecode.box-ppm", "read " + t.boxPpm() + "; it is 0 or above");
        }
        if (u.clock() != null && !ZONE.matcher(u.clock()).matches()) {
            throw document.error(
                    path + "clock",
                    "read " + Say.quote(u.clock()) + "; a time zone is written as UTC, or as UTC+01:00");
        }
        return new SyncPlan(
                t == null ? null : t.source(),
                t == null ? null : t.counting(),
                t == null ? null : t.boxPpm(),
                s == null ? null : s.rate(),
                s == null ? null : s.scratch(),
                u.clock(),
                u.clockDate());
    }

    private Recording recording(String path, Body body, Mode mode, RigSheet.UnitSheet u) {
        RigSheet.RecorderSheet r = u.recorder();
        if (r == null) {
            Codec codec = u.codec() == null
                    ? null
                    : one(u.codec(), path + "codec", "codec of " + body.called(), body.codecs());
            offered(codec == null ? null : codec.id(), mode.codecs(), path + "codec", body, mode);
            return new Recording(null, null, codec, null);
        }
        if (u.codec() != null) {
            throw document.error(
                    path + "codec", "this unit records outside; its codec stands under recorder: {use, output, codec}");
        }
        Recorder recorder = found(
                r.use(), path + "recorder.use", "recorder", catalogue::recorder, () -> catalogue.ids("recorders"));
        Output output = r.output() == null
                ? null
                : one(r.output(), path + "recorder.output", "output of " + body.called(), body.outputs());
        offered(output == null ? null : output.id(), mode.outputs(), path + "recorder.output", body, mode);
        Codec codec = r.codec() == null
                ? null
                : one(r.codec(), path + "recorder.codec", "codec of " + recorder.called(), recorder.codecs());
        return new Recording(
                recorder,
                output,
                codec,
                r.reads() == null ? recorder.reads() : r.reads(),
                input(path, recorder, r.input()),
                r.cable(),
                r.overlays(),
                r.startStop());
    }

    /** The input that is named; the only one where none is. */
    private @Nullable Input input(String path, Recorder recorder, @Nullable String id) {
        if (id != null) {
            return one(id, path + "recorder.input", "input of " + recorder.called(), recorder.inputs());
        }
        return recorder.inputs().size() == 1
                ? recorder.inputs().values().iterator().next()
                : null;
    }

    private void offered(@Nullable String id, @Nullable List<String> offered, String path, Body body, Mode mode) {
        if (id != null && offered != null && !offered.contains(id)) {
            throw document.error(
                    path,
                    body.called() + " does not offer " + Say.quote(id) + " in the mode " + Say.quote(mode.id())
                            + "; it offers " + (offered.isEmpty() ? "none" : Say.list(offered)));
        }
    }

    private <T> T one(String id, String path, String what, Map<String, T> in) {
        T found = in.get(id);
        if (found == null) {
            throw unknown(id, path, what, in.keySet());
        }
        return found;
    }

    private <T> T found(
            String id,
            String path,
            String what,
            Function<String, Optional<T>> in,
            java.util.function.Supplier<List<String>> words) {
        return in.apply(id).orElseThrow(() -> unknown(id, path, what, words.get()));
    }

    private BadInput unknown(String id, String path, String what, Collection<String> words) {
        return document.error(
                path,
                "no " + what + " is called " + Say.quote(id) + "." + Say.nearest(id, words) + " Allowed: "
                        + Say.list(words));
    }
}
