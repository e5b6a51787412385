package akin.model.derived;

import static akin.model.derived.PlannedRig.DIAL;
import static org.assertj.core.api.Assertions.assertThat;

import akin.model.finding.Missing;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Frequency;
import akin.model.quantity.Shutter;
import akin.model.rig.LightKind;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import akin.published.PublishedTable;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class FlickerTest {

    private static Flicker flicker(String mains, String rate, String shutter) {
        FrameRate frames = FrameRate.parse(rate);
        Shutter setting = Shutter.parse(shutter);
        return new Flicker(
                new PulsingLight("A", "hall", List.of(LightKind.LED), Frequency.parse(mains)),
                new ExposureTime("A", setting, frames, setting.seconds(frames)));
    }

    /** Safe settings as printed; the source of each row stands in the table. */
    @TestFactory
    List<DynamicTest> publishedSafeAnglesLeaveNoRipple() {
        return PublishedTable.read("flicker-safe.csv").stream()
                .filter(row -> row.text("verdict").equals("safe")
                        && !row.text("shutter_angle_deg").equals("any")
                        && row.text("fps").matches("\\d+"))
                .map(row -> DynamicTest.dynamicTest(
                        row.toString(),
                        () -> assertThat(flicker(
                                                row.text("mains_hz") + " Hz",
                                                row.text("fps"),
                                                row.text("shutter_angle_deg") + "°")
                                        .ripplePercent())
                                .isLessThan(0.01)))
                .toList();
    }

    /** Menus round; both settings are common practice on 50 Hz, no published source for the ripple. */
    @Test
    void roundedMenuSettingsStayUnderOnePercent() {
        assertThat(flicker("50 Hz", "24000/1001", "172.8°").ripplePercent()).isBetween(0.15, 0.25);
        assertThat(flicker("50 Hz", "24000/1001", "1/50").ripplePercent()).isZero();
        assertThat(flicker("60 Hz", "24000/1001", "144°").ripplePercent()).isLessThan(1);
        assertThat(flicker("50 Hz", "24000/1001", "180°").ripplePercent()).isGreaterThan(5);
    }

    @Test
    void tellsStandingBandsFromRollingOnes() {
        assertThat(flicker("50 Hz", "25", "172.8°").looks()).contains("stand still rather than vanish");
        assertThat(flicker("60 Hz", "24", "180°").looks()).contains("stand still rather than vanish");
        assertThat(flicker("50 Hz", "24", "180°").looks()).contains("about 4 times a second");
        assertThat(flicker("60 Hz", "24000/1001", "180°").looks()).contains("about once in 8.3 s");
    }

    @Test
    void asksForScenesLightsAndMainsOnlyWhereTheyMatter() {
        PlannedRig plan = PlannedRig.at("24").shutter("180°", DIAL).shutter("180°", DIAL);
        assertThat(derived(plan.rig())).extracting("path").containsExactly("scenes");
        Rig rig = plan.scene(new Scene(0, "yard", null, Map.of(), null, null, null, List.of("A")))
                .scene("field", "", LightKind.DAYLIGHT)
                .scene("hall", "", LightKind.DISCHARGE)
                .scene("office", "50 Hz", LightKind.FLUORESCENT, LightKind.DAYLIGHT)
                .rig();
        assertThat(derived(rig))
                .filteredOn(Missing.class::isInstance)
                .extracting("path")
                .containsExactly("scenes.0.lights", "production.mains");
        assertThat(derived(rig))
                .contains(new PulsingLight("A", "office", List.of(LightKind.FLUORESCENT), Frequency.parse("50 Hz")));
        assertThat(PulsingLight.derive(rig, rig.units().get(1)))
                .filteredOn(Missing.class::isInstance)
                .extracting("path")
                .containsExactly("production.mains");
    }

    private static List<Object> derived(Rig rig) {
        return PulsingLight.derive(rig, rig.units().get(0));
    }

    /** Where two scenes are as bad, the same one is named in every run: the first by name. */
    @Test
    void ofScenesAsBadAsEachOtherTheFirstByNameIsTheWorst() {
        FrameRate rate = FrameRate.parse("24");
        Shutter shutter = Shutter.parse("180°");
        for (List<String> names : List.of(List.of("attic", "hall"), List.of("hall", "attic"))) {
            PlannedRig plan = PlannedRig.at("24").shutter("180°", DIAL).shutter("180°", DIAL);
            names.forEach(name -> plan.scene(name, "50 Hz", LightKind.DISCHARGE));
            Rig rig = plan.scene("basement", "50 Hz", LightKind.DAYLIGHT).rig();
            Unit unit = rig.units().get(0);
            assertThat(Flicker.worst(rig, unit, new ExposureTime("A", shutter, rate, shutter.seconds(rate))))
                    .extracting(flicker -> flicker.light().scene())
                    .containsExactly("attic");
        }
    }
}
