package akin.model.derived;

import static akin.model.derived.PlannedRig.DIAL;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Missing;
import akin.model.quantity.Frequency;
import akin.model.quantity.Percent;
import akin.model.rig.Dimming;
import akin.model.rig.LightKind;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Screen;
import akin.model.rig.Unit;
import akin.model.timing.Flashing;
import akin.model.timing.LightPulses;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ScreensAndFlashesTest {

    private static Frequency hertz(double value) {
        return new Frequency(value);
    }

    private static Rig rig(List<Screen> screens, List<Dimming> dimming, @Nullable Frequency flashes) {
        Scene scene = new Scene(
                0,
                "stage",
                null,
                Map.of(),
                List.of(LightKind.FLICKER_FREE),
                null,
                null,
                screens,
                dimming,
                flashes,
                null,
                List.of());
        return PlannedRig.at("24")
                .scene(scene)
                .shutter("180°", DIAL)
                .shutter("180°", DIAL)
                .rig();
    }

    private static ExposureTime time(Unit unit) {
        return (ExposureTime) ExposureTime.derive(unit).get(0);
    }

    @Test
    void aScreenMovesBothShuttersToWholeRefreshes() {
        Rig rig = rig(List.of(new Screen("monitor", hertz(60))), List.of(), null);
        Unit hero = rig.units().get(0);
        ScreenBar bar = ScreenBar.worst(rig, hero, time(hero)).get(0);
        assertThat(bar.percentOff()).isCloseTo(25, within(1e-9));
        assertThat(bar.fixes(rig, hero))
                .extracting("key")
                .containsExactly("set-together", "set-shutter", "drive-screen");
        assertThat(bar.fixes(rig, hero).get(0).edits()).extracting("to").containsExactly("144°", "144°");
    }

    /** Arithmetic: at the frequency that the formula gives, every longer or shorter rest of a pulse stays within the limit. */
    @Test
    void fromTheFrequencyGivenNoRestOfAPulseShows() {
        BigFraction time = BigFraction.of(1, 48);
        assertThat(LightPulses.pulseHzFor(time, 0.5, 1)).isCloseTo(4800, within(1e-6));
        for (double on : new double[] {0.1, 0.5, 0.9}) {
            double least = LightPulses.pulseHzFor(time, on, 1);
            double worst = 0;
            for (int rest = 0; rest < 50; rest++) {
                BigFraction pulses = BigFraction.from(Math.ceil(least) + rest);
                worst = Math.max(worst, LightPulses.switchedBandingPercent(time, pulses, on));
            }
            assertThat(worst).isLessThanOrEqualTo(1).isGreaterThan(0.9);
        }
    }

    @Test
    void theWorstOfSeveralLightsIsTaken() {
        Dimming slow = new Dimming(hertz(500), new Percent(50));
        Dimming fast = new Dimming(hertz(20_000), new Percent(50));
        Rig rig = rig(List.of(), List.of(fast, slow), null);
        Unit hero = rig.units().get(0);
        assertThat(DimmedFlicker.worst(rig, hero, time(hero)).get(0).light().path())
                .isEqualTo("scenes.0.dimming.1");
    }

    @Test
    void whatNobodyAskedIsMissingOnlyWhereItIsPlanned() {
        Rig asked = rig(List.of(new Screen(null, null)), List.of(new Dimming(hertz(500), null)), null);
        Unit hero = asked.units().get(0);
        assertThat(ScreenInShot.derive(asked, hero)).extracting("path").containsExactly("scenes.0.screens.0.refresh");
        assertThat(DimmedLight.derive(asked, hero))
                .singleElement()
                .isInstanceOfSatisfying(Missing.class, m -> assertThat(m.path()).isEqualTo("scenes.0.dimming.0.duty"));
        Rig plain = rig(List.of(), List.of(), null);
        assertThat(ScreenInShot.derive(plain, hero)).isEmpty();
        assertThat(DimmedLight.derive(plain, hero)).isEmpty();
        assertThat(FlashingLight.derive(plain, hero)).isEmpty();
    }

    @Test
    void lightIsOnForPartOfACycle() {
        assertThatThrownBy(() -> new Dimming(null, new Percent(0))).hasMessageContaining("up to 100 %");
        assertThatThrownBy(() -> new Dimming(null, new Percent(101))).hasMessageContaining("up to 100 %");
    }

    /** W3C, Understanding WCAG 2.0, "Three Flashes or Below Threshold": no more than three flashes in any one second. */
    @Test
    void threeFlashesASecondAreTheMost() {
        assertThat(Flashing.exceeds(3)).isFalse();
        assertThat(Flashing.exceeds(3.01)).isTrue();
        Rig rig = rig(List.of(), List.of(), hertz(4));
        assertThat(rig.units())
                .extracting(
                        unit -> ((FlashingLight) FlashingLight.derive(rig, unit).get(0)).speaks(rig))
                .containsExactly(true, false);
        assertThat(Set.of(((FlashingLight)
                                FlashingLight.derive(rig, rig.units().get(0)).get(0))
                        .tooMany()))
                .containsExactly(true);
    }
}
