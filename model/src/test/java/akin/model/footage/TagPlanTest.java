package akin.model.footage;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Code points of ITU-T H.273, from memory; LiveFootageTest holds the words against ffmpeg. */
class TagPlanTest {

    @Test
    void televisionHasTagsAndCameraLogsHaveNone() {
        assertThat(TagPlan.transfer("bt709")).isEqualTo("bt709");
        assertThat(TagPlan.transfer("pq")).isEqualTo("smpte2084");
        assertThat(TagPlan.transfer("hlg")).isEqualTo("arib-std-b67");
        assertThat(TagPlan.transfer("sony-s-log3")).isEqualTo(TagPlan.NONE);
        assertThat(TagPlan.primaries("bt2020")).isEqualTo("bt2020");
        assertThat(TagPlan.primaries("s-gamut3")).isEqualTo(TagPlan.NONE);
    }

    @Test
    void fourTransferTagsAreOneFunction() {
        assertThat(TagPlan.sameTransfer("bt709", "bt2020-10")).isTrue();
        assertThat(TagPlan.sameTransfer("smpte170m", "bt2020-12")).isTrue();
        assertThat(TagPlan.sameTransfer("bt709", "smpte2084")).isFalse();
        assertThat(TagPlan.sameTransfer("smpte2084", "smpte2084")).isTrue();
        assertThat(TagPlan.sameTransfer(TagPlan.NONE, "bt709")).isFalse();
    }

    @Test
    void theMatrixGoesWithThePrimaries() {
        assertThat(TagPlan.matrix("bt2020")).isEqualTo("bt2020nc");
        assertThat(TagPlan.matrix("bt709")).isEqualTo("bt709");
        assertThat(TagPlan.sameMatrix("bt2020nc", true, "bt2020c")).isTrue();
        assertThat(TagPlan.sameMatrix("bt2020nc", true, "bt709")).isFalse();
        assertThat(TagPlan.sameMatrix("bt709", true, "bt2020nc")).isFalse();
        assertThat(TagPlan.sameMatrix("bt709", false, "bt2020nc")).isTrue();
        assertThat(TagPlan.sameMatrix("bt709", false, "smpte170m")).isFalse();
        assertThat(TagPlan.sameMatrix("bt709", true, "gbr")).isTrue();
    }
}
