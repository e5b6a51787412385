package akin.model.colour;

import java.util.Arrays;

/** A 3 x 3 matrix, applied to column vectors. */
public final class Matrix3 {
    private static final int SIZE = 3;

    private final double[] cells;

    private Matrix3(double[] cells) {
        this.cells = cells;
    }

    /**
     * A matrix from its nine cells, row by row.
     *
     * @throws IllegalArgumentException when there are not nine, or one is not finite
     */
    public static Matrix3 ofRows(double... cells) {
        if (cells.length != SIZE * SIZE || !Arrays.stream(cells).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("a matrix needs nine finite numbers, was " + Arrays.toString(cells));
        }
        return new Matrix3(cells.clone());
    }

    static Matrix3 diagonal(double a, double b, double c) {
        return new Matrix3(new double[] {a, 0, 0, 0, b, 0, 0, 0, c});
    }

    static Matrix3 ofColumns(double[] a, double[] b, double[] c) {
        return new Matrix3(new double[] {a[0], b[0], c[0], a[1], b[1], c[1], a[2], b[2], c[2]});
    }

    /** The cell in a row and a column, both 0 to 2. */
    public double at(int row, int column) {
        return cells[row * SIZE + column];
    }

    /** This matrix after another: {@code this x first}. */
    public Matrix3 times(Matrix3 first) {
        double[] product = new double[SIZE * SIZE];
        for (int row = 0; row < SIZE; row++) {
            for (int column = 0; column < SIZE; column++) {
                for (int k = 0; k < SIZE; k++) {
                    product[row * SIZE + column] += at(row, k) * first.at(k, column);
                }
            }
        }
        return new Matrix3(product);
    }

    /** This matrix applied to a vector of three. */
    public double[] times(double[] vector) {
        double[] result = new double[SIZE];
        for (int row = 0; row < SIZE; row++) {
            for (int k = 0; k < SIZE; k++) {
                result[row] += at(row, k) * vector[k];
            }
        }
        return result;
    }

    /** @throws ArithmeticException when there is no inverse */
    public Matrix3 inverse() {
        double[] adjugate = new double[SIZE * SIZE];
        for (int row = 0; row < SIZE; row++) {
            for (int column = 0; column < SIZE; column++) {
                int r1 = (column + 1) % SIZE;
                int r2 = (column + 2) % SIZE;
                int c1 = (row + 1) % SIZE;
                int c2 = (row + 2) % SIZE;
                adjugate[row * SIZE + column] = at(r1, c1) * at(r2, c2) - at(r1, c2) * at(r2, c1);
            }
        }
        double determinant = at(0, 0) * adjugate[0] + at(0, 1) * adjugate[3] + at(0, 2) * adjugate[6];
        if (determinant == 0) {
            throw new ArithmeticException("the matrix has no inverse");
        }
        return new Matrix3(
                Arrays.stream(adjugate).map(cell -> cell / determinant).toArray());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Matrix3 matrix && Arrays.equals(cells, matrix.cells);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(cells);
    }

    @Override
    public String toString() {
        return Arrays.toString(cells);
    }
}
