package akin.model.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class FrameDriftTest {
    private static final BigFraction FILM = BigFraction.of(24);
    private static final BigFraction SLOWED = BigFraction.of(24000, 1001);

    @Test
    void filmAgainstSlowedFilm() {
        // arithmetic on the published rates; 3.59 s per hour also in liquisearch.com, "SMPTE timecode"
        assertThat(FrameDrift.secondsPerFrameSlip(FILM, SLOWED)).isCloseTo(41.708, within(0.0005));
        assertThat(FrameDrift.framesPerHour(SLOWED, FILM)).isCloseTo(86.3137, within(5e-5));
        assertThat(FrameDrift.secondsPerHour(SLOWED, FILM)).isCloseTo(3.5964, within(5e-5));
        assertThat(FrameDrift.secondsPerHour(FILM, SLOWED)).isCloseTo(3.5964, within(5e-5));
    }

    @Test
    void equalRatesNeverSlip() {
        assertThat(FrameDrift.secondsPerFrameSlip(SLOWED, BigFraction.of(48000, 2002)))
                .isInfinite();
        assertThat(FrameDrift.framesPerHour(SLOWED, SLOWED)).isZero();
        assertThat(FrameDrift.secondsPerHour(SLOWED, SLOWED)).isZero();
    }

    @Test
    void clocksDrift() {
        // arithmetic; a page on field recording (sei8404.com) rounds the seven hours to about half a frame
        assertThat(FrameDrift.frames(1, 24, 24)).isCloseTo(2.0736, within(1e-9));
        assertThat(FrameDrift.frames(1, 7, 24)).isCloseTo(0.6048, within(1e-9));
        // time-nuts list, 12 April 2018: one frame of 1/30 s in 24 h is 0.3858 ppm
        assertThat(FrameDrift.frames(0.3858, 24, 30)).isCloseTo(1, within(1e-4));
        assertThat(FrameDrift.worstPpm(1, 2.5)).isEqualTo(3.5);
        assertThat(FrameDrift.frames(0, 24, 24)).isZero();
    }

    @Test
    void timeToTheNextJam() {
        assertThat(FrameDrift.hoursUntil(0.5, 1, 24)).isCloseTo(5.787, within(0.0005));
        assertThat(FrameDrift.hoursUntil(0.5, 0, 24)).isInfinite();
    }

    @Test
    void driftAndTimeAreInverse() {
        Random random = new Random(42);
        for (int i = 0; i < 500; i++) {
            double ppm = 0.01 + 50 * random.nextDouble();
            double rate = 1 + 119 * random.nextDouble();
            double tolerance = 0.1 + 3 * random.nextDouble();
            double hours = FrameDrift.hoursUntil(tolerance, ppm, rate);
            assertThat(FrameDrift.frames(ppm, hours, rate)).isCloseTo(tolerance, within(1e-9));
        }
    }

    @Test
    void refusesWhatIsOutOfRange() {
        assertThatIllegalArgumentException().isThrownBy(() -> FrameDrift.framesPerHour(BigFraction.ZERO, FILM));
        assertThatIllegalArgumentException().isThrownBy(() -> FrameDrift.secondsPerHour(FILM, FILM.negate()));
        assertThatIllegalArgumentException().isThrownBy(() -> FrameDrift.frames(-1, 1, 24));
        assertThatIllegalArgumentException().isThrownBy(() -> FrameDrift.frames(Double.NaN, 1, 24));
        assertThatIllegalArgumentException().isThrownBy(() -> FrameDrift.frames(1, Double.POSITIVE_INFINITY, 24));
        assertThatIllegalArgumentException().isThrownBy(() -> FrameDrift.frames(1, 1, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FrameDrift.hoursUntil(0, 1, 24))
                .withMessageContaining("tolerated drift");
        assertThatIllegalArgumentException().isThrownBy(() -> FrameDrift.worstPpm(1, -1));
    }
}
