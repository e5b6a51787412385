package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.gear.Codec;
import akin.model.gear.Connector;
import akin.model.gear.Input;
import akin.model.quantity.FrameRate;
import akin.model.quantity.PictureSize;
import akin.model.timing.PictureTiming;
import akin.published.PublishedTable;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinkTest {

    private static final FrameRate FILM = FrameRate.parse("24");
    private static final FrameRate FRACTIONAL = FrameRate.parse("24000/1001");

    private static LinkSignal picture(int bits, String chroma, String size) {
        return new LinkSignal(Connector.SDI_12G, Codec.Kind.ENCODED, bits, chroma, PictureSize.parse(size));
    }

    /** Source of each row: sdi-links.csv. */
    @TestFactory
    List<DynamicTest> serialInterfacesCarryTheirNominalRate() {
        Map<String, Connector> links = Map.of(
                "HD-SDI", Connector.HD_SDI,
                "Dual-link HD-SDI", Connector.DUAL_HD_SDI,
                "3G-SDI", Connector.SDI_3G,
                "6G-SDI", Connector.SDI_6G,
                "12G-SDI", Connector.SDI_12G);
        List<PublishedTable.Row> rows = PublishedTable.read("sdi-links.csv").stream()
                .filter(row -> links.containsKey(row.text("link")))
                .toList();
        assertThat(rows).hasSize(links.size());
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    Connector connector = links.get(row.text("link"));
                    assertThat(connector.gigabits(FILM)).isEqualTo(row.number("nominal_gbps"));
                    assertThat(connector.gigabits(FRACTIONAL))
                            .isCloseTo(row.number("nominal_over_1_001_gbps"), within(1e-9));
                }))
                .toList();
    }

    /** Source of each row: hdmi-rates.csv. */
    @TestFactory
    List<DynamicTest> hdmiCarriesWhatTheLineCodeLeaves() {
        Map<String, Connector> links = Map.of(
                "HDMI 1.0-1.2", Connector.HDMI_1_2,
                "HDMI 1.3/1.4", Connector.HDMI_1_4,
                "HDMI 2.0", Connector.HDMI_2_0);
        List<PublishedTable.Row> rows = PublishedTable.read("hdmi-rates.csv").stream()
                .filter(row -> row.text("status").startsWith("seen"))
                .toList();
        assertThat(rows).hasSize(links.size());
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.toString(),
                        () -> assertThat(links.get(row.text("version")).gigabits(FRACTIONAL))
                                .isCloseTo(row.number("payload_gbps_after_line_code"), within(1e-9))))
                .toList();
    }

    /** The picture alone is less than the clock with its blanking. Source: cta861-timings.csv, edid-decode. */
    @TestFactory
    List<DynamicTest> picturesFitUnderThePublishedClocks() {
        return PublishedTable.read("cta861-timings.csv").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    FrameRate rate = FrameRate.parse(String.valueOf(Math.round(row.number("rate_hz"))));
                    double payload = picture(10, "4:2:2", row.text("hactive") + "x" + row.text("vactive"))
                            .gigabits(rate);
                    double active = row.number("hactive") * row.number("vactive");
                    double total = row.number("htotal") * row.number("vtotal");
                    assertThat(payload / row.number("sdi_rate_gbps_20bit_per_pixel_clock"))
                            .isCloseTo(active / total, within(1e-6));
                }))
                .toList();
    }

    /** With its blanking it is the published clock. Source: cta861-timings.csv, edid-decode; larger pictures are not listed here. */
    @TestFactory
    List<DynamicTest> timingsAreThePublishedOnes() {
        return PublishedTable.read("cta861-timings.csv").stream()
                .filter(row -> row.number("vactive") <= 2160)
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    FrameRate rate = FrameRate.parse(String.valueOf(Math.round(row.number("rate_hz"))));
                    PictureSize picture = PictureSize.parse(row.text("hactive") + "x" + row.text("vactive"));
                    assertThat(PictureTiming.of(picture, rate).orElseThrow().megahertz(rate))
                            .isCloseTo(row.number("pixel_clock_mhz"), within(1e-6));
                    LinkSignal eight = new LinkSignal(Connector.HDMI_2_0, Codec.Kind.ENCODED, 8, "4:4:4", picture);
                    // The table counts the line code of 10 bits for 8 too.
                    assertThat(eight.gigabits(rate) * 10 / 8)
                            .isCloseTo(row.number("tmds_3lane_gbps_8bit444"), within(1e-6));
                }))
                .toList();
    }

    /** Uncompressed rates in Mbit/s; arithmetic. */
    @ParameterizedTest
    @CsvSource({
        "1920x1080, 10, 4:2:2, 24000/1001, 994.334",
        "3840x2160, 10, 4:2:2, 60, 9953.28",
        "4096x2160, 12, 4:4:4, 24, 7644.119"
    })
    void payloadIsWidthTimesHeightTimesBitsTimesSamplesTimesRate(
            String size, int bits, String chroma, String rate, double megabits) {
        assertThat(picture(bits, chroma, size).gigabits(FrameRate.parse(rate)) * 1000)
                .isCloseTo(megabits, within(1e-3));
    }

    /** Clock rates in MHz x 24 bits; HDMI 1.4b and 2.0 (from memory). 8192x4320 is not listed: the picture alone. */
    @ParameterizedTest
    @CsvSource({
        "3840x2160, 8, 4:4:4, 50, 594",
        "3840x2160, 10, 4:4:4, 50, 742.5",
        "3840x2160, 12, 4:2:2, 50, 594",
        "3840x2160, 8, 4:2:2, 50, 594",
        "3840x2160, 10, 4:2:0, 50, 371.25",
        "3840x2160, 10, 4:2:2, 24000/1001, 296.7033",
        "8192x4320, 8, 4:4:4, 24, 849.3466",
    })
    void aDevelopedPictureOverHdmiIsItsClock(String size, int bits, String chroma, String rate, double clock) {
        LinkSignal signal =
                new LinkSignal(Connector.HDMI_2_0, Codec.Kind.ENCODED, bits, chroma, PictureSize.parse(size));
        assertThat(signal.gigabits(FrameRate.parse(rate)) * 1000 / 24).isCloseTo(clock, within(1e-3));
    }

    @Test
    void rawValuesAreOneSampleAPixel() {
        LinkSignal raw = new LinkSignal(Connector.HDMI_1_4, Codec.Kind.RAW, 12, "", PictureSize.parse("1000x1000"));
        assertThat(raw.gigabits(FrameRate.parse("25"))).isCloseTo(0.3, within(1e-12));
    }

    private static Input input(
            @Nullable Connector connector, Codec.Kind kind, int bits, String chroma, String picture) {
        return new Input("in", connector, List.of(kind), bits, chroma, PictureSize.parse(picture), true, null);
    }

    @Test
    void everyRefusalIsSaid() {
        LinkSignal signal = picture(12, "4:4:4", "4096x2160");
        assertThat(signal.refusals(input(Connector.SDI_3G, Codec.Kind.ENCODED, 12, "4:4:4", "4096x2160")))
                .isEmpty();
        assertThat(signal.refusals(input(Connector.HDMI_2_0, Codec.Kind.RAW, 10, "4:2:2", "4095x2160")))
                .hasSize(5);
        assertThat(signal.refusals(input(Connector.SDI_12G, Codec.Kind.ENCODED, 12, "4:2:2", "4096x2160")))
                .containsExactly("4:4:4 is sent and 4:2:2 taken");
    }
}
