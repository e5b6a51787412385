package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Edit;
import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.gear.Codec;
import akin.model.gear.IsoMenu;
import akin.model.quantity.Iso;
import akin.model.rig.Recording;
import akin.model.rig.Unit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IsoPlaceTest {

    /** Floors of 400 and 640 are common practice for two log profiles, no source. */
    @ParameterizedTest
    @CsvSource({"400, 400, 0", "400, 200, 1", "640, 320, 1", "640, 640, 0", "640, 1280, -1"})
    void countsTheStopsUnderTheFloor(int floor, int iso, double under) {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("iso", new Iso(iso));
        draft.profile.put("isoFloor", new Iso(floor));
        assertThat(floor(draft.make()).stopsUnder()).isCloseTo(under, within(1e-9));
    }

    @Test
    void aModesOwnFloorComesBeforeTheProfiles() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.mode.put("isoFloors", Map.of("log", new Iso(1600), "other", new Iso(100)));
        assertThat(floor(draft.make()).floor()).isEqualTo(new Iso(1600));
        draft.profile.remove("isoFloor");
        assertThat(floor(draft.make()).floor()).isEqualTo(new Iso(1600));
    }

    @Test
    void raisingToTheFloorIsPaidWithDensity() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("iso", new Iso(200));
        Unit unit = draft.make();
        Unit hero = LightRig.draft("A").make();
        List<Fix> paid = IsoFix.toFloor(
                LightRig.rig(LightRig.filters("ND 0.6", "ND 0.6", "ND 0.9"), hero, unit), unit, floor(unit));
        assertThat(paid).singleElement().satisfies(fix -> {
            assertThat(fix.key()).isEqualTo("raise-and-filter");
            assertThat(fix.edits())
                    .containsExactly(new Edit("units.B.iso", "400"), new Edit("units.B.filters", "[ND 0.9]"));
        });
        List<Fix> unpaid = IsoFix.toFloor(LightRig.rig(List.of(), hero, unit), unit, floor(unit));
        assertThat(unpaid).singleElement().satisfies(fix -> {
            assertThat(fix.key()).isEqualTo("raise");
            assertThat(fix.edits()).containsExactly(new Edit("units.B.iso", "400"));
        });
    }

    @Test
    void underTheFloorIsBakedInUnlessRaw() {
        LightRig.Draft draft = LightRig.draft("B");
        assertThat(IsoFix.underFloor(draft.make())).isEqualTo(Severity.BAKED_IN);
        draft.recording = new Recording(null, null, new Codec("raw", Codec.Kind.RAW, 12, null, null, null), null);
        assertThat(IsoFix.underFloor(draft.make())).isEqualTo(Severity.ADVICE);
    }

    @ParameterizedTest
    @CsvSource({
        "800,  800, 0, 0",
        "1600, 800, 1, 1",
        "2500, 3200, -0.356, 1.644",
        "3200, 3200, 0, 0",
        "400,  800, -1, -1",
        "6400, 3200, 1, 1",
    })
    void theNearestBaseAndTheOneThatWorksMayDiffer(int iso, int nearest, double off, double shift) {
        IsoBases bases = new IsoBases("B", new Iso(iso), List.of(new Iso(3200), new Iso(800)));
        assertThat(bases.nearest()).contains(new Iso(nearest));
        assertThat(bases.stopsOff()).isCloseTo(off, within(5e-4));
        assertThat(bases.shift()).isCloseTo(shift, within(5e-4));
        assertThat(bases.words()).isEqualTo("800 and 3200");
    }

    @Test
    void ofTwoBasesEquallyNearTheUpperComesFirst() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("iso", new Iso(1600));
        draft.profile.put("isoBases", List.of(new Iso(800), new Iso(3200)));
        Unit unit = draft.make();
        List<Fix> fixes = IsoFix.toBase(
                LightRig.rig(
                        LightRig.filters("ND 0.6", "ND 0.6", "ND 0.9", "ND 0.3"),
                        LightRig.draft("A").make(),
                        unit),
                unit,
                IsoBases.of(unit, unit.profile()));
        assertThat(fixes.stream().map(fix -> fix.edits().get(0).to())).containsExactly("3200", "800");
        assertThat(fixes.stream().map(fix -> fix.edits().get(1).to())).containsExactly("[ND 0.9]", "[ND 0.3]");
    }

    @Test
    void anIsoOutsideTheMenuGoesToTheNearest() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("iso", new Iso(850));
        OfferedIso found = (OfferedIso) OfferedIso.derive(draft.make()).get(0);
        assertThat(found.offered()).isFalse();
        assertThat(found.nearest()).isEqualTo(new Iso(800));
        assertThat(found.residual()).isCloseTo(-0.0875, within(5e-4));
        draft.body.put("iso", new IsoMenu(List.of(new Iso(850)), null, null, null));
        assertThat(((OfferedIso) OfferedIso.derive(draft.make()).get(0)).offered())
                .isTrue();
    }

    private static IsoFloor floor(Unit unit) {
        return (IsoFloor) IsoFloor.derive(unit).get(0);
    }

    @Test
    void theNearerBaseComesFirstThoughItBeTheLower() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.put("iso", new Iso(1000));
        draft.profile.put("isoBases", List.of(new Iso(200), new Iso(800), new Iso(3200), new Iso(40_000)));
        Unit unit = draft.make();
        List<Fix> fixes = IsoFix.toBase(
                LightRig.rig(List.of(), LightRig.draft("A").make(), unit), unit, IsoBases.of(unit, unit.profile()));
        // 200 is under the floor of 400, and 40 000 is not in the menu.
        assertThat(fixes.stream().map(fix -> fix.edits().get(0).to())).containsExactly("800", "3200");
    }
}
