package akin.model.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NdStackTest {
    private static final List<Double> KIT = List.of(0.3, 0.6, 0.9, 1.2);

    @Test
    void stacksWhatComesNearest() {
        NdStack five = NdStack.choose(KIT, 5);
        assertThat(five.densities()).containsExactly(1.2, 0.3);
        assertThat(five.density()).isEqualTo(1.5);
        assertThat(five.residualStops()).isCloseTo(-0.017, within(0.0005));
    }

    @Test
    void oneFilterRatherThanTwoThatAddUpToIt() {
        assertThat(NdStack.choose(KIT, 3).densities()).containsExactly(0.9);
        assertThat(NdStack.choose(KIT, 2).densities()).containsExactly(0.6);
        assertThat(NdStack.choose(KIT, 2).residualStops()).isCloseTo(-0.0068, within(5e-5));
    }

    @Test
    void bareLensWhereNothingIsNearer() {
        assertThat(NdStack.choose(KIT, 0.4).densities()).isEmpty();
        assertThat(NdStack.choose(KIT, 0.4).residualStops()).isEqualTo(-0.4);
        assertThat(NdStack.choose(List.of(), 6).densities()).isEmpty();
    }

    @Test
    void neverUsesAFilterTwice() {
        assertThat(NdStack.choose(List.of(0.9), 6).densities()).containsExactly(0.9);
        assertThat(NdStack.choose(List.of(0.9, 0.9), 6).densities()).containsExactly(0.9, 0.9);
    }

    @Test
    void infraredFromFourStopsOn() {
        // common practice, no source
        assertThat(NdStack.choose(KIT, 4).asksForInfraredCare()).isTrue();
        assertThat(NdStack.choose(KIT, 3).asksForInfraredCare()).isFalse();
        assertThat(new NdStack(List.of(0.6, 0.6), 4).asksForInfraredCare()).isTrue();
    }

    @Test
    void noOtherStackIsNearer() {
        Random random = new Random(51);
        for (int i = 0; i < 60; i++) {
            List<Double> kit = new ArrayList<>();
            for (int k = random.nextInt(8); k >= 0; k--) {
                kit.add((1 + random.nextInt(30)) / 10.0);
            }
            double wanted = 14 * random.nextDouble();
            NdStack chosen = NdStack.choose(kit, wanted);
            double nearest = nearestByCountingThroughSubsets(kit, wanted);
            assertThat(Math.abs(chosen.residualStops())).isCloseTo(nearest, within(1e-9));
            Collections.shuffle(kit, random);
            assertThat(NdStack.choose(kit, wanted)).isEqualTo(chosen);
        }
    }

    @Test
    void refusesWhatIsOutOfRange() {
        assertThatIllegalArgumentException().isThrownBy(() -> NdStack.choose(KIT, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> NdStack.choose(KIT, Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NdStack.choose(List.of(0.3, 0.0), 1))
                .withMessageContaining("density of a filter");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NdStack.choose(Collections.nCopies(65, 0.3), 1))
                .withMessageContaining("at most 64");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new NdStack(List.of(0.3, 0.3, 0.3, 0.3), 4))
                .withMessageContaining("at most 3");
    }

    private static double nearestByCountingThroughSubsets(List<Double> kit, double wanted) {
        double nearest = wanted;
        for (int subset = 0; subset < 1 << kit.size(); subset++) {
            if (Integer.bitCount(subset) <= 3) {
                double density = 0;
                for (int i = 0; i < kit.size(); i++) {
                    density += (subset >> i & 1) * kit.get(i);
                }
                nearest = Math.min(nearest, Math.abs(density / Math.log10(2) - wanted));
            }
        }
        return nearest;
    }
}
