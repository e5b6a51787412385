package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Severity;
import akin.model.gear.Sampling;
import akin.model.gear.Stabilisation;
import akin.model.quantity.PictureSize;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class PictureFactsTest {

    private static final BigFraction WIDE = BigFraction.of(16, 9);

    private static Frame frame(String picture, double squeeze, double share) {
        return new Frame("A", PictureSize.parse(picture), squeeze, share);
    }

    /** Arithmetic: 4096 x 2160 is 1.896:1; 256 of 4096 columns are 6.25 %. */
    @Test
    void cutsToTheDeliveredShape() {
        Frame frame = frame("4096x2160", 1, 1);
        assertThat(frame.percentLost(WIDE)).isEqualTo(6.25);
        assertThat(frame.guide(WIDE)).isEqualTo("3840x2160");
        assertThat(frame.pixelsLeft(WIDE, 0)).isEqualTo(3840);
        assertThat(frame.pixelsLeft(WIDE, 20)).isCloseTo(3200, within(1e-9));
    }

    @Test
    void looksAtASqueezedPictureStretched() {
        Frame frame = frame("2880x2160", 2, 1);
        assertThat(frame.ratio()).isCloseTo(5760 / 2160.0, within(1e-12));
        // a third of the stretched width goes; the guide is told in recorded pixels
        assertThat(frame.percentLost(WIDE)).isCloseTo(100 / 3.0, within(1e-9));
        assertThat(frame.guide(WIDE)).isEqualTo("1920x2160");
    }

    @Test
    void stabilisingTakesItsPartOfThePixels() {
        DeliveryRoom room = new DeliveryRoom("A", frame("4096x2304", 1, 0.9), PictureSize.parse("3840x2160"));
        assertThat(room.widthLeft(0)).isCloseTo(3686.4, within(1e-9));
        assertThat(room.getShortBy()).isCloseTo(4, within(1e-9));
        assertThat(new DeliveryRoom("A", frame("4096x2304", 1, 1), PictureSize.parse("3840x2160")).getShortBy())
                .isZero();
    }

    @Test
    void aSensorThatMovesNeedsALargerCircle() {
        CircleCover still = new CircleCover("A", 31, 30, 0);
        CircleCover moving = new CircleCover("A", 31, 30, 1.5);
        assertThat(still.shortMm()).isZero();
        assertThat(moving.neededMm()).isEqualTo(33);
        assertThat(moving.shortMm()).isEqualTo(1);
    }

    @Test
    void anAdapterNeedsRoomBetweenTheFlanges() {
        MountFit deep = new MountFit("A", "keel", "alder", 52, 18, MountFit.State.NO_ADAPTER);
        MountFit none = new MountFit("A", "alder", "keel", 18, 52, MountFit.State.NO_ADAPTER);
        assertThat(deep.roomMm()).isEqualTo(34);
        assertThat(deep.adaptable()).isTrue();
        assertThat(none.adaptable()).isFalse();
        assertThat(new MountFit("A", "a", "b", 45.5, 44, MountFit.State.NO_ADAPTER).adaptable())
                .isFalse();
        assertThat(deep.severity()).isEqualTo(Severity.BAKED_IN);
        assertThat(new MountFit("A", "keel", "alder", 52, 18, MountFit.State.HAND_IRIS).severity())
                .isEqualTo(Severity.ADVICE);
    }

    @Test
    void skippedLinesAreTheWorstNeighbour() {
        Detail skipped = new Detail("A", Sampling.LINE_SKIPPED);
        Detail binned = new Detail("A", Sampling.BINNED);
        Detail whole = new Detail("A", Sampling.ONE_TO_ONE);
        assertThat(skipped.against(whole)).isEqualTo(Severity.BAKED_IN);
        assertThat(whole.against(skipped)).isEqualTo(Severity.BAKED_IN);
        assertThat(binned.against(whole)).isEqualTo(Severity.LOSSY);
        assertThat(whole.against(new Detail("A", Sampling.OVERSAMPLED))).isEqualTo(Severity.ADVICE);
    }

    @Test
    void electronicStabilisationCostsMoreThanAMovingSensor() {
        Steadiness none = new Steadiness("A", Stabilisation.NONE);
        assertThat(new Steadiness("B", Stabilisation.ELECTRONIC).against(none)).isEqualTo(Severity.LOSSY);
        assertThat(new Steadiness("B", Stabilisation.SENSOR).against(none)).isEqualTo(Severity.ADVICE);
        assertThat(none.on()).isFalse();
    }
}
