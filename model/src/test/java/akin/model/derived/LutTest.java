package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;

import akin.model.colour.Gamut;
import akin.model.finding.Edit;
import akin.model.finding.Fix;
import akin.model.finding.Missing;
import akin.model.finding.Severity;
import akin.model.gear.Profile;
import akin.model.quantity.Stops;
import akin.model.rig.LutHolder;
import akin.model.rig.Monitor;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.published.SharedData;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LutTest {

    private static final List<BiFunction<Rig, Unit, List<Object>>> ALL =
            List.of(WatchedLook::derive, LutInput::derive, LutSize::derive, LutViewing::derive, LookRecorded::derive);

    @Test
    void nothingIsAskedBeforeAnyUnitHasALook() {
        Rig rig = rig(unit("A", null), unit("B", null));
        ALL.forEach(derive ->
                rig.units().forEach(unit -> assertThat(derive.apply(rig, unit)).isEmpty()));
    }

    @Test
    void onceOneHasALookTheOthersHaveToSay() {
        Rig rig = rig(unit("A", table("dusk", 33, false)), unit("B", null));
        for (BiFunction<Rig, Unit, List<Object>> derive : ALL) {
            assertThat(derive.apply(rig, rig.units().get(1)))
                    .isNotEmpty()
                    .allMatch(fact -> fact instanceof Missing gap && gap.path().equals("units.B.monitor"));
        }
    }

    @Test
    void aPictureWatchedAsItIsRecordedHasNoTable() {
        Rig rig = rig(unit("A", table("dusk", 33, false)), unit("B", Monitor.PLAIN));
        Unit plain = rig.units().get(1);
        assertThat(WatchedLook.derive(rig, plain)).containsExactly(new WatchedLook("B", null));
        ALL.subList(1, ALL.size())
                .forEach(derive -> assertThat(derive.apply(rig, plain)).isEmpty());
    }

    @Test
    void eachFactOfATableThatIsNotSaidIsNamed() {
        Monitor bare = new Monitor("dusk", null, null, null, null, null, null, null);
        Rig rig = rig(unit("A", bare), unit("B", Monitor.PLAIN));
        Unit a = rig.units().get(0);
        assertThat(ALL.stream().flatMap(derive -> derive.apply(rig, a).stream()).filter(Missing.class::isInstance))
                .extracting(fact -> ((Missing) fact).path())
                .containsExactlyInAnyOrder(
                        "units.A.monitor.encoding",
                        "units.A.monitor.gamut",
                        "units.A.monitor.size",
                        "units.A.monitor.held-by",
                        "units.A.monitor.viewing",
                        "units.A.monitor.recorded");
    }

    @Test
    void looksAreComparedOnlyWhereThereAreTwo() {
        WatchedLook dusk = new WatchedLook("A", "dusk");
        assertThat(dusk.differs(new WatchedLook("B", "dawn"))).isTrue();
        assertThat(dusk.differs(new WatchedLook("B", "dusk"))).isFalse();
        assertThat(dusk.differs(new WatchedLook("B", null))).isFalse();
        assertThat(new WatchedLook("B", null).differs(dusk)).isFalse();
    }

    @Test
    void theLookOfTheHeroIsLoadedForWhatTheUnitRecords() {
        Rig rig = rig(unit("A", table("dusk", 33, false)), unit("B", Monitor.PLAIN));
        Unit plain = rig.units().get(1);
        assertThat(new WatchedLook("B", null).fixes(rig, plain).get(0).edits())
                .containsExactly(
                        new Edit("units.B.monitor.look", "dusk"),
                        new Edit("units.B.monitor.encoding", "sony-s-log3"),
                        new Edit("units.B.monitor.gamut", "s-gamut3"),
                        new Edit("units.B.monitor.viewing", "bt1886"));
        Rig none = rig(unit("A", Monitor.PLAIN), unit("B", Monitor.PLAIN));
        assertThat(new WatchedLook("B", null).fixes(none, plain))
                .extracting(Fix::key)
                .containsExactly("agree-look");
    }

    @Test
    void aTableIsForOneCurveAndOneGamut() {
        assertThat(input("sony-s-log3", "s-gamut3").wrong()).isFalse();
        assertThat(input("sony-s-log3", "s-gamut3-cine").wrong()).isTrue();
        assertThat(input("canon-log-3", "s-gamut3").wrong()).isTrue();
        assertThat(LutInput.severity(unit("B", table("dusk", 33, false)))).isEqualTo(Severity.FIXABLE);
        assertThat(LutInput.severity(unit("B", table("dusk", 33, true)))).isEqualTo(Severity.BAKED_IN);
        assertThat(LutInput.severity(unit("B", null))).isEqualTo(Severity.FIXABLE);
    }

    @Test
    void theNextSizeBelowIsTakenOrElseTheSmallest() {
        Unit unit = unit("B", table("dusk", 33, false));
        assertThat(resized(unit, 33, 17, 65)).isEqualTo("17");
        assertThat(resized(unit, 70, 17, 65)).isEqualTo("65");
        assertThat(resized(unit, 9, 65, 17)).isEqualTo("17");
        LutSize none = new LutSize("B", 33, "Box", List.of());
        assertThat(none.refused()).isTrue();
        assertThat(none.words()).isEqualTo("no LUT at all");
        assertThat(none.fixes(unit)).extracting(Fix::key).containsExactly("elsewhere");
        assertThat(new LutSize("B", 33, "Box", List.of(65, 33)).refused()).isFalse();
        assertThat(new LutSize("B", 33, "Box", List.of(65, 33)).words()).isEqualTo("33, 65");
    }

    @Test
    void theScreenSaysItsOwnSizes() {
        Monitor onScreen = new Monitor(
                "dusk", encoding("sony-s-log3"), gamut("s-gamut3"), 33, null, LutHolder.SCREEN, List.of(17), null);
        Rig rig = rig(unit("A", onScreen), unit("B", Monitor.PLAIN));
        assertThat(LutSize.derive(rig, rig.units().get(0)))
                .containsExactly(new LutSize("A", 33, "the screen", List.of(17)));
    }

    @Test
    void aRecordedTableIsWrongUntilAReasonIsGiven() {
        assertThat(new LookRecorded("B", "dusk", true, false).wrong()).isTrue();
        assertThat(new LookRecorded("B", "dusk", true, true).wrong()).isFalse();
        assertThat(new LookRecorded("B", "dusk", false, false).wrong()).isFalse();
        LightRig.Draft draft = draft("B", table("dusk", 33, true));
        LookRecorded recorded = new LookRecorded("B", "dusk", true, false);
        assertThat(recorded.fixes(draft.make())).extracting(Fix::key).containsExactly("watch-only");
        draft.profile.put("look", true);
        assertThat(recorded.fixes(draft.make())).extracting(Fix::key).containsExactly("watch-only");
        draft.otherProfiles.put(
                "wide",
                Sparse.of(
                        Profile.class,
                        Map.of("id", "wide", "headroom", new Stops(8), "footroom", new Stops(8), "look", false)));
        assertThat(recorded.fixes(draft.make()).get(0).edits())
                .containsExactly(new Edit("units.B.monitor.recorded", "false"), new Edit("units.B.profile", "wide"));
    }

    @Test
    void greyHasNoAimWhereATableIsRecorded() {
        assertThat(GreyAim.derive(unit("B", table("dusk", 33, true)))).isEmpty();
        assertThat(GreyAim.derive(unit("B", table("dusk", 33, false)))).hasSize(1);
        assertThat(GreyAim.derive(unit("B", null))).hasSize(1);
    }

    private static String resized(Unit unit, int size, Integer... accepts) {
        return String.valueOf(new LutSize("B", size, "Box", List.of(accepts))
                .fixes(unit)
                .get(0)
                .edits()
                .get(0)
                .to());
    }

    private static LutInput input(String encoding, String gamut) {
        Monitor monitor = new Monitor("dusk", encoding(encoding), gamut(gamut), null, null, null, null, null);
        Rig rig = rig(unit("A", Monitor.PLAIN), unit("B", monitor));
        return (LutInput) LutInput.derive(rig, rig.units().get(1)).get(0);
    }

    private static akin.model.tone.Encoding encoding(String id) {
        return SharedData.encoding(id);
    }

    private static Gamut gamut(String id) {
        return java.util.Objects.requireNonNull(SharedData.gamuts().get(id));
    }

    private static Monitor table(String look, int size, boolean recorded) {
        return new Monitor(
                look,
                encoding("sony-s-log3"),
                gamut("s-gamut3"),
                size,
                encoding("bt1886"),
                LutHolder.BODY,
                null,
                recorded);
    }

    private static LightRig.Draft draft(String name, @Nullable Monitor monitor) {
        LightRig.Draft draft = LightRig.draft(name);
        draft.unit.put("gamut", gamut("s-gamut3"));
        if (monitor != null) {
            draft.unit.put("monitor", monitor);
        }
        draft.body.put("lutSizes", List.of(33));
        return draft;
    }

    private static Unit unit(String name, @Nullable Monitor monitor) {
        return draft(name, monitor).make();
    }

    private static Rig rig(Unit... units) {
        return LightRig.rig(List.of(), units);
    }

    @Test
    void ofTheSizesThoseThatTheDeviceTakesFit() {
        List<Integer> sizes = List.of(17, 33, 65);
        assertThat(LutDevice.fitting(unit("B", table("dusk", 33, false)), sizes))
                .containsExactly(33);
        assertThat(LutDevice.fitting(unit("B", Monitor.PLAIN), sizes)).isEqualTo(sizes);
        assertThat(LutDevice.fitting(unit("B", null), sizes)).isEqualTo(sizes);
        LightRig.Draft unknown = draft("B", table("dusk", 33, false));
        unknown.body.remove("lutSizes");
        assertThat(LutDevice.fitting(unknown.make(), sizes)).isEqualTo(sizes);
        LightRig.Draft none = draft("B", table("dusk", 33, false));
        none.body.put("lutSizes", List.of());
        assertThat(LutDevice.fitting(none.make(), sizes)).isEmpty();
    }
}
