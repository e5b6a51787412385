package akin.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LevelTest {
    /** Published: Sony, S-Log2 technical paper V1.0: black, white and the highest code at 10, 12 and 16 bits. */
    @ParameterizedTest
    @CsvSource({"10, 64, 940, 1023", "12, 256, 3760, 4095", "16, 4096, 60160, 65535"})
    void legalBlackAndWhite(int bits, int black, int white, int top) {
        assertThat(new Level(0, Level.Range.LEGAL).code(bits)).isEqualTo(black);
        assertThat(new Level(1, Level.Range.LEGAL).code(bits)).isEqualTo(white);
        assertThat(Level.clipped(2, Level.Range.LEGAL).code(bits)).isBetween(top - (1 << (bits - 10)), top);
        assertThat(new Level(0, Level.Range.FULL).code(bits)).isZero();
        assertThat(new Level(1, Level.Range.FULL).code(bits)).isEqualTo(top);
    }

    /** Published: the same paper: the highest code is 109.5 % of the legal range. */
    @Test
    void theTopIsAbove109() {
        assertThat(new Level(1, Level.Range.FULL).toLegal().share()).isEqualTo(1.095, within(5e-4));
    }

    /** Published: makers' printed tables, 18 % grey of one log encoding at code 420 is 41 %, 90 % white at 598 is 61 %. */
    @ParameterizedTest
    @CsvSource({"95, 0.04", "420, 0.41", "598, 0.61"})
    void codesAndPerCent(int code, double legal) {
        Level level = Level.parse("code " + code + " of 1023");
        assertThat(level.code(10)).isEqualTo(code);
        assertThat(level.toLegal().share()).isEqualTo(legal, within(0.005));
        assertThat(level.toLegal().code(10)).isEqualTo(code);
    }

    @Test
    void everyCodeSurvivesTheConversions() {
        for (int code = 0; code <= 1023; code++) {
            Level full = Level.parse("code " + code + " of 1023");
            Level legal = full.toLegal();
            assertThat(legal.code(10)).isEqualTo(code);
            assertThat(legal.toFull().share()).isEqualTo(full.share(), within(1e-12));
            assertThat(legal.range()).isEqualTo(Level.Range.LEGAL);
        }
    }

    @Test
    void perCentAloneIsLegal() {
        assertThat(Level.parse("41 %")).isEqualTo(Level.parse("41 IRE")).isEqualTo(new Level(0.41, Level.Range.LEGAL));
        assertThat(Level.parse("41 % full")).isEqualTo(new Level(0.41, Level.Range.FULL));
        assertThatThrownBy(() -> Level.parse("41")).hasMessageEndingWith("write 41 % or 41 % full");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"110 %", "-8 %", "101 % full", "-1 % full", "code 1024 of 1023", "code 5 of 1000", "code 5"})
    void keepsToWhatASignalCarries(String text) {
        assertThatThrownBy(() -> Level.parse(text)).isInstanceOf(QuantityException.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {7, 17, 0, -1})
    void aCodeHasEightToSixteenBits(int bits) {
        Level level = new Level(0.5, Level.Range.FULL);
        assertThatThrownBy(() -> level.code(bits)).isInstanceOf(IllegalArgumentException.class);
    }
}
