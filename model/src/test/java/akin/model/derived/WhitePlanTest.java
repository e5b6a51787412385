package akin.model.derived;

import static akin.model.derived.PlannedRig.presets;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Edit;
import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.gear.Codec;
import akin.model.gear.WhiteMenu;
import akin.model.quantity.ColourTemperature;
import akin.model.quantity.Tint;
import akin.model.rig.Rig;
import akin.model.rig.Setting;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import akin.published.PublishedTable;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WhitePlanTest {

    private static final WhiteMenu SPAN =
            new WhiteMenu(List.of(), new ColourTemperature(2000), new ColourTemperature(12000), 10);

    /** The published pairs of temperatures and shifts stand in the notes of filter-mired.csv. */
    @Test
    void measuresInMiredAsFilterTablesDo() {
        List<PublishedTable.Row> rows = PublishedTable.read("filter-mired.csv").stream()
                .filter(row -> row.text("source").matches(".*\\((\\d+)K to (\\d+)K\\)"))
                .toList();
        assertThat(rows).isNotEmpty();
        for (PublishedTable.Row row : rows) {
            String[] kelvins = row.text("source")
                    .replaceAll(".*\\((\\d+)K to (\\d+)K\\)", "$1 $2")
                    .split(" ", -1);
            WhiteBalance from = white(Integer.parseInt(kelvins[0]), false);
            WhiteBalance to = white(Integer.parseInt(kelvins[1]), false);
            assertThat(from.miredFrom(to)).isCloseTo(Math.abs(row.number("mired_shift")), within(0.05));
        }
    }

    @Test
    void costsNothingButTimeInRawOrNearby() {
        Tolerances limits = PlannedRig.at("24")
                .white(4300, SPAN)
                .white(4300, SPAN)
                .rig()
                .match()
                .tolerances();
        assertThat(white(5600, false).costOf(35.1, limits)).isEqualTo(Severity.LOSSY);
        assertThat(white(5600, false).costOf(35, limits)).isEqualTo(Severity.FIXABLE);
        assertThat(white(5600, true).costOf(200, limits)).isEqualTo(Severity.FIXABLE);
    }

    @Test
    void setsTheUnitsOwnMenuFirst() {
        Rig rig = PlannedRig.at("24").white(4300, SPAN).white(5600, SPAN).rig();
        assertThat(fixes(rig).get(0).edits()).containsExactly(new Edit("units.B.white", "4300 K"));
    }

    @Test
    void takesTheHeroAndTheOthersToAPreset() {
        Rig rig = PlannedRig.at("24")
                .white(4300, SPAN)
                .white(3200, presets(3200, 4500, 5600))
                .white(4300, SPAN)
                .rig();
        assertThat(fixes(rig).get(0).edits())
                .containsExactly(
                        new Edit("units.A.white", "4410 K"),
                        new Edit("units.B.white", "4500 K"),
                        new Edit("units.C.white", "4410 K"));
    }

    @Test
    void leavesItToTheGradeWhereNothingIsCommon() {
        Rig rig = PlannedRig.at("24")
                .white(3200, presets(3200))
                .white(5600, presets(5600))
                .rig();
        assertThat(fixes(rig)).extracting(Fix::key).containsExactly("grade");
    }

    @Test
    void doesNotTakeAnAutomaticWhiteForAnUnplannedOne() {
        Unit planned = PlannedRig.at("24")
                .white(4300, SPAN)
                .white(4300, SPAN)
                .rig()
                .units()
                .get(1);
        Codec raw = new Codec("raw", Codec.Kind.RAW, 12, null, null, null);
        Unit automatic = PlannedRig.with(planned, raw, null, Set.of(Setting.WHITE));
        assertThat(WhiteSetting.derive(automatic)).containsExactly(new WhiteSetting("B", true, true));
        assertThat(WhiteBalance.derive(automatic)).extracting("path").containsExactly("units.B.white");
    }

    @Test
    void comparesTintsOnlyOnOneScale() {
        TintSetting zero = new TintSetting("A", new Tint(0), "one");
        TintSetting four = new TintSetting("B", new Tint(4), "one");
        TintSetting other = new TintSetting("C", new Tint(4), "two");
        assertThat(four.differsFrom(zero)).isTrue();
        assertThat(four.incomparableWith(zero)).isFalse();
        assertThat(other.differsFrom(zero)).isFalse();
        assertThat(other.incomparableWith(zero)).isTrue();
        assertThat(new TintSetting("C", new Tint(0), "two").incomparableWith(zero))
                .isFalse();
    }

    private static List<Fix> fixes(Rig rig) {
        return WhitePlan.together(rig, rig.units().get(1));
    }

    private static WhiteBalance white(int kelvin, boolean raw) {
        return new WhiteBalance("A", new ColourTemperature(kelvin), raw);
    }
}
