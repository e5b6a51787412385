package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spans of timecode: arithmetic on frames of a day. */
class ClipSpanTest {

    private static final long DAY = 24L * 3600 * 25;

    private static ClipSpan span(String clip, long first, long frames) {
        return new ClipSpan("B", clip, "B", null, BigFraction.of(25), first, frames, DAY);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 100, 100, 50, 0", // one after the other
        "0, 100, 99, 50, 1",
        "0, 100, 20, 10, 10", // one within the other
        "0, 100, 0, 100, 100",
        "0, 0, 0, 100, 0", // an empty one shares nothing
        "2159990, 20, 5, 10, 5", // over midnight
        "2159990, 10, 0, 10, 0"
    })
    void sharedFramesAreTheSameFromEitherSide(long first, long frames, long otherFirst, long otherFrames, long shared) {
        ClipSpan a = span("a", first, frames);
        ClipSpan b = span("b", otherFirst, otherFrames);
        assertThat(a.shared(b)).isEqualTo(shared);
        assertThat(b.shared(a)).isEqualTo(shared);
    }

    @Test
    void framesOfDifferentRatesAreNotCompared() {
        ClipSpan other = new ClipSpan("A", "a", "A", null, BigFraction.of(24), 0, 100, 24L * 3600 * 24);
        assertThat(span("b", 0, 100).shared(other)).isZero();
        assertThat(span("b", 0, 100).followedBy(other)).isFalse();
    }

    /** SMPTE ST 12-1 counts pairs of pictures at 48, 50 and 60 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "60000/1001, 30000/1001, 2",
        "60000/1001, 30, 2",
        "60, 30, 2",
        "50, 25, 2",
        "48, 24000/1001, 2",
        "60000/1001, 60000/1001, 1",
        "60000/1001, 24000/1001, 1",
        "30, 15, 1",
        "24, 12, 1",
        "60, , 1"
    })
    void labelsMayNamePairsOfPicturesAtHighRates(String picture, String counted, int pictures) {
        assertThat(ClipTimecode.pictures(rate(picture), counted == null ? null : rate(counted)))
                .isEqualTo(pictures);
    }

    private static BigFraction rate(String text) {
        return BigFraction.parse(text);
    }

    @Test
    void oneFollowsAnotherOverMidnight() {
        assertThat(span("a", DAY - 10, 10).followedBy(span("b", 0, 5))).isTrue();
        assertThat(span("a", DAY - 10, 10).followedBy(span("b", 1, 5))).isFalse();
    }

    @Test
    void aTakeIsToldByItsNameBeforeItsTimecode() {
        ClipSpan named = new ClipSpan("B", "b", "B", "4/2", BigFraction.of(25), 0, 100, DAY);
        ClipSpan alike = new ClipSpan("A", "a", "A", "4/2", BigFraction.of(25), 5000, 100, DAY);
        ClipSpan other = new ClipSpan("A", "c", "A", "4/3", BigFraction.of(25), 0, 100, DAY);
        assertThat(named.sameTake(alike)).isTrue();
        assertThat(named.sameTake(other)).isFalse();
        assertThat(named.sameTake(span("d", 0, 100))).isFalse();
        assertThat(span("d", 0, 100).sameTake(span("e", 99, 100))).isTrue();
    }
}
