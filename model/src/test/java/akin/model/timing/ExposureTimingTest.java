package akin.model.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class ExposureTimingTest {
    private static final BigFraction NTSC_FILM = BigFraction.of(24000, 1001);

    @Test
    void halfTurnAt24IsA48th() {
        // gregssandbox.com, "Effect of shutter angle": 180 degrees, 1/48 s
        assertThat(ExposureTiming.seconds(BigFraction.of(180), BigFraction.of(24)))
                .isEqualTo(BigFraction.of(1, 48));
    }

    @Test
    void halfTurnAtSlowed24IsJustLonger() {
        // common practice, no source
        assertThat(1000 * ExposureTiming.seconds(BigFraction.of(180), NTSC_FILM).doubleValue())
                .isCloseTo(20.854, within(0.0005));
    }

    @Test
    void aFiftiethAtSlowed24IsNoRoundAngle() {
        assertThat(ExposureTiming.exactDegrees(BigFraction.of(1, 50), BigFraction.of(24)))
                .isEqualTo(BigFraction.of(864, 5));
        assertThat(ExposureTiming.degrees(BigFraction.of(1, 50), NTSC_FILM)).isCloseTo(172.627, within(0.0005));
    }

    @Test
    void differenceIsThatOfTheLongerToTheShorter() {
        BigFraction a = BigFraction.of(1, 48);
        BigFraction b = BigFraction.of(1, 60);
        assertThat(ExposureTiming.percentApart(a, b)).isEqualTo(25);
        assertThat(ExposureTiming.percentApart(b, a)).isEqualTo(25);
        assertThat(ExposureTiming.percentApart(a, a)).isZero();
    }

    @Test
    void angleAndTimeAreInverse() {
        Random random = new Random(41);
        for (int i = 0; i < 500; i++) {
            BigFraction angle = BigFraction.of(1 + random.nextInt(3600), 10);
            BigFraction rate = BigFraction.of(1 + random.nextInt(240_000), 1001);
            assertThat(ExposureTiming.exactDegrees(ExposureTiming.seconds(angle, rate), rate))
                    .isEqualTo(angle);
        }
    }

    @Test
    void refusesWhatIsNotAboveZero() {
        BigFraction one = BigFraction.ONE;
        BigFraction zero = BigFraction.ZERO;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ExposureTiming.seconds(zero, one))
                .withMessage("shutter angle must be above 0 degrees, was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ExposureTiming.seconds(one, zero))
                .withMessage("frame rate must be above 0 frames per second, was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ExposureTiming.degrees(one.negate(), one))
                .withMessageStartingWith("exposure time must be above 0 s");
        assertThatIllegalArgumentException().isThrownBy(() -> ExposureTiming.degrees(one, zero));
        assertThatIllegalArgumentException().isThrownBy(() -> ExposureTiming.percentApart(zero, one));
        assertThatIllegalArgumentException().isThrownBy(() -> ExposureTiming.percentApart(one, zero));
    }
}
