package akin.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NeutralDensityTest {
    /** Published: optical tables named in the file; the stops a filter is sold as are rounded from log10(2) = 0.30103. */
    @ParameterizedTest
    @CsvFileSource(resources = "/akin/published/nd-density.csv", numLinesToSkip = 1)
    void densityGivesThePublishedStops(String density, String sold, double transmittance, double exactStops) {
        NeutralDensity filter = NeutralDensity.parse("ND " + density);
        assertThat(filter.stops()).isEqualTo(exactStops, within(0.01));
        assertThat(filter.stops()).isEqualTo(Stops.parse(sold + " stops").value(), within(0.05));
        assertThat(Math.pow(2, -filter.stops())).isEqualTo(transmittance, within(1e-6));
    }

    /** Common practice, no source: a filter factor is light in over light out. */
    @ParameterizedTest
    @CsvSource({
        "ND2, 2",
        "ND 4, 4",
        "ND8, 8",
        "ND64, 64",
        "ND1024, 1024",
        "ND10, 10",
        "ND 100, 100",
        "ND1000, 1000",
        "ND400, 400"
    })
    void aCustomaryFactorIsAFactor(String text, double factor) {
        assertThat(Math.pow(2, NeutralDensity.parse(text).stops())).isEqualTo(factor, within(1e-9 * factor));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ND 3", "ND 1", "ND 5", "ND6"})
    void aWholeNumberThatIsNoFactorCouldBeEither(String text) {
        String number = text.replaceAll("[^0-9]", "");
        assertThatThrownBy(() -> NeutralDensity.parse(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("ND " + number + ".0")
                .hasMessageContaining(number + " stop");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ND 0",
                "ND 7",
                "ND 11",
                "ND 6.1",
                "ND -0.6",
                "25 stops",
                "1/0 stop",
                "0/0 stop",
                "-1 stop",
                "0.6",
                "ND"
            })
    void refusesWhatNoFilterIs(String text) {
        assertThatThrownBy(() -> NeutralDensity.parse(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("neutral filter");
    }

    @Test
    void stopsAndDensityAreOneThing() {
        assertThat(NeutralDensity.ofStops(2).stops()).isEqualTo(2, within(1e-12));
        assertThat(NeutralDensity.parse("ND4")).isEqualTo(NeutralDensity.parse("2 stops"));
        assertThat(NeutralDensity.parse("ND 0.6")).isNotEqualTo(NeutralDensity.parse("2 stops"));
        assertThat(NeutralDensity.parse("clear").stops()).isZero();
        assertThat(new NeutralDensity(-0.0)).isEqualTo(new NeutralDensity(0));
    }
}
