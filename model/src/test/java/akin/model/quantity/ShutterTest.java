package akin.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import akin.published.PublishedTable;
import akin.published.PublishedTable.Row;
import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShutterTest {
    private static final FrameRate FILM = FrameRate.of(24, 1);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "15", "14.985", "23.976", "24", "25", "29.97", "30", "47.95", "48", "50", "59.94", "60", "71.93", "72",
                "95.9", "96", "100", "119.88", "120", "200", "239.76", "240"
            })
    void halfATurnIsExactlyHalfAFrame(String spoken) {
        FrameRate rate = FrameRate.parse(spoken);
        Shutter half = Shutter.parse("180°");
        Shutter time = Shutter.parse(rate.denominator() + "/" + 2 * rate.numerator() + " s");
        assertThat(half.sameTime(time, rate)).isTrue();
        assertThat(time.sameTime(half, rate)).isTrue();
        assertThat(time.degrees(rate)).isEqualTo(180.0);
        Shutter.Time slightlyLonger = new Shutter.Time(time.seconds(rate).add(BigFraction.of(1, 1_000_000_000_000L)));
        assertThat(half.sameTime(slightlyLonger, rate)).isFalse();
    }

    static List<Row> publishedExposures() {
        return PublishedTable.read("/akin/published/flicker-safe.csv").stream()
                .filter(row -> row.text("verdict").equals("angle-to-exposure"))
                .toList();
    }

    /** Published: gregssandbox.com, "Effect of shutter angle"; the printed 1/n is rounded, hence 0.5 %. */
    @ParameterizedTest
    @MethodSource("publishedExposures")
    void angleGivesThePublishedExposure(Row row) {
        FrameRate rate = FrameRate.parse(row.text("fps"));
        Shutter shutter = Shutter.parse(row.text("shutter_angle_deg") + "°");
        Shutter printed = Shutter.parse(row.text("note").replace("published exposure ", ""));
        double seconds = shutter.seconds(rate).doubleValue();
        assertThat(seconds)
                .isCloseTo(printed.seconds(rate).doubleValue(), Percentage.withPercentage(0.5))
                .isEqualTo(row.number("exposure_s"), within(1e-9));
        assertThat(shutter.degrees(rate)).isEqualTo(row.number("shutter_angle_deg"), within(1e-12));
    }

    /** Published: provideocoalition.com, "Flicker: Why On-Set Monitors Fail Us" (144° is 1/60 s); 172.8° by arithmetic. */
    @ParameterizedTest
    @CsvSource({"144°, 1/60", "172.8°, 1/50", "180°, 1/48", "360°, 1/24", "86.4 deg, 10 ms"})
    void sameTimeAtTwentyFour(String angle, String time) {
        assertThat(Shutter.parse(angle).sameTime(Shutter.parse(time), FILM)).isTrue();
        assertThat(Shutter.parse(angle).sameTime(Shutter.parse(time), FrameRate.parse("23.976")))
                .isFalse();
    }

    @Test
    void aTimeMayBeLongerThanTheFrame() {
        assertThat(Shutter.parse("1/12").degrees(FILM)).isEqualTo(720.0);
    }

    @Test
    void aNumberAloneCouldBeEither() {
        assertThatThrownBy(() -> Shutter.parse("180")).isInstanceOfSatisfying(QuantityException.class, e -> {
            assertThat(e.quantity()).isEqualTo("shutter");
            assertThat(e.read()).isEqualTo("180");
            assertThat(e.allowed()).isEqualTo(Shutter.ALLOWED);
            assertThat(e.hint()).isEqualTo("an angle 180° or a time 1/180?");
        });
        assertThatThrownBy(() -> Shutter.parse("50")).hasMessageContaining("50° or a time 1/50");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0°", "360.1°", "0 s", "10.1 s", "1/0", "0/5", "1/0.0", "11/1", "-180°", "1/-50"})
    void keepsToItsRange(String text) {
        assertThatThrownBy(() -> Shutter.parse(text)).isInstanceOf(QuantityException.class);
    }

    @Test
    void equalHoweverWritten() {
        assertThat(Shutter.parse("180.00°")).isEqualTo(Shutter.parse("180 deg"));
        assertThat(new Shutter.Angle(new BigDecimal("1.8E+2"))).isEqualTo(Shutter.parse("180°"));
        assertThat(Shutter.parse("2/100")).isEqualTo(Shutter.parse("20 ms")).hasToString("1/50");
        assertThat(new Shutter.Time(BigFraction.of(-1, -50))).isEqualTo(Shutter.parse("1/50"));
    }

    @Test
    void hugeScalesAreRefusedAtOnce() {
        assertThatThrownBy(() -> new Shutter.Angle(new BigDecimal("1E-1000000000")))
                .isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> new Shutter.Angle(new BigDecimal("1E+1000000000")))
                .isInstanceOf(QuantityException.class);
    }
}
