package akin.model.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import akin.model.quantity.DataRate;
import akin.model.quantity.FrameRate;
import akin.model.quantity.PictureSize;
import akin.model.quantity.QuantityException;
import akin.model.quantity.Timespan;
import akin.published.PublishedTable;
import java.util.List;
import java.util.Objects;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class RecordedDataTest {

    private static final FrameRate RATE_30 = FrameRate.parse("30000/1001");
    private static final FrameRate RATE_24 = FrameRate.parse("24000/1001");
    private static final String HEADER = "ProResEncoder.h";

    private static double bits(DataFlow flow, String picture, FrameRate rate) {
        return Objects.requireNonNull(flow.bitsPerSecond(PictureSize.parse(picture), rate));
    }

    private static DataFlow stated(double megabits) {
        return new DataFlow(new DataRate(megabits * 1e6), PictureSize.parse("1920x1080"), RATE_30);
    }

    /** Seen rows: the header of the encoder, (c) 2009-2016 Apple; two others agree but for one that the table's notes name. */
    @Test
    void sourcesThatWereSeenAgreeOnWhatACodecWrites() {
        List<PublishedTable.Row> seen = rows("seen");
        for (PublishedTable.Row row : seen) {
            double header = headerRate(row.text("codec"));
            boolean known = row.text("codec").equals("ProRes 4444") && row.number("mbps") == 300;
            if (!known) {
                assertThat(bits(stated(header), "1920x1080", RATE_30))
                        .as(row.toString())
                        .isCloseTo(row.number("mbps") * 1e6, Percentage.withPercentage(3));
            }
        }
        assertThat(seen).hasSize(18);
    }

    /** Rows from memory: other pictures and rates follow from the seen ones in proportion to pixels and frames. */
    @Test
    void ratesGoWithPixelsAndFrames() {
        List<PublishedTable.Row> others = rows("from memory, not seen");
        for (PublishedTable.Row row : others) {
            assertThat(bits(stated(headerRate(row.text("codec"))), row.text("frame"), RATE_24))
                    .as(row.toString())
                    .isCloseTo(row.number("mbps") * 1e6, Percentage.withPercentage(3));
        }
        assertThat(others).hasSize(18);
    }

    private static List<PublishedTable.Row> rows(String status) {
        return PublishedTable.read("prores-rates.csv").stream()
                .filter(row -> row.text("status").equals(status))
                .toList();
    }

    private static double headerRate(String codec) {
        return rows("seen").stream()
                .filter(row ->
                        row.text("codec").equals(codec) && row.text("source").startsWith(HEADER))
                .mapToDouble(row -> row.number("mbps"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRateThatIsStatedForNothingStaysAsItIs() {
        DataFlow flat = new DataFlow(DataRate.parse("400 Mbit/s"), null, null);
        assertThat(bits(flat, "3840x2160", RATE_24)).isEqualTo(400e6);
        assertThat(new DataFlow(null, null, null).bitsPerSecond(PictureSize.parse("3840x2160"), RATE_24))
                .isNull();
    }

    /** SD video speed classes: gist AriRexouium/64027e01, second-hand. VPG400: gigazine.net, 10 July 2024. VPG200: memory. */
    @Test
    void speedClassesPromiseTheirNumber() {
        for (Media.SpeedClass one : Media.SpeedClass.values()) {
            int digits = Integer.parseInt(one.toString().replaceAll("\\D", ""));
            assertThat(one.bitsPerSecond() / 8e6).as(one.toString()).isCloseTo(digits, within(1e-9));
        }
        Media card = new Media("a", null, null, Media.SpeedClass.V60, DataRate.parse("70 MB/s"), null, null);
        assertThat(card.bitsPerSecond()).isEqualTo(560e6);
        assertThat(new Media("a", null, null, Media.SpeedClass.V60, null, null, null).bitsPerSecond())
                .isEqualTo(480e6);
        assertThat(new Media("a", null, null, null, null, null, null).bitsPerSecond())
                .isNull();
    }

    /** The largest file of FAT32 is 4 294 967 295 bytes: IBM storage documentation. */
    @Test
    void filesAreSplitWhereTheFileSystemEnds() {
        FileLimit fat32 = FileLimit.parse("fat32");
        assertThat(fat32.bytes()).isEqualTo(4_294_967_295.0);
        assertThat(fat32.files(4_294_967_295.0)).isEqualTo(1);
        assertThat(fat32.files(4_294_967_296.0)).isEqualTo(2);
        assertThat(fat32.files(0)).isEqualTo(1);
        assertThat(FileLimit.parse("none").files(1e15)).isEqualTo(1);
        assertThat(FileLimit.parse("4 GB").files(9e9)).isEqualTo(3);
        assertThatThrownBy(() -> FileLimit.parse("fat")).isInstanceOf(QuantityException.class);
    }

    @Test
    void limitsHoldUpToTheirEnd() {
        TimeLimit half = TimeLimit.parse("30 min");
        assertThat(half.holds(Timespan.parse("30 min"))).isTrue();
        assertThat(half.holds(Timespan.parse("1801 s"))).isFalse();
        assertThat(TimeLimit.parse("none").holds(Timespan.parse("9000 h"))).isTrue();
        assertThatThrownBy(() -> TimeLimit.parse("never")).isInstanceOf(QuantityException.class);
    }
}
