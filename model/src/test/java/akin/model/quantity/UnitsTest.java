package akin.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import akin.published.PublishedTable;
import akin.published.PublishedTable.Row;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The quantities that are a number with a unit. */
class UnitsTest {
    /** Published: colour-science's worked example of CCT to mired, 6500 K is 153.84615 mired. */
    @Test
    void miredIsAMillionOverKelvin() {
        assertThat(ColourTemperature.parse("6500 K").mired()).isEqualTo(153.84615, within(1e-5));
    }

    /** Arithmetic from the definition: 178.571 - 312.5; sold as a full blue correction of about -131 to -137. */
    @Test
    void shiftFromTungstenToDaylight() {
        double shift = ColourTemperature.parse("5600 K").mired()
                - ColourTemperature.parse("3200 K").mired();
        assertThat(shift).isEqualTo(-133.929, within(1e-3));
    }

    /** Published: pairs of colour temperatures before and after a blue filter, in the notes of the table. */
    @Test
    void shiftsOfPublishedPairs() {
        Pattern pair = Pattern.compile(".*\\(([0-9]+K) to ([0-9]+K)\\)");
        int pairs = 0;
        for (Row row : PublishedTable.read("/akin/published/filter-mired.csv")) {
            Matcher matcher = pair.matcher(row.text("source"));
            if (matcher.matches()) {
                double before = ColourTemperature.parse(matcher.group(1)).mired();
                double after = ColourTemperature.parse(matcher.group(2)).mired();
                assertThat(after - before).isEqualTo(row.number("mired_shift"), within(0.05));
                pairs++;
            }
        }
        assertThat(pairs).isEqualTo(4);
    }

