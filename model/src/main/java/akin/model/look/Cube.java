package akin.model.look;

import java.util.List;

/**
 * A look-up table as points on a cube, evenly spaced along each edge from 0 to 1, each rounded to the six decimals that a
 * file holds.
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
        int[] points = new int[size * size * size * CHANNELS];
        int at = 0;
        for (int b = 0; b < size; b++) {
            for (int g = 0; g < size; g++) {
                for (int r = 0; r < size; r++) {
                    for (double value : exact.ofLight(new double[] {light[r], light[g], light[b]})) {
                        points[at++] = (int) Math.round(value * SCALE);
                    }
                }
            }
        }
        return new Cube(size, points);
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
