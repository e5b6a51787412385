package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;

import akin.model.quantity.PictureSize;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of clips, beside what {@link ClipSpanTest} says of their timecode. */
class FootageFactsTest {

    @ParameterizedTest
    @CsvSource({
        "3840, 2160, false, false",
        "3840, 2159, true, true",
        "3839, 2160, true, true",
        "4096, 2160, true, false",
        "4096, 2304, true, false",
        "4096, 2048, true, true"
    })
    void aPictureIsSmallerWhereEitherSideIs(int width, int height, boolean differs, boolean smaller) {
        ClipSize size = new ClipSize("B", "b", new PictureSize(3840, 2160), new PictureSize(width, height));
        assertThat(size.differs()).isEqualTo(differs);
        assertThat(size.smaller()).isEqualTo(smaller);
    }

    @Test
    void ofManyClipsTheFirstFourAreNamed() {
        assertThat(clash("a", "b").list()).isEqualTo("a, b");
        assertThat(clash("a", "b", "c", "d").list()).isEqualTo("a, b, c, d");
        assertThat(clash("a", "b", "c", "d", "e").list()).isEqualTo("a, b, c, d and 1 more");
        assertThat(clash("a", "b", "c", "d", "e", "f").list()).isEqualTo("a, b, c, d and 2 more");
    }

    private static NameClash clash(String... clips) {
        return new NameClash("file name", "x", List.of("A", "B"), List.of(clips));
    }
}
