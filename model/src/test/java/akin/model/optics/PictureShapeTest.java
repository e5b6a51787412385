package akin.model.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class PictureShapeTest {
    private static final BigFraction WIDE = BigFraction.of(16, 9);

    @Test
    void ratiosOfCustomaryPictures() {
        // common practice, no source
        assertThat(new PictureShape(6144, 3456).ratio()).isEqualTo(WIDE);
        assertThat(new PictureShape(4128, 2176).ratio().doubleValue() / (17 / 9.0))
                .isCloseTo(1, within(0.005));
        assertThat(new PictureShape(4096, 2160).ratio().doubleValue()).isCloseTo(1.896, within(0.0005));
    }

    @Test
    void cinemaPictureLosesASixteenthOfItsWidth() {
        // arithmetic: 1 - 3840/4096
        PictureShape.Extraction cut = new PictureShape(4096, 2160).extract(WIDE);
        assertThat(cut.left()).isEqualTo(new PictureShape(3840, 2160));
        assertThat(cut.widthPercentLost()).isEqualTo(6.25);
        assertThat(cut.heightPercentLost()).isZero();
    }

    @Test
    void narrowerPictureLosesHeight() {
        PictureShape.Extraction cut = new PictureShape(2048, 1536).extract(WIDE);
        assertThat(cut.left()).isEqualTo(new PictureShape(2048, 1152));
        assertThat(cut.heightPercentLost()).isEqualTo(25);
        assertThat(cut.widthPercentLost()).isZero();
    }

    @Test
    void wholePixelsAreRoundedDown() {
        assertThat(new PictureShape(1000, 1000).extract(BigFraction.of(3)).left())
                .isEqualTo(new PictureShape(1000, 333));
    }

    @Test
    void commonPartIsTheNarrowerPicture() {
        PictureShape.Common common = PictureShape.common(new PictureShape(4096, 2160), new PictureShape(3840, 2160));
        assertThat(common.ratio()).isEqualTo(WIDE);
        assertThat(common.ofA().widthPercentLost()).isEqualTo(6.25);
        assertThat(common.ofB().left()).isEqualTo(new PictureShape(3840, 2160));
        assertThat(common.ofB().widthPercentLost()).isZero();
    }

    @Test
    void eitherWayOfCuttingCostsTheSameShare() {
        Random random = new Random(57);
        for (int i = 0; i < 300; i++) {
            PictureShape a = new PictureShape(200 + random.nextInt(8000), 200 + random.nextInt(4000));
            PictureShape b = new PictureShape(200 + random.nextInt(8000), 200 + random.nextInt(4000));
            PictureShape.Common there = PictureShape.common(a, b);
            PictureShape.Common back = PictureShape.common(b, a);
            assertThat(back).isEqualTo(new PictureShape.Common(there.ratio(), there.ofB(), there.ofA()));
            boolean aIsWider = a.ratio().compareTo(b.ratio()) > 0;
            double sides =
                    aIsWider ? there.ofA().widthPercentLost() : there.ofB().widthPercentLost();
            double topAndBottom = aIsWider
                    ? b.extract(a.ratio()).heightPercentLost()
                    : a.extract(b.ratio()).heightPercentLost();
            assertThat(topAndBottom).isCloseTo(sides, within(1e-9));
        }
    }

    @Test
    void punchInCuresAViewThatIsTooWide() {
        PunchIn punch = PunchIn.curing(1440, 1200);
        assertThat(punch.percent()).isCloseTo(20, within(1e-9));
        assertThat(punch.pixelsLeft(3840)).isCloseTo(3200, within(1e-9));
        assertThat(PunchIn.curing(1200, 1200).percent()).isZero();
        // 25 mm on 24.0 mm against 40 mm on 36.0 mm is 6.667 % too wide
        assertThat(PunchIn.curing(FieldOfView.widthAt(2000, 24, 25, 1), FieldOfView.widthAt(2000, 36, 40, 1))
                        .percent())
                .isCloseTo(FieldOfView.percentApart(40, 36, 1, 25, 24, 1), within(1e-9));
    }

    @Test
    void refusesWhatIsOutOfRange() {
        assertThatIllegalArgumentException().isThrownBy(() -> new PictureShape(0, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PictureShape(1, -1))
                .withMessageContaining("1x-1");
        assertThatIllegalArgumentException().isThrownBy(() -> new PictureShape(10, 10).extract(BigFraction.ZERO));
        assertThatIllegalArgumentException().isThrownBy(() -> new PictureShape(10, 10).extract(BigFraction.of(100)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PunchIn.curing(1000, 1200))
                .withMessageContaining("cannot widen");
        assertThatIllegalArgumentException().isThrownBy(() -> PunchIn.curing(1000, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new PunchIn(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> new PunchIn(20).pixelsLeft(0));
    }
}
