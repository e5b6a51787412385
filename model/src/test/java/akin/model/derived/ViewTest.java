package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.quantity.Area;
import akin.model.rig.Match.ViewAxis;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ViewTest {

    private static View view(String area, double squeeze, double focal, double factor, ViewAxis axis) {
        return new View("A", Area.parse(area), squeeze, focal, factor, axis);
    }

    /** 50 mm on 36 mm x 24 mm: ayton.id.au, "photo:fov". */
    @Test
    void seesTheAngleThatIsPrintedAlongEachSide() {
        assertThat(view("36x24 mm", 1, 50, 1, ViewAxis.HORIZONTAL).degrees()).isCloseTo(39.6, within(0.05));
        assertThat(view("36x24 mm", 1, 50, 1, ViewAxis.VERTICAL).degrees()).isCloseTo(27.0, within(0.05));
        assertThat(view("36x24 mm", 1, 50, 1, ViewAxis.DIAGONAL).degrees()).isCloseTo(46.8, within(0.05));
        assertThat(view("36x24 mm", 1, 50, 1, ViewAxis.VERTICAL).horizontalDegrees())
                .isCloseTo(39.6, within(0.05));
    }

    @Test
    void fortyOnThirtySixFramesLikeTwentySixPointSevenOnTwentyFour() {
        // arithmetic; the pair is common practice, no source
        View a = view("36.0x20.25 mm", 1, 40, 1, ViewAxis.HORIZONTAL);
        View b = view("24.0x13.5 mm", 1, 24, 1, ViewAxis.HORIZONTAL);
        assertThat(b.ringFocalFor(a)).isCloseTo(26.667, within(0.001));
        assertThat(b.percentWider(a)).isCloseTo(11.11, within(0.01));
        assertThat(a.percentWider(b)).isCloseTo(-11.11, within(0.01));
    }

    @Test
    void countsWhatStandsBehindTheLens() {
        View plain = view("24x13.5 mm", 1, 24, 1, ViewAxis.HORIZONTAL);
        assertThat(view("24x13.5 mm", 1, 32, 0.75, ViewAxis.HORIZONTAL).percentWider(plain))
                .isCloseTo(0, within(1e-9));
        assertThat(view("24x13.5 mm", 2, 48, 1, ViewAxis.HORIZONTAL).percentWider(plain))
                .isCloseTo(0, within(1e-9));
        assertThat(view("24x13.5 mm", 2, 24, 1, ViewAxis.VERTICAL)
                        .percentWider(view("24x13.5 mm", 1, 24, 1, ViewAxis.VERTICAL)))
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void theMatchedFocalLengthMatchesWhateverStandsBehindTheLens() {
        Random random = new Random(20_260_301);
        for (int i = 0; i < 500; i++) {
            ViewAxis axis = List.of(ViewAxis.values()).get(random.nextInt(3));
            View a = any(random, axis);
            View b = any(random, axis);
            View matched = b.at(b.ringFocalFor(a));
            assertThat(matched.percentWider(a)).as("%s to %s", b, a).isCloseTo(0, within(1e-9));
            assertThat(matched.degrees()).isCloseTo(a.degrees(), within(1e-9));
            assertThat(b.percentWider(a)).isCloseTo(-a.percentWider(b), within(1e-9));
        }
    }

    private static View any(Random random, ViewAxis axis) {
        double width = 5 + 50 * random.nextDouble();
        return new View(
                "A",
                new Area(width, width / (1 + random.nextDouble())),
                1 + random.nextDouble(),
                8 + 200 * random.nextDouble(),
                0.6 + random.nextDouble(),
                axis);
    }
}
