package akin.model.derived;

import static akin.model.derived.LightRig.filters;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Edit;
import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.gear.Codec;
import akin.model.gear.IsoMenu;
import akin.model.quantity.Aperture;
import akin.model.quantity.Iso;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.Stops;
import akin.model.rig.Recording;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LightFixTest {

    private static final double ALLOWED = 1.0 / 6;

    @Test
    void neutralDensityComesBeforeIso() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("iso", new Iso(1600));
        assertThat(keys(filters("ND 0.6", "ND 0.6", "ND 0.9"), draft)).containsExactly("set-density", "set-iso");
    }

    @Test
    void infraredMakesIsoTheLesserHarm() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("iso", new Iso(3200));
        draft.body.put("irCut", false);
        assertThat(keys(filters("ND 0.6", "ND 0.6", "ND 1.2"), draft)).containsExactly("set-iso", "set-density");
    }

    @Test
    void isoNeverGoesUnderTheFloor() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("iso", new Iso(1600));
        draft.profile.put("isoFloor", new Iso(1000));
        assertThat(keys(filters("ND 0.6", "ND 0.6"), draft)).doesNotContain("set-iso");
    }

    @Test
    void theIrisPaysOnlyWhileDepthStaysMatched() {
        LightRig.Draft near = LightRig.draft("B");
        near.stop = "T3.1";
        assertThat(keys(filters("ND 0.6", "ND 0.6"), near)).contains("set-stop");
        LightRig.Draft deep = LightRig.draft("B");
        deep.unit.put("iso", new Iso(1600));
        assertThat(keys(filters("ND 0.6", "ND 0.6"), deep)).doesNotContain("set-stop");
    }

    @Test
    void saysWhatToHireWhereNothingHelps() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("iso", new Iso(1600));
        draft.body.put("iso", new IsoMenu(List.of(new Iso(1600)), null, null, null));
        assertThat(keys(filters("ND 0.6", "ND 0.6"), draft)).containsExactly("hire-density");
        LightRig.Draft dark = LightRig.draft("B");
        dark.body.put("iso", new IsoMenu(List.of(new Iso(800)), null, null, null));
        dark.unit.put("iso", new Iso(800));
        dark.unit.put("filters", List.of());
        dark.stop = "T8";
        dark.focal = "80 mm";
        dark.lens.put("openT", Aperture.parse("T8"));
        assertThat(keys(filters("ND 0.6"), dark)).containsExactly("more-light");
    }

    /** Every edit, made, brings the unit within the tolerance, with what the menu and the van have. */
    @Test
    void everyEditIsPossibleAndEnough() {
        Random random = new Random(20);
        int edits = 0;
        for (int round = 0; round < 150; round++) {
            LightRig.Draft draft = LightRig.draft("B");
            IsoMenu menu = random.nextBoolean()
                    ? new IsoMenu(List.of(), new Iso(100), new Iso(12800), null)
                    : new IsoMenu(List.of(new Iso(400), new Iso(1600), new Iso(3200)), null, null, null);
            List<Iso> offered = menu.offered();
            draft.body.put("iso", menu);
            draft.body.put("internalNd", random.nextBoolean() ? filters("ND 0.6", "ND 1.2") : List.of());
            draft.unit.put("iso", offered.get(random.nextInt(offered.size())));
            draft.unit.put("filters", random.nextBoolean() ? List.of() : filters("ND 0.9"));
            draft.stop = "T" + (14 + random.nextInt(60)) / 10.0;
            Unit unit = draft.make();
            Unit hero = LightRig.draft("A").make();
            List<NeutralDensity> kit =
                    filters("ND 0.3", "ND 0.6", "ND 0.9", "ND 1.2").subList(random.nextInt(3), 4);
            Rig rig = LightRig.rig(kit, hero, unit);
            for (Fix fix : LightFix.toMatch(rig, unit, light(unit), light(hero))) {
                if (fix.edits().isEmpty()) {
                    continue;
                }
                Object iso = draft.unit.get("iso");
                Object carried = draft.unit.get("filters");
                String stop = draft.stop;
                for (Edit edit : fix.edits()) {
                    edits++;
                    String to = edit.to();
                    switch (edit.path()) {
                        case "units.B.iso" -> {
                            Iso set = Iso.parse(to);
                            assertThat(menu.offers(set)).isTrue();
                            assertThat(set.value()).isGreaterThanOrEqualTo(400);
                            draft.unit.put("iso", set);
                        }
                        case "units.B.filters" -> {
                            draft.unit.put("filters", list(to));
                        }
                        case "units.B.lens.stop" -> draft.stop = to;
                        default -> throw new AssertionError(edit.path());
                    }
                }
                Unit then = draft.make();
                assertThat(light(then).stopsFrom(light(hero))).as("%s", fix).isCloseTo(0, within(ALLOWED + 1e-9));
                assertThat(((NdPlan) NdPlan.derive(LightRig.rig(kit, hero, then), then)
                                        .get(0))
                                .lacking())
                        .as("%s from %s", fix, kit)
                        .isEmpty();
                draft.unit.put("iso", iso);
                draft.unit.put("filters", carried);
                draft.stop = stop;
            }
        }
        assertThat(edits).isGreaterThan(100);
    }

    /** Common practice, no source: half a stop is fixable in 10-bit log, lossy in 8 bits, baked in where it clips. */
    @Test
    void bitsAndClippingDecideHowLateItCanBeFixed() {
        Unit hero = LightRig.draft("A").make();
        LightRig.Draft draft = LightRig.draft("B");
        assertThat(severity(draft, hero, 0.5)).isEqualTo(Severity.FIXABLE);
        draft.profile.put("headroom", new Stops(3.4));
        assertThat(severity(draft, hero, 0.5)).isEqualTo(Severity.BAKED_IN);
        assertThat(severity(draft, hero, 0.3)).isEqualTo(Severity.FIXABLE);
        // A darker unit does not clip before the hero does; two stops of push show.
        assertThat(severity(draft, hero, -1.99)).isEqualTo(Severity.FIXABLE);
        assertThat(severity(draft, hero, -2)).isEqualTo(Severity.LOSSY);
        draft.recording =
                new Recording(null, null, new Codec("inside", Codec.Kind.ENCODED, 8, "4:2:0", null, null), null);
        assertThat(severity(draft, hero, 0.3)).isEqualTo(Severity.LOSSY);
        draft.recording = new Recording(null, null, null, null);
        assertThat(severity(draft, hero, 0.3)).isEqualTo(Severity.LOSSY);
        assertThat(Clipping.words(draft.make(), 0.5)).isEqualTo("clips 2.9 stops over the grey of the hero");
        draft.profile.remove("headroom");
        assertThat(Clipping.words(draft.make(), 0.5)).isEqualTo("clips at a level that is not known");
    }

    private static Severity severity(LightRig.Draft draft, Unit hero, double brighter) {
        Unit unit = draft.make();
        return Clipping.severity(LightRig.rig(List.of(), hero, unit), unit, hero, brighter);
    }

    private static List<NeutralDensity> list(String flow) {
        List<NeutralDensity> filters = new ArrayList<>();
        String inside = flow.substring(1, flow.length() - 1);
        if (!inside.isEmpty()) {
            Arrays.stream(inside.split(", ", -1)).map(NeutralDensity::parse).forEach(filters::add);
        }
        return filters;
    }

    private static List<String> keys(List<NeutralDensity> kit, LightRig.Draft draft) {
        Unit unit = draft.make();
        Unit hero = LightRig.draft("A").make();
        return LightFix.toMatch(LightRig.rig(kit, hero, unit), unit, light(unit), light(hero)).stream()
                .map(Fix::key)
                .toList();
    }

    private static CollectedLight light(Unit unit) {
        return (CollectedLight) CollectedLight.derive(unit).get(0);
    }

    /** A lens engraved in T numbers is limited by those, one in f numbers by those; a limit that is not known is none to go to. */
    @Test
    void theIrisPaysWithinWhatIsEngraved() {
        LightRig.Draft photometric = LightRig.draft("B");
        photometric.stop = "T3.1";
        photometric.lens.put("open", Aperture.parse("f/2.9"));
        assertThat(keys(filters("ND 0.6"), photometric)).contains("set-stop");
        photometric.lens.put("openT", Aperture.parse("T3"));
        assertThat(keys(filters("ND 0.6"), photometric)).doesNotContain("set-stop");
        photometric.lens.put("openT", Aperture.parse("T2.8"));
        assertThat(keys(filters("ND 0.6"), photometric)).contains("set-stop");
        photometric.lens.remove("closedT");
        assertThat(keys(filters("ND 0.6"), photometric)).doesNotContain("set-stop");
    }
}