    @Test
    void miredAndBack() {
        for (int kelvin = 1000; kelvin <= 40_000; kelvin += 7) {
            ColourTemperature white = new ColourTemperature(kelvin);
            assertThat(ColourTemperature.ofMired(white.mired())).isEqualTo(white);
        }
        assertThatThrownBy(() -> ColourTemperature.ofMired(0)).isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> ColourTemperature.ofMired(-100)).isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> ColourTemperature.ofMired(Double.NaN)).isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> ColourTemperature.parse("4300")).hasMessageContaining("write 4300 K");
    }

    /** Published: O'Reilly, "Practical Cinematography" ch. 20: 0.980 x 0.735 in is 24.892 x 18.669 mm. */
    @Test
    void anInchIsExactly() {
        assertThat(Length.parse("0.980 in").millimetres()).isEqualTo(24.892);
        assertThat(Length.parse("0.735 in").millimetres()).isEqualTo(18.669);
        assertThat(Length.parse("8 ft 2 in")).isEqualTo(Length.parse("98 in"));
    }

    /** Published: O'Reilly BKSTS Illustrated Dictionary, appendix C: 36 x 24 mm has a diagonal of 43.2666 mm. */
    @Test
    void diagonal() {
        assertThat(Area.parse("36.0 x 24.0 mm").diagonalMm()).isEqualTo(43.2666, within(5e-5));
    }

    @Test
    void metres() {
        assertThat(Length.ofMetres(1.001)).isEqualTo(Length.parse("1.001 m")).isEqualTo(new Length(1001));
        assertThat(Length.parse("240 cm").metres()).isEqualTo(2.4);
        assertThatThrownBy(() -> Length.ofMetres(Double.NaN)).isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> Length.ofMetres(Double.POSITIVE_INFINITY)).isInstanceOf(QuantityException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-5 mm", "0 mm", "1001 km", "−5 m"})
    void aLengthOutOfRangeIsToldTheRange(String text) {
        assertThatThrownBy(() -> Length.parse(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("more than 0 mm and at most 1000 km");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "50|write 50 mm or 50 m",
                "1,5 m|write 1.5 m",
                "1,500 mm|write 1.500 mm, or 1500 mm if thousands were meant",
                "8'|write 8 ft",
                "8' 2\"|write 8 ft 2 in",
                "1e3 mm|without an exponent",
                "50 MM|capital and small letters matter",
                ".5 m|a digit before and after the decimal point",
                "1 000 mm|without thousands separators",
                "٥ mm|the digits 0 to 9",
                "NaN mm|a plain decimal number",
                "0x5 mm|a plain decimal number"
            })
    void aWrongLengthIsToldWhatToWrite(String text, String hint) {
        assertThatThrownBy(() -> Length.parse(text))
                .isInstanceOfSatisfying(
                        QuantityException.class, e -> assertThat(e.hint()).contains(hint));
    }

    @Test
    void pictureShapes() {
        assertThat(PictureSize.parse("3840x2160").ratio()).isEqualTo(BigFraction.of(16, 9));
        assertThat(PictureSize.parse("4096x2160").aspect()).isEqualTo(1.8963, within(5e-5));
        assertThat(Aspect.parse("16:9").ratio())
                .isEqualTo(PictureSize.parse("1920x1080").aspect());
        assertThatThrownBy(() -> PictureSize.parse("3840x15")).hasMessageContaining("from 16 to 65536");
        assertThatThrownBy(() -> Aspect.parse("16:0")).isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> Aspect.parse("16/9")).hasMessageEndingWith("write 16:9");
    }

    /** IEC 80000-13 (from memory): a byte is 8 bits here, giga is 10^9, gibi 2^30. */
    @Test
    void bitsBytesAndTheirPrefixes() {
        assertThat(DataRate.parse("400 MB/s").bitsPerSecond()).isEqualTo(3.2e9);
        assertThat(DataRate.parse("400 Mbit/s").bitsPerSecond()).isEqualTo(4e8);
        assertThat(DataSize.parse("480 GiB").bytes()).isEqualTo(515_396_075_520.0);
        assertThat(DataSize.parse("512 GB").bytes()).isEqualTo(512e9);
        for (String text : new String[] {"400 M", "400 Mb", "400 Mb/s", "400 Mbps", "400 m", "400 MBps"}) {
            assertThatThrownBy(() -> DataRate.parse(text))
                    .as(text)
                    .hasMessageContaining("B/s or 400 ")
                    .hasMessageEndingWith("bit/s");
        }
    }

    /** The avoirdupois pound is 0.45359237 kg (international yard and pound agreement of 1959, from memory). */
    @Test
    void spansMassesAndTheRest() {
        assertThat(Mass.parse("2 lb").grams()).isEqualTo(907.18474);
        assertThat(Mass.parse("16 oz")).isEqualTo(Mass.parse("1 lb"));
        assertThat(Timespan.parse("250 µs")).isEqualTo(Timespan.parse("0.25 ms"));
        assertThat(Timespan.parse("40 min").milliseconds()).isEqualTo(2_400_000);
        assertThat(Timespan.parse("2 h")).isEqualTo(Timespan.parse("120 min"));
        assertThat(Frequency.parse("2 kHz").hertz()).isEqualTo(2000);
        assertThat(Stops.parse("1/3 stop").value()).isEqualTo(1 / 3.0);
        assertThat(Stops.parse("-1 1/3 stops").value()).isEqualTo(-4 / 3.0);
        assertThat(Stops.parse("1/6 stops").value()).isEqualTo(1 / 6.0);
        assertThatThrownBy(() -> Stops.parse("1/3")).hasMessageEndingWith("write 1/3 stop");
        assertThatThrownBy(() -> Temperature.parse("35")).hasMessageEndingWith("write 35 °C");
        assertThatThrownBy(() -> Tint.parse("+101")).hasMessageContaining("from -100 to +100");
    }

    @Test
    void aMessageQuotesLittleAndNothingInvisible() {
        String hostile = "\u202E50\n\u0007" + "x".repeat(300);
        assertThatThrownBy(() -> Length.parse(hostile)).isInstanceOfSatisfying(QuantityException.class, e -> {
            assertThat(e.read()).isEqualTo(hostile);
            assertThat(e.getMessage())
                    .startsWith("\"\\u{202e}50\\u{a}\\u{7}" + "x".repeat(59) + "…\" is not a length: write ")
                    .doesNotContain("\n", "\u202E", "\u0007");
        });
        assertThatThrownBy(() -> Length.parse("\uD800")).hasMessageStartingWith("\"\\u{d800}\" is not");
    }
}
