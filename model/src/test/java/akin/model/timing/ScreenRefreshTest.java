package akin.model.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class ScreenRefreshTest {

    @Test
    void exposureHoldsWholeRefreshes() {
        // common practice, no source
        assertThat(ScreenRefresh.exposureSeconds(1, BigFraction.of(60))).isEqualTo(BigFraction.of(1, 60));
        assertThat(ScreenRefresh.refreshes(BigFraction.of(1, 48), BigFraction.of(60)))
                .isEqualTo(1.25);
        assertThat(ScreenRefresh.clean(BigFraction.of(1, 50), BigFraction.of(50)))
                .isTrue();
        assertThat(ScreenRefresh.clean(BigFraction.of(1, 50), BigFraction.of(100)))
                .isTrue();
        assertThat(ScreenRefresh.clean(BigFraction.of(1, 50), BigFraction.of(60)))
                .isFalse();
        assertThat(ScreenRefresh.clean(BigFraction.of(1, 100), BigFraction.of(50)))
                .isFalse();
    }

    @Test
    void saysHowFarOffAndWhatIsNearest() {
        BigFraction video = BigFraction.of(60000, 1001);
        assertThat(ScreenRefresh.percentOff(BigFraction.of(1, 60), BigFraction.of(60)))
                .isZero();
        assertThat(ScreenRefresh.percentOff(BigFraction.of(1, 60), video)).isCloseTo(0.0999, within(5e-5));
        assertThat(ScreenRefresh.percentOff(BigFraction.of(1, 48), BigFraction.of(60)))
                .isEqualTo(25);
        assertThat(ScreenRefresh.percentOff(BigFraction.of(1, 240), BigFraction.of(60)))
                .isEqualTo(75);
        assertThat(ScreenRefresh.nearestCleanTime(BigFraction.of(1, 48), BigFraction.of(60)))
                .isEqualTo(BigFraction.of(1, 60));
        assertThat(ScreenRefresh.nearestCleanTime(BigFraction.of(1, 1000), BigFraction.of(60)))
                .isEqualTo(BigFraction.of(1, 60));
    }

    @Test
    void everyExposureItGivesIsClean() {
        Random random = new Random(47);
        for (int i = 0; i < 300; i++) {
            BigFraction refresh = BigFraction.of(1 + random.nextInt(400_000), 1001);
            int n = 1 + random.nextInt(50);
            BigFraction exposure = ScreenRefresh.exposureSeconds(n, refresh);
            assertThat(ScreenRefresh.clean(exposure, refresh)).isTrue();
            assertThat(ScreenRefresh.refreshes(exposure, refresh)).isEqualTo(n);
            assertThat(ScreenRefresh.percentOff(exposure, refresh)).isZero();
            assertThat(ScreenRefresh.nearestCleanTime(exposure, refresh)).isEqualTo(exposure);
        }
    }

    @Test
    void refusesWhatIsOutOfRange() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ScreenRefresh.exposureSeconds(0, BigFraction.of(60)))
                .withMessageContaining("1 or above");
        assertThatIllegalArgumentException().isThrownBy(() -> ScreenRefresh.exposureSeconds(1, BigFraction.ZERO));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ScreenRefresh.percentOff(BigFraction.ONE, BigFraction.ZERO));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ScreenRefresh.nearestCleanTime(BigFraction.ZERO, BigFraction.ONE));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ScreenRefresh.clean(BigFraction.ZERO, BigFraction.of(60)));
    }
}
