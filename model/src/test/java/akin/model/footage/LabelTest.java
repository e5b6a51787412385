package akin.model.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import akin.model.timing.Timecode;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabelTest {

    /** Labels of smpte-timecode 1.3.6; see the README beside the table. */
    @ParameterizedTest
    @CsvFileSource(resources = "/akin/published/timecode.csv", numLinesToSkip = 1)
    void namesTheFrameThatAnIndependentImplementationSays(long frameNumber, String rate, boolean drop, String label) {
        BigFraction exact = BigFraction.parse(rate);
        Label read = new Label(label);
        assertThat(read.drop()).isEqualTo(drop);
        assertThat(read.frameNumber(exact)).hasValue(frameNumber % Timecode.framesPerDay(exact, drop));
        assertThat(Integer.parseInt(label.substring(9))).isEqualTo(read.frame());
    }

    @Test
    void aLabelOfAnotherRateNamesNoFrame() {
        assertThat(new Label("10:00:00:24").frameNumber(BigFraction.of(24))).isEmpty();
        assertThat(new Label("10:01:00;00").frameNumber(BigFraction.of(30000, 1001)))
                .isEmpty();
        assertThat(new Label("10:00:00;00").frameNumber(BigFraction.of(25))).isEmpty();
        assertThat(new Label("10:00:00:00").frameNumber(BigFraction.of(12345, 100)))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "24:00:00:00", "10:60:00:00", "10:00:60:00", "10:00:00", "10:00:00.00", "1:00:00:00"})
    void whatIsNoTimecodeIsRefused(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Label(text)).withMessageContaining("HH:MM:SS:FF");
    }
}
