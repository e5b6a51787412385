package akin.model.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Patches made with a matrix that is known give that matrix; whatever the patches, the neutral is kept. */
class WhiteKeepingFitTest {

    private static final double[] NEUTRAL = {0.4, 0.4, 0.4};

    private static List<double[]> colours(Random random) {
        List<double[]> colours = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            colours.add(random.doubles(3, 0.02, 0.9).toArray());
        }
        return colours;
    }

    /** Each row adds up to what the gain of its channel is, so that a grey goes to a grey of that gain. */
    private static Matrix3 known(Random random) {
        double[] cells = new double[9];
        for (int row = 0; row < 3; row++) {
            double gain = 0.7 + 0.6 * random.nextDouble();
            double one = 0.2 * random.nextDouble() - 0.1;
            double other = 0.2 * random.nextDouble() - 0.1;
            for (int column = 0; column < 3; column++) {
                cells[3 * row + column] = column == row ? gain - one - other : column == (row + 1) % 3 ? one : other;
            }
        }
        return Matrix3.ofRows(cells);
    }

    @RepeatedTest(50)
    void findsTheMatrixThatPatchesWereMadeWith(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        List<double[]> from = colours(random);
        Matrix3 known = known(random);
        List<double[]> to = from.stream().map(known::times).toList();
        Matrix3 found = WhiteKeepingFit.of(from, to, NEUTRAL, known.times(NEUTRAL));
        for (int i = 0; i < 9; i++) {
            assertThat(found.at(i / 3, i % 3)).isCloseTo(known.at(i / 3, i % 3), within(1e-9));
        }
    }

    @RepeatedTest(50)
    void keepsTheNeutralHoweverPatchesWereDisturbed(RepetitionInfo repetition) {
        Random random = new Random(100 + repetition.getCurrentRepetition());
        List<double[]> from = colours(random);
        Matrix3 known = known(random);
        List<double[]> to = from.stream()
                .map(known::times)
                .map(light -> {
                    double[] disturbed = light.clone();
                    for (int c = 0; c < 3; c++) {
                        disturbed[c] *= 1 + 0.2 * random.nextGaussian();
                    }
                    return disturbed;
                })
                .toList();
        double[] neutralTo = {0.5, 0.45, 0.55};
        Matrix3 found = WhiteKeepingFit.of(from, to, NEUTRAL, neutralTo);
        assertThat(found.times(NEUTRAL)).containsExactly(neutralTo, within(1e-9));
        // Of all that keep the neutral none comes nearer: no small step along the condition lowers the weighed error.
        double least = error(found, from, to);
        for (int row = 0; row < 3; row++) {
            for (double step : new double[] {1e-3, -1e-3}) {
                double[] cells = new double[9];
                for (int i = 0; i < 9; i++) {
                    cells[i] = found.at(i / 3, i % 3);
                }
                cells[3 * row] += step;
                cells[3 * row + 1] -= step;
                assertThat(error(Matrix3.ofRows(cells), from, to)).isGreaterThan(least);
            }
        }
    }

    private static double error(Matrix3 matrix, List<double[]> from, List<double[]> to) {
        double sum = 0;
        for (int i = 0; i < from.size(); i++) {
            double[] got = matrix.times(from.get(i));
            double[] want = to.get(i);
            double weight = Math.pow(Math.max(0.01, (want[0] + want[1] + want[2]) / 3), -4.0 / 3);
            for (int c = 0; c < 3; c++) {
                sum += weight * (got[c] - want[c]) * (got[c] - want[c]);
            }
        }
        return sum;
    }

    @Test
    void greysAloneTellNoMatrix() {
        List<double[]> greys = new ArrayList<>();
        for (int i = 1; i <= 24; i++) {
            greys.add(new double[] {i / 32.0, i / 32.0, i / 32.0});
        }
        assertThatThrownBy(() -> WhiteKeepingFit.of(greys, greys, NEUTRAL, NEUTRAL))
                .isInstanceOf(ArithmeticException.class);
    }
}
