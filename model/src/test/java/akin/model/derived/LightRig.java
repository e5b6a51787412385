package akin.model.derived;

import akin.model.gear.Aid;
import akin.model.gear.Body;
import akin.model.gear.Codec;
import akin.model.gear.IsoMenu;
import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.gear.Profile;
import akin.model.quantity.Aperture;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Iso;
import akin.model.quantity.Length;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.Shutter;
import akin.model.quantity.Stops;
import akin.model.rig.FittedLens;
import akin.model.rig.Kit;
import akin.model.rig.Match;
import akin.model.rig.Production;
import akin.model.rig.Recording;
import akin.model.rig.Rig;
import akin.model.rig.Setting;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import akin.published.SharedData;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Units and rigs for the checks of light and tone, changed one fact at a time. */
final class LightRig {

    static final FrameRate RATE = FrameRate.parse("24000/1001");

    private LightRig() {}

    /** The facts of a unit by record and component, to be changed before the unit is made. */
    static final class Draft {
        final Map<String, Object> unit = new HashMap<>();
        final Map<String, Object> body = new HashMap<>();
        final Map<String, Object> mode = new HashMap<>(Map.of("id", "open"));
        final Map<String, Object> profile = new HashMap<>();
        final Map<String, Object> lens = new HashMap<>();
        final Map<String, Profile> otherProfiles = new HashMap<>();
        String stop = "T2.8";
        String focal = "24 mm";
        Recording recording =
                new Recording(null, null, new Codec("inside", Codec.Kind.ENCODED, 10, "4:2:2", null, null), null);

        Draft(String name) {
            Encoding encoding = SharedData.encoding("sony-s-log3");
            unit.putAll(Map.of(
                    "name",
                    name,
                    "hero",
                    name.equals("A"),
                    "encoding",
                    encoding,
                    "rate",
                    RATE,
                    "shutter",
                    Shutter.parse("180°"),
                    "iso",
                    new Iso(800),
                    "filters",
                    filters("ND 0.6"),
                    "automatic",
                    Set.<Setting>of()));
            body.putAll(Map.of(
                    "id",
                    "body-" + name,
                    "iso",
                    new IsoMenu(List.of(), new Iso(100), new Iso(25600), null),
                    "internalNd",
                    List.<NeutralDensity>of(),
                    "irCut",
                    true,
                    "aids",
                    List.of(Aid.WAVEFORM)));
            profile.putAll(Map.of(
                    "id",
                    "log",
                    "encoding",
                    encoding.id(),
                    "gamut",
                    "s-gamut3",
                    "isoFloor",
                    new Iso(400),
                    "isoBases",
                    List.of(new Iso(800)),
                    "headroom",
                    new Stops(7),
                    "footroom",
                    new Stops(7),
                    "look",
                    false));
            lens.putAll(Map.of("id", "zoom", "iris", Lens.Iris.STEPLESS));
            lens.putAll(Map.of(
                    "focal", Length.parse("18 mm"),
                    "focalTo", Length.parse("80 mm"),
                    "open", Aperture.parse("f/1.4"),
                    "openT", Aperture.parse("T1.5"),
                    "closed", Aperture.parse("f/22"),
                    "closedT", Aperture.parse("T22")));
        }

        Unit make() {
            Profile own = Sparse.of(Profile.class, profile);
            Map<String, Profile> profiles = new HashMap<>(otherProfiles);
            profiles.put(own.id(), own);
            Map<String, Object> bodyFacts = new HashMap<>(body);
            bodyFacts.put("profiles", profiles);
            Map<String, Object> facts = new HashMap<>(unit);
            facts.put("body", Sparse.of(Body.class, bodyFacts));
            facts.put("mode", Sparse.of(Mode.class, mode));
            facts.put("recording", recording);
            facts.putIfAbsent("profile", own);
            facts.putIfAbsent(
                    "lens",
                    new FittedLens(Sparse.of(Lens.class, lens), Length.parse(focal), Aperture.parse(stop), null));
            return Sparse.of(Unit.class, facts);
        }
    }

    static Draft draft(String name) {
        return new Draft(name);
    }

    static List<NeutralDensity> filters(String... written) {
        return Arrays.stream(written).map(NeutralDensity::parse).toList();
    }

    static Tolerances tolerances() {
        Map<Tolerance, Double> limits = new EnumMap<>(Tolerance.class);
        for (Tolerance tolerance : Tolerance.values()) {
            limits.put(tolerance, 1.0);
        }
        limits.put(Tolerance.EXPOSURE, 1.0 / 6);
        limits.put(Tolerance.DEPTH, 1.0 / 3);
        limits.put(Tolerance.HEADROOM, 0.5);
        limits.put(Tolerance.HIGHLIGHTS, 3.0);
        limits.put(Tolerance.PUSH, 2.0);
        limits.put(Tolerance.INFRARED_ND, 1.2);
        limits.put(Tolerance.ND_STACK, 2.0);
        return new Tolerances("test", limits);
    }

    static Rig rig(List<NeutralDensity> kit, Unit... units) {
        return new Rig(
                new Production("Test", RATE, null, null, null),
                new Match("A", tolerances(), Match.ViewAxis.HORIZONTAL),
                List.of(),
                new Kit(kit, null, null),
                Map.of(),
                List.of(units),
                List.of());
    }
}
