package akin.model.look;

import akin.model.colour.Adaptation;
import akin.model.colour.Chart;
import akin.model.colour.Matrix3;
import akin.model.colour.RgbMatrix;
import akin.model.gear.SignalRange;
import akin.model.tone.SignalLevel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How far a cube is off the exact function between its points, in 1023rds of what comes out, over colours that are met: the
 * patches of a chart, from four stops under the right exposure to four over, as far as the encoding holds them.
 *
 * @param size points along an edge
 * @param mean over all colours and channels
 * @param nearlyAll what 99 of 100 stay within
 * @param most the largest
 */
public record CubeError(int size, double mean, double nearlyAll, double most) {

    private static final double STOPS = 4;
    private static final double STEP = 0.25;
    private static final double TOP = 1023;
    private static final double NEARLY_ALL = 0.99;

    /** How far a cube of a table is off. */
    public static CubeError of(LookTable table, Cube cube, List<double[]> inputs) {
        LookTable.Exact exact = table.exact();
        double[] errors = inputs.stream()
                .flatMapToDouble(in -> {
                    double[] wanted = exact.apply(in);
                    double[] given = cube.apply(in);
                    double[] off = new double[wanted.length];
                    Arrays.setAll(off, c -> TOP * Math.abs(given[c] - wanted[c]));
                    return Arrays.stream(off);
                })
                .sorted()
                .toArray();
        return new CubeError(
                cube.size(),
                Arrays.stream(errors).average().orElse(0),
                errors[(int) (NEARLY_ALL * (errors.length - 1))],
                errors[errors.length - 1]);
    }

    /** The patches of a chart as numbers that go into a table, over eight stops of exposure. */
    public static List<double[]> inputs(LookTable table, Chart chart) {
        List<double[]> inputs = new ArrayList<>();
        for (double stops = -STOPS; stops <= STOPS; stops += STEP) {
            inputs.addAll(inputs(table, chart, stops));
        }
        return inputs;
    }

    /** The patches of a chart, exposed so many stops over the right exposure, as far as the encoding holds them. */
    public static List<double[]> inputs(LookTable table, Chart chart, double stops) {
        Matrix3 toCamera = RgbMatrix.toXyz(table.gamut())
                .inverse()
                .times(Adaptation.BRADFORD.between(
                        Chart.white(), table.gamut().white().toXyz()));
        double gain = StrictMath.pow(2, stops);
        return chart.patches().stream()
                .map(patch -> Arrays.stream(toCamera.times(patch.xyz()))
                        .map(light -> table.encoding().encode(light * gain))
                        .map(share -> table.takes() == SignalRange.FULL ? share : SignalLevel.fullToLegal(share))
                        .toArray())
                .filter(in -> Arrays.stream(in).allMatch(value -> value >= 0 && value <= 1))
                .toList();
    }
}
