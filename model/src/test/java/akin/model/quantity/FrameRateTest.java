package akin.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FrameRateTest {
    /**
     * Source: liquisearch.com, "SMPTE timecode": the rate called 29.97 is 30/1.001; its relatives follow by the same factor.
     */
    @ParameterizedTest
    @CsvSource({
        "23.976, 24000, 23.976",
        "23.98, 24000, 23.976",
        "29.97, 30000, 29.97",
        "47.95, 48000, 47.95",
        "47.952, 48000, 47.95",
        "59.94, 60000, 59.94",
        "119.88, 120000, 119.88",
        "239.76, 240000, 239.76"
    })
    void aWellKnownDecimalIsAThousandAndFirstFraction(String decimal, long numerator, String spoken) {
        FrameRate rate = FrameRate.parse(decimal);
        assertThat(rate.numerator() * 1001).isEqualTo(numerator * rate.denominator());
        assertThat(rate.perSecond()).isEqualTo(numerator / 1000.0 / 1.001, within(1e-12));
        assertThat(rate.perSecond()).isEqualTo(Double.parseDouble(decimal), within(0.005));
        assertThat(rate.spoken()).isEqualTo(spoken);
        assertThat(FrameRate.parse(rate.spoken())).isEqualTo(rate);
    }

    @Test
    void isKeptInLowestTerms() {
        assertThat(FrameRate.of(48, 2)).isEqualTo(FrameRate.of(24, 1)).hasToString("24");
        assertThat(FrameRate.of(24000, 1001).frameSeconds()).isEqualTo(BigFraction.of(1001, 24000));
        assertThat(FrameRate.of(25, 2).spoken()).isEqualTo("12.5");
        assertThat(FrameRate.of(2_000_000_000_000L, 1_000_000_000L)).hasToString("2000");
    }

    @Test
    void anUnknownDecimalIsRefusedWithItsNeighbours() {
        assertThatThrownBy(() -> FrameRate.parse("23.9"))
                .hasMessageContaining("\"23.9\" is not a frame rate")
                .hasMessageContaining("23.976 (24000/1001) and 24");
        assertThatThrownBy(() -> FrameRate.parse("29.9")).hasMessageContaining("29.97 (30000/1001) and 30");
        assertThatThrownBy(() -> FrameRate.parse("12.5")).hasMessageContaining("as a fraction");
    }

    @Test
    void aDecimalCommaIsPointedOut() {
        assertThatThrownBy(() -> FrameRate.parse("23,976")).hasMessageEndingWith("; write 23.976");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.5", "2001", "1/2", "4001/2", "24/0", "0/0", "-24", "999999999"})
    void keepsToItsRange(String text) {
        assertThatThrownBy(() -> FrameRate.parse(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("from 1 to 2000 frames per second");
    }

    @Test
    void refusesPartsTooLongToCompareExactly() {
        assertThatThrownBy(() -> FrameRate.of(1_000_000_007L, 1_000_000)).hasMessageContaining("at most nine digits");
        assertThatThrownBy(() -> FrameRate.of(Long.MIN_VALUE, 1)).isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> FrameRate.of(24, Long.MIN_VALUE)).isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> FrameRate.of(-24, -1)).isInstanceOf(QuantityException.class);
    }

    @Test
    void isOrderedAsItsFraction() {
        Random random = new Random(7);
        Subject rates = Subject.all().findFirst().orElseThrow();
        for (int i = 0; i < 2000; i++) {
            FrameRate one = (FrameRate) rates.made().apply(random);
            FrameRate other = (FrameRate) rates.made().apply(random);
            assertThat(Integer.signum(one.compareTo(other)))
                    .isEqualTo(one.fraction().compareTo(other.fraction()));
            assertThat(one.compareTo(other) == 0).isEqualTo(one.equals(other));
        }
        assertThat(FrameRate.parse("23.976")).isLessThan(FrameRate.parse("24"));
        assertThat(FrameRate.of(999_999_999, 500_000)).isLessThan(FrameRate.of(2000, 1));
    }
}
