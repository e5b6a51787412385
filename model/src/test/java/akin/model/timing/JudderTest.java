package akin.model.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class JudderTest {

    @Test
    void guidelineIsSevenSecondsAt24() {
        // common practice, no source
        assertThat(Judder.guidelineSeconds(24)).isEqualTo(7);
        assertThat(Judder.guidelineSeconds(48)).isEqualTo(3.5);
        assertThat(Judder.fastestPan(42, 24)).isCloseTo(6, within(1e-12));
    }

    @Test
    void crossesThePicture() {
        assertThat(Judder.secondsToCross(40, 10)).isEqualTo(4);
        assertThat(Judder.percentPerFrame(42, 6, 24)).isCloseTo(0.595, within(0.0005));
    }

    @Test
    void guidelineKeepsTheStepAtEveryRate() {
        double at24 = Judder.percentPerFrame(40, Judder.fastestPan(40, 24), 24);
        for (double rate : new double[] {12, 25, 50, 59.94, 120}) {
            assertThat(Judder.percentPerFrame(40, Judder.fastestPan(40, rate), rate))
                    .isCloseTo(at24, within(1e-12));
        }
    }

    @Test
    void refusesWhatIsOutOfRange() {
        assertThatIllegalArgumentException().isThrownBy(() -> Judder.secondsToCross(0, 10));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Judder.secondsToCross(40, 0))
                .withMessageContaining("speed of the pan");
        assertThatIllegalArgumentException().isThrownBy(() -> Judder.guidelineSeconds(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Judder.fastestPan(-1, 24));
        assertThatIllegalArgumentException().isThrownBy(() -> Judder.percentPerFrame(40, 10, 0));
    }
}
