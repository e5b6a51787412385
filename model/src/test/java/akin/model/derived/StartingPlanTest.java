package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;

import akin.model.gear.Adapter;
import akin.model.gear.Body;
import akin.model.gear.Codec;
import akin.model.gear.Lens;
import akin.model.gear.Media;
import akin.model.gear.Mode;
import akin.model.quantity.Aperture;
import akin.model.quantity.Length;
import akin.model.quantity.NeutralDensity;
import akin.model.rig.Build;
import akin.model.rig.FittedLens;
import akin.model.rig.Kit;
import akin.model.rig.Knob;
import akin.model.rig.MediaPlan;
import akin.model.rig.Monitor;
import akin.model.rig.Recording;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.published.SharedData;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Where gear that nobody has planned for starts from: what it takes over, and what it has to choose. */
class StartingPlanTest {

    private static Codec codec(String id, Codec.Kind kind, @Nullable Integer bits) {
        return new Codec(id, kind, bits, null, null, null);
    }

    private static final List<Codec> CODECS = List.of(
            codec("raw", Codec.Kind.RAW, 12),
            codec("light", Codec.Kind.ENCODED, 8),
            codec("main-b", Codec.Kind.ENCODED, 10),
            codec("main-a", Codec.Kind.ENCODED, 10),
            codec("plain", Codec.Kind.ENCODED, null));

    private static Body body(Map<String, Object> more) {
        Map<String, Object> facts = new HashMap<>(Map.of(
                "id",
                "new",
                "codecs",
                CODECS.stream().collect(Collectors.toMap(Codec::id, codec -> codec)),
                "internalNd",
                List.<NeutralDensity>of()));
        facts.putAll(more);
        return Sparse.of(Body.class, facts);
    }

    private static Mode mode(@Nullable List<String> codecs) {
        Map<String, Object> facts = new HashMap<>(Map.of("id", "open"));
        if (codecs != null) {
            facts.put("codecs", codecs);
        }
        return Sparse.of(Mode.class, facts);
    }

    private static Unit started(Rig rig, @Nullable Unit replaced, Body body, Mode mode, @Nullable Lens lens) {
        return new StartingPlan(rig, replaced, "new", SharedData::encoding, id -> null)
                .unit(new StartingPlan.Choice(body, mode, null, lens));
    }

    private static @Nullable String inside(@Nullable Recording ofHero, @Nullable List<String> ofMode) {
        LightRig.Draft hero = LightRig.draft("A");
        if (ofHero != null) {
            hero.recording = ofHero;
        }
        Codec codec = started(
                        LightRig.rig(List.of(), hero.make(), LightRig.draft("B").make()),
                        null,
                        body(Map.of()),
                        mode(ofMode),
                        null)
                .recording()
                .codec();
        return codec == null ? null : codec.id();
    }

    @Test
    void itRecordsInsideWhatTheModeHasNearestToTheHerosCodec() {
        assertThat(inside(null, null)).isEqualTo("main-a");
        assertThat(inside(null, List.of("raw", "light", "plain"))).isEqualTo("light");
        assertThat(inside(null, List.of("raw", "plain"))).isEqualTo("plain");
        assertThat(inside(null, List.of("raw"))).isEqualTo("raw");
        assertThat(inside(null, List.of())).isNull();
        Recording raw = new Recording(null, null, codec("own", Codec.Kind.RAW, 12), null);
        assertThat(inside(raw, null)).isEqualTo("raw");
        // A hero whose codec is not known is taken for one that records an encoded picture.
        assertThat(inside(new Recording(null, null, null, null), null)).isEqualTo("main-a");
    }

    private static Adapter adapter(String id, String lens, String body, @Nullable Boolean electronics) {
        Map<String, Object> facts = new HashMap<>(Map.of("id", id, "lensMount", lens, "bodyMount", body));
        if (electronics != null) {
            facts.put("electronics", electronics);
        }
        return Sparse.of(Adapter.class, facts);
    }

