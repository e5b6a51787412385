package akin.model.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimecodeTest {
    private static final BigFraction RATE_30 = BigFraction.of(30000, 1001);
    private static final BigFraction RATE_60 = BigFraction.of(60000, 1001);

    /** Labels given by an independent implementation, smpte-timecode 1.3.6. */
    @ParameterizedTest
    @CsvFileSource(resources = "/akin/published/timecode.csv", numLinesToSkip = 1)
    void agreesWithAnIndependentImplementation(long frameNumber, String rate, boolean dropFrame, String label) {
        BigFraction exact = BigFraction.parse(rate);
        assertThat(Timecode.label(frameNumber, exact, dropFrame)).isEqualTo(label);
        assertThat(Timecode.frameNumber(label, exact)).isEqualTo(frameNumber % Timecode.framesPerDay(exact, dropFrame));
    }

    @Test
    void dayOfDropFrameLabels() {
        // derived from the rule in dilettantesdictionary.org: 108 labels left out in an hour
        assertThat(Timecode.framesPerDay(RATE_30, true)).isEqualTo(2_589_408).isEqualTo((108_000 - 108) * 24);
        assertThat(Timecode.framesPerDay(RATE_30, false)).isEqualTo(2_592_000);
        assertThat(Timecode.framesPerDay(BigFraction.of(25), false)).isEqualTo(25 * 86_400);
    }

    @Test
    void labelsFallBehindTheClock() {
        // liquisearch.com, "SMPTE timecode": 3.59 s an hour; a non-drop hour lasts 3603.6 s
        assertThat(Timecode.secondsBehindPerHour(RATE_30, false)).isCloseTo(3.5964, within(5e-5));
        // 2589408 frames last 86399.9136 s
        assertThat(24 * Timecode.secondsBehindPerHour(RATE_30, true)).isCloseTo(-0.0864, within(1e-6));
        assertThat(Timecode.secondsBehindPerHour(BigFraction.of(25), false)).isZero();
    }

    @ParameterizedTest
    @CsvSource({"30000/1001,true", "60000/1001,true", "30000/1001,false", "24000/1001,false", "25,false", "60,false"})
    void labelsAndNumbersAreInverseAndInOrder(String text, boolean dropFrame) {
        BigFraction rate = BigFraction.parse(text);
        long day = Timecode.framesPerDay(rate, dropFrame);
        Random random = new Random(48);
        for (int i = 0; i < 3000; i++) {
            long n = (long) (random.nextDouble() * (day - 1));
            String label = Timecode.label(n, rate, dropFrame);
            String next = Timecode.label(n + 1, rate, dropFrame);
            assertThat(Timecode.frameNumber(label, rate)).isEqualTo(n);
            assertThat(next).isGreaterThan(label);
        }
        assertThat(Timecode.label(day, rate, dropFrame)).isEqualTo(Timecode.label(0, rate, dropFrame));
    }

    @Test
    void neverGivesALabelThatIsLeftOut() {
        for (long n = 0; n < 20 * 1800; n++) {
            assertThat(Timecode.label(n, RATE_30, true)).doesNotMatch("..:.[1-9]:00;0[01]");
        }
    }

    @Test
    void namesTheNextLabelWhereOneIsLeftOut() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Timecode.frameNumber("00:01:00;01", RATE_30))
                .withMessageContaining("leaves out")
                .withMessageContaining("00:01:00;02");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Timecode.frameNumber("00:59:00;03", RATE_60))
                .withMessageContaining("00:59:00;04");
        assertThat(Timecode.frameNumber("00:10:00;01", RATE_30)).isEqualTo(17_983);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "1:00:00:00",
                "01:00:00",
                "01:00:00.00",
                "24:00:00:00",
                "00:60:00:00",
                "00:00:60:00",
                "00:00:00:30",
                "00:00:00:00 ",
                "-1:00:00:00"
            })
    void refusesWhatIsNoLabel(String label) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Timecode.frameNumber(label, RATE_30))
                .withMessageContaining("timecode");
    }

    @Test
    void refusesRatesWithoutTimecode() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Timecode.label(0, BigFraction.of(2997, 100), false))
                .withMessageContaining("2997 / 100");
        assertThatIllegalArgumentException().isThrownBy(() -> Timecode.label(0, BigFraction.of(120), false));
        assertThatIllegalArgumentException().isThrownBy(() -> Timecode.label(0, BigFraction.ZERO, false));
        assertThatIllegalArgumentException().isThrownBy(() -> Timecode.label(-1, RATE_30, false));
    }

    @Test
    void dropFrameCountingIsForTwoRates() {
        assertThat(Timecode.canDropFrame(RATE_30)).isTrue();
        assertThat(Timecode.canDropFrame(RATE_60)).isTrue();
        for (BigFraction rate :
                new BigFraction[] {BigFraction.of(30), BigFraction.of(24000, 1001), BigFraction.of(25)}) {
            assertThat(Timecode.canDropFrame(rate)).isFalse();
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Timecode.label(0, rate, true))
                    .withMessageContaining("30000/1001 and 60000/1001");
            assertThatIllegalArgumentException().isThrownBy(() -> Timecode.frameNumber("00:00:00;00", rate));
        }
    }
}
