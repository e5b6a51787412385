package akin.model.look;

import java.util.List;

/**
 * A look-up table as points on a cube, evenly spaced along each edge from 0 to 1, each rounded to the six decimals that a
 * file holds.
 *
 * <p>The points are fitted to the function and not samples of it. A straight line between two samples of a bend is all on one
 * side of it, off by up to {@code h² f″ / 8}; moved to the other side by half of that it is off by half as much.
 */
public final class Cube {

    /** Points along an edge of the tables that are written. */
    public static final List<Integer> SIZES = List.of(17, 33, 65);

    /** Decimals of a number in a file. */
    public static final int DECIMALS = 6;

    private static final int SMALLEST = 2;
    private static final int LARGEST = 129;
    private static final int CHANNELS = 3;
    private static final double SCALE = 1e6;

    /** How far lines go from a point of the cube to the next: along edges, across faces, and from dark to bright. */
    private static final int[][] WAYS = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 1, 0}, {1, 0, 1}, {0, 1, 1}, {1, 1, 1}};

    private final int size;
    private final int[] points;

    private Cube(int size, int[] points) {
        this.size = size;
        this.points = points;
    }

    /**
     * A cube of a table.
     *
     * @param size points along an edge, 2 to 129
     * @throws IllegalArgumentException for another size
     */
    public static Cube of(LookTable table, int size) {
        if (size < SMALLEST || size > LARGEST) {
            throw new IllegalArgumentException(
                    "a cube has " + SMALLEST + " to " + LARGEST + " points along an edge, not " + size);
        }
        double[] light = new double[size];
        for (int i = 0; i < size; i++) {
            light[i] = table.decode((double) i / (size - 1));
        }
        LookTable.Exact exact = table.exact();
        double[] samples = new double[size * size * size * CHANNELS];
        int at = 0;
        for (int b = 0; b < size; b++) {
            for (int g = 0; g < size; g++) {
                for (int r = 0; r < size; r++) {
                    for (double value : exact.ofLight(new double[] {light[r], light[g], light[b]})) {
                        samples[at++] = value;
                    }
                }
            }
        }
        return new Cube(size, fitted(samples, size));
    }

    private static int[] fitted(double[] samples, int size) {
        int[] points = new int[samples.length];
        int[] stride = {CHANNELS, CHANNELS * size, CHANNELS * size * size};
        int[] place = new int[CHANNELS];
        for (int i = 0; i < samples.length; i += CHANNELS) {
            for (int c = 0; c < CHANNELS; c++) {
                place[c] = i / stride[c] % size;
            }
            for (int c = 0; c < CHANNELS; c++) {
                double value = samples[i + c] - bend(samples, i + c, place, stride, size) / 16;
                points[i + c] = (int) Math.round(Math.min(1, Math.max(0, value)) * SCALE);
            }
        }
        return points;
    }

    /** How the function bends at a point: {@code h² f″} from its neighbours, the mean over all lines that go on through it. */
    private static double bend(double[] samples, int at, int[] place, int[] stride, int size) {
        boolean grey = place[0] == place[1] && place[1] == place[2];
        double sum = 0;
        int lines = 0;
        // Greys lie on one line, and only what it does itself keeps its channels alike.
        for (int way = grey ? WAYS.length - 1 : 0; way < WAYS.length; way++) {
            int next = 0;
            boolean through = true;
            for (int c = 0; c < CHANNELS; c++) {
                next += WAYS[way][c] * stride[c];
                through &= WAYS[way][c] == 0 || (place[c] > 0 && place[c] < size - 1);
            }
            if (through) {
                sum += samples[at + next] - 2 * samples[at] + samples[at - next];
                lines++;
            }
        }
        return lines == 0 ? 0 : sum / lines;
    }

    /** Points along an edge. */
    public int size() {
        return size;
    }

    /** How many numbers it holds: three for each point. */
    public int count() {
        return points.length;
    }

    /** A number in millionths, in the order of a file: red fastest, then green, then blue; three for each point. */
    public int millionths(int index) {
        return points[index];
    }

    /**
     * What comes out for what goes in, between the points by tetrahedra: each small cube is cut in six along its diagonal
     * from dark to bright, which keeps greys grey.
     *
     * @param in red, green and blue; outside 0 to 1 the nearest end counts
     */
    public double[] apply(double... in) {
        int base = 0;
        int[] stride = {1, size, size * size};
        double[] part = new double[CHANNELS];
        int[] order = {0, 1, 2};
        for (int c = 0; c < CHANNELS; c++) {
            double at = Math.min(1, Math.max(0, in[c])) * (size - 1);
            int cell = (int) Math.min(size - 2.0, Math.floor(at));
            part[c] = at - cell;
            base += cell * stride[c];
        }
        sortByPart(order, part);
        double[] out = new double[CHANNELS];
        int corner = base;
        double before = 1;
        for (int step = 0; step <= CHANNELS; step++) {
            double next = step < CHANNELS ? part[order[step]] : 0;
            add(out, corner, before - next);
            if (step < CHANNELS) {
                corner += stride[order[step]];
                before = next;
            }
        }
        return out;
    }

    private void add(double[] out, int corner, double weight) {
        for (int c = 0; c < CHANNELS; c++) {
            out[c] += weight * points[corner * CHANNELS + c] / SCALE;
        }
    }

    /** Largest part first. */
    private static void sortByPart(int[] order, double[] part) {
        for (int i = 1; i < CHANNELS; i++) {
            for (int k = i; k > 0 && part[order[k]] > part[order[k - 1]]; k--) {
                int swap = order[k];
                order[k] = order[k - 1];
                order[k - 1] = swap;
            }
        }
    }
}