    private static @Nullable String adapter(
            @Nullable String lensMount, @Nullable String bodyMount, @Nullable List<Adapter> kit) {
        Rig plain = LightRig.rig(
                List.of(), LightRig.draft("A").make(), LightRig.draft("B").make());
        Rig rig = new Rig(
                plain.production(),
                plain.match(),
                plain.scenes(),
                new Kit(null, null, kit),
                Map.of(),
                plain.units(),
                List.of());
        Map<String, Object> lens = new HashMap<>(Map.of("id", "prime", "focal", Length.parse("35 mm")));
        if (lensMount != null) {
            lens.put("mount", lensMount);
        }
        FittedLens fitted = started(
                        rig,
                        null,
                        body(bodyMount == null ? Map.of() : Map.of("mount", bodyMount)),
                        mode(null),
                        Sparse.of(Lens.class, lens))
                .lens();
        assertThat(fitted).isNotNull();
        assertThat(fitted.focal()).isEqualTo(Length.parse("35 mm"));
        return fitted.adapter() == null ? null : fitted.adapter().id();
    }

    @Test
    void anAdapterOfTheKitJoinsWhatDoesNotFitOneThatPassesLensDataFirst() {
        List<Adapter> kit = List.of(
                adapter("c-plain", "old", "new", null),
                adapter("d-data", "old", "new", true),
                adapter("b-dumb", "old", "new", false),
                adapter("a-other", "other", "new", true),
                adapter("a-body", "old", "other", true));
        assertThat(adapter("old", "new", kit)).isEqualTo("d-data");
        assertThat(adapter("old", "new", List.of(kit.get(0), kit.get(2)))).isEqualTo("b-dumb");
        assertThat(adapter("old", "new", kit.subList(3, 5))).isNull();
        assertThat(adapter("old", "new", null)).isNull();
        assertThat(adapter("new", "new", List.of(adapter("to-itself", "new", "new", true))))
                .isNull();
        assertThat(adapter(null, "new", kit)).isNull();
        assertThat(adapter("old", null, kit)).isNull();
    }

    /** All that is planned around a unit stays with whatever stands in its place; beside the hero none of it is planned. */
    @Test
    void whatIsPlannedAroundAUnitStaysInItsPlace() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("variableNd", true);
        draft.unit.put("media", new MediaPlan(Sparse.of(Media.class, Map.of("id", "card")), 3));
        draft.unit.put("clipNames", "B001");
        draft.unit.put("intents", Map.of("white", "colder"));
        draft.unit.put("build", Sparse.of(Build.class, Map.of()));
        draft.unit.put("monitor", Monitor.PLAIN);
        draft.unit.put("keeps", Set.of(Knob.ISO));
        Unit planned = draft.make();
        Rig rig = LightRig.rig(List.of(), LightRig.draft("A").make(), planned);
        Unit then = started(rig, planned, body(Map.of()), mode(null), null);
        assertThat(then)
                .usingRecursiveComparison()
                .comparingOnlyFields(
                        "rate",
                        "shutter",
                        "iso",
                        "filters",
                        "variableNd",
                        "media",
                        "clipNames",
                        "automatic",
                        "intents",
                        "build",
                        "monitor",
                        "keeps")
                .isEqualTo(planned);
        Unit beside = started(rig, null, body(Map.of()), mode(null), null);
        assertThat(beside.variableNd()).isNull();
        assertThat(beside.media()).isNull();
        assertThat(beside.clipNames()).isNull();
        assertThat(beside.intents()).isEmpty();
        assertThat(beside.build()).isNull();
        assertThat(beside.monitor()).isNull();
        assertThat(beside.keeps()).isEmpty();
        assertThat(Arrays.asList(then.name(), beside.name())).containsOnly("new");
        assertThat(beside.hero() || then.hero()).isFalse();
    }

    /** Arithmetic: a zoom of 18 to 80 mm in the place of one at 100 mm goes to its long end, of one at 12 mm to its short. */
    @Test
    void inThePlaceOfAUnitOnlyAFocalLengthThatTheLensLacksChanges() {
        for (List<String> pair : List.of(
                List.of("24 mm", "24 mm"),
                List.of("100 mm", "80 mm"),
                List.of("12 mm", "18 mm"),
                List.of("80 mm", "80 mm"))) {
            LightRig.Draft draft = LightRig.draft("B");
            draft.focal = pair.get(0);
            Unit planned = draft.make();
            Rig rig = LightRig.rig(List.of(), LightRig.draft("A").make(), planned);
            Lens zoom = Sparse.of(
                    Lens.class,
                    Map.of("id", "other", "focal", Length.parse("18 mm"), "focalTo", Length.parse("80 mm")));
            FittedLens fitted =
                    started(rig, planned, body(Map.of()), mode(null), zoom).lens();
            assertThat(fitted).isEqualTo(new FittedLens(zoom, Length.parse(pair.get(1)), Aperture.parse("T2.8"), null));
        }
    }
}
