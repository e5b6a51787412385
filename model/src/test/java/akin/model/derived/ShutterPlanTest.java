package akin.model.derived;

import static akin.model.derived.PlannedRig.DIAL;
import static akin.model.derived.PlannedRig.times;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Edit;
import akin.model.finding.Fix;
import akin.model.gear.ShutterMenu;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Shutter;
import akin.model.rig.LightKind;
import akin.model.rig.Rig;
import akin.model.rig.Tolerances;
import akin.model.rig.Unit;
import akin.model.timing.ExposureTiming;
import akin.model.timing.LightPulses;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShutterPlanTest {

    /** Safe angles at 24 frames on 50 Hz: 172.8 and 86.4 degrees, common practice and printed in flicker-safe.csv. */
    @Test
    void movesTheHeroToTheSafeAngleAndATimesOnlyUnitToTheSafeTime() {
        Rig rig = PlannedRig.at("24")
                .scene("office", "50 Hz", LightKind.FLUORESCENT)
                .shutter("180°", DIAL)
                .shutter("1/48", times("1/48", "1/50", "1/60", "1/100"))
                .rig();
        for (Unit unit : rig.units()) {
            Fix first = ShutterPlan.forFlicker(rig, unit).get(0);
            assertThat(first.key()).isEqualTo("set-together");
            assertThat(first.edits())
                    .containsExactly(new Edit("units.A.shutter", "172.8°"), new Edit("units.B.shutter", "1/50"));
        }
    }

    @Test
    void takesAThirdUnitAlong() {
        Rig rig = PlannedRig.at("24")
                .scene("office", "60 Hz", LightKind.LED)
                .shutter("172.8°", DIAL)
                .shutter("172.8°", DIAL)
                .shutter("1/50", times("1/50", "1/60"))
                .rig();
        assertThat(ShutterPlan.forFlicker(rig, rig.units().get(2)).get(0).edits())
                .containsExactly(
                        new Edit("units.A.shutter", "144°"),
                        new Edit("units.B.shutter", "144°"),
                        new Edit("units.C.shutter", "1/60"));
    }

    @Test
    void prefersASafeSettingForBlurWhereLightPulses() {
        PlannedRig plan =
                PlannedRig.at("24").shutter("172.8°", DIAL).shutter("1/100", times("1/48", "1/49", "1/50", "1/100"));
        Unit b = plan.rig().units().get(1);
        assertThat(ShutterPlan.forBlur(plan.rig(), b).get(0).edits())
                .containsExactly(new Edit("units.B.shutter", "1/50"));
        Rig lit = plan.scene("office", "48 Hz", LightKind.LED).rig();
        assertThat(ShutterPlan.forBlur(lit, b).get(0).edits()).contains(new Edit("units.B.shutter", "1/48"));
    }

    @Test
    void saysWhenNoSettingIsSafe() {
        Rig rig = PlannedRig.at("24")
                .scene("office", "50 Hz", LightKind.LED)
                .shutter("172.8°", DIAL)
                .shutter("1/60", times("1/60"))
                .rig();
        assertThat(ShutterPlan.forFlicker(rig, rig.units().get(1)))
                .extracting(Fix::key)
                .containsExactly("no-safe-setting");
    }

    @Test
    void namesASafeTimeWhereTheMenuIsNotKnown() {
        Rig rig = PlannedRig.at("24")
                .scene("office", "50 Hz", LightKind.LED)
                .shutter("172.8°", DIAL)
                .shutter("180°", null)
                .rig();
        List<Fix> fixes = ShutterPlan.forFlicker(rig, rig.units().get(1));
        assertThat(fixes).extracting(Fix::key).containsExactly("safe-time");
        assertThat(fixes.get(0).edits()).isEmpty();
    }

    @Test
    void keepsTheHerosAngleOffSpeed() {
        Rig rig = PlannedRig.at("24")
                .shutter("180°", DIAL)
                .offSpeed("48", "1/48", times("1/48", "1/96", "1/100"))
                .rig();
        assertThat(ShutterPlan.forBlur(rig, rig.units().get(1)).get(0).edits())
                .containsExactly(new Edit("units.B.shutter", "1/96"));
    }

    /** Whatever the menus and the mains: what a fix sets is in the menu, and a fix for flicker leaves none. */
    @Test
    void everyFixStandsInTheMenuAndCures() {
        Random random = new Random(20260117);
        String[] rates = {"24000/1001", "24", "25", "30000/1001", "50"};
        int safe = 0;
        for (int round = 0; round < 200; round++) {
            String mains = random.nextBoolean() ? "50 Hz" : "60 Hz";
            PlannedRig plan =
                    PlannedRig.at(rates[random.nextInt(rates.length)]).scene("hall", mains, LightKind.DISCHARGE);
            int units = 2 + random.nextInt(3);
            for (int i = 0; i < units; i++) {
                ShutterMenu menu = random.nextBoolean() ? DIAL : times(someTimes(random));
                plan.shutter(1 + random.nextInt(360) + "°", menu);
            }
            Rig rig = plan.rig();
            BigFraction hertz = BigFraction.of(mains.equals("50 Hz") ? 50 : 60);
            for (Unit unit : rig.units()) {
                for (Fix fix : ShutterPlan.forFlicker(rig, unit)) {
                    Map<String, Shutter> after = after(rig, fix);
                    inMenus(rig, fix);
                    if (!fix.edits().isEmpty()) {
                        BigFraction seconds = java.util.Objects.requireNonNull(after.get(unit.name()))
                                .seconds(unit.rate());
                        assertThat(LightPulses.bandingPercent(seconds, hertz.multiply(2), 1))
                                .isLessThan(1.0001);
                        safe++;
                    }
                }
                if (!unit.hero()) {
                    for (Fix fix : ShutterPlan.forBlur(rig, unit)) {
                        inMenus(rig, fix);
                        if (!fix.edits().isEmpty()) {
                            Map<String, Shutter> after = after(rig, fix);
                            assertThat(ExposureTiming.percentApart(
                                            java.util.Objects.requireNonNull(after.get("A"))
                                                    .seconds(unit.rate()),
                                            java.util.Objects.requireNonNull(after.get(unit.name()))
                                                    .seconds(unit.rate())))
                                    .isLessThanOrEqualTo(5);
                        }
                    }
                }
            }
        }
        assertThat(safe).isGreaterThan(200);
    }

    private static String[] someTimes(Random random) {
        String[] all = {"1/25", "1/30", "1/48", "1/50", "1/60", "1/100", "1/120", "1/250"};
        List<String> some = new java.util.ArrayList<>(List.of(all));
        java.util.Collections.shuffle(some, random);
        return some.subList(0, 3).toArray(String[]::new);
    }

    private static Map<String, Shutter> after(Rig rig, Fix fix) {
        Map<String, Shutter> after = new HashMap<>();
        rig.units().forEach(unit -> after.put(unit.name(), unit.shutter()));
        fix.edits()
                .forEach(edit -> after.put(edit.path().split("\\.", -1)[1], Shutter.parse(String.valueOf(edit.to()))));
        return after;
    }

    private static void inMenus(Rig rig, Fix fix) {
        for (Edit edit : fix.edits()) {
            Unit unit = rig.units().stream()
                    .filter(u -> u.path("shutter").equals(edit.path()))
                    .findFirst()
                    .orElseThrow();
            ShutterMenu menu = java.util.Objects.requireNonNull(unit.body().shutter());
            assertThat(menu.offers(Shutter.parse(String.valueOf(edit.to())))).isTrue();
        }
    }

    /** Common practice, no source: 144 to 216 degrees need no reason; to the whole degree, as angles are spoken of. */
    @ParameterizedTest
    @CsvSource({
        "144, 0",
        "143.6, 0",
        "216, 0",
        "216.4, 0",
        "180, 0",
        "72, 1",
        "90, 0.6",
        "360, 0.6667",
        "270, 0.25",
        "217, 0.0046"
    })
    void howFarAnAngleIsOutsideTheRangeIsInPartsOfTheNearerLimit(String angle, double off) {
        FrameRate rate = FrameRate.parse("25");
        Shutter shutter = Shutter.parse(angle + "°");
        Tolerances limits = PlannedRig.at("25")
                .shutter("180°", DIAL)
                .shutter("180°", DIAL)
                .rig()
                .match()
                .tolerances();
        assertThat(new ExposureTime("A", shutter, rate, shutter.seconds(rate)).turnsOff(limits))
                .isCloseTo(off, within(5e-5));
    }
}
