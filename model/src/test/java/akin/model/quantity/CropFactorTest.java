package akin.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import akin.model.optics.CropReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CropFactorTest {

    @Test
    void readsTheFactorWithTheSideItIsCountedBy() {
        assertThat(CropFactor.parse("1.5 by width")).isEqualTo(new CropFactor(1.5, CropReference.WIDTH));
        assertThat(CropFactor.parse("1.6 by diagonal")).isEqualTo(new CropFactor(1.6, CropReference.DIAGONAL));
        assertThat(CropFactor.parse("1.5 by width")).hasToString("1.5 by width");
        assertThat(CropFactor.parse("2.0 by diagonal")).hasToString("2 by diagonal");
    }

    @Test
    void aNumberAloneIsNotGuessed() {
        assertThatExceptionOfType(QuantityException.class)
                .isThrownBy(() -> CropFactor.parse("1.5"))
                .withMessageContaining("1.5 by width")
                .withMessageContaining("1.5 by diagonal");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1.5 by height", "1.5x", "by width", "0.01 by width", "30 by width", "-1 by width"})
    void refusesWhatItCannotMean(String text) {
        assertThatExceptionOfType(QuantityException.class).isThrownBy(() -> CropFactor.parse(text));
    }

    /** 1.534 is a crop factor of the lensfun database (1c8b8f07), which counts by the diagonal: 28.2051 mm. */
    @Test
    void standsForAnArea() {
        Area counted = CropFactor.parse("1.534 by diagonal").area(1.5);
        assertThat(counted.diagonalMm()).isCloseTo(28.2051, within(1e-4));
        Area wide = CropFactor.parse("1.5 by width").area(16 / 9.0);
        assertThat(wide.widthMm()).isEqualTo(24);
        assertThat(wide.heightMm()).isCloseTo(13.5, within(1e-9));
    }
}
