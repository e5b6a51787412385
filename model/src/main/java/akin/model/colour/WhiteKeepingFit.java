package akin.model.colour;

import java.util.List;

/**
 * The matrix that takes patches as one camera recorded them nearest to how another did, among those that take the one's
 * neutral exactly to the other's.
 *
 * <p>Weighted least squares with one linear condition, solved row by row by Lagrange's multiplier: {@code m = A^-1 b +
 * l A^-1 w}, with {@code A = sum k s s'}, {@code b = sum k s t}, {@code l = (t_w - w' A^-1 b) / (w' A^-1 w)}. Each patch
 * weighs {@code Y^(-4/3)}, since lightness goes with the cube root of light: an error counts as the eye weighs it.
 */
public final class WhiteKeepingFit {

    /** Darker than this share of white, noise and flare outweigh colour. */
    private static final double DARKEST = 0.01;

    private WhiteKeepingFit() {}

    /**
     * The matrix.
     *
     * @param from linear light of each patch in one camera
     * @param to the same patches in the other; luminance is about the mean of the three
     * @param neutralFrom linear light of a neutral in the one
     * @param neutralTo of the same neutral in the other
     * @throws ArithmeticException when the patches do not differ enough in colour to tell a matrix
     */
    public static Matrix3 of(List<double[]> from, List<double[]> to, double[] neutralFrom, double[] neutralTo) {
        double[] a = new double[9];
        double[][] b = new double[3][3];
        for (int i = 0; i < from.size(); i++) {
            double[] s = from.get(i);
            double[] t = to.get(i);
            double k = Math.pow(Math.max(DARKEST, (t[0] + t[1] + t[2]) / 3), -4.0 / 3);
            for (int row = 0; row < 3; row++) {
                for (int column = 0; column < 3; column++) {
                    a[3 * row + column] += k * s[row] * s[column];
                    b[row][column] += k * t[row] * s[column];
                }
            }
        }
        Matrix3 inverse = Matrix3.ofRows(a).inverse();
        double[] toWhite = inverse.times(neutralFrom);
        double span = dot(neutralFrom, toWhite);
        double[] cells = new double[9];
        for (int row = 0; row < 3; row++) {
            double[] free = inverse.times(b[row]);
            double multiplier = (neutralTo[row] - dot(neutralFrom, free)) / span;
            for (int column = 0; column < 3; column++) {
                cells[3 * row + column] = free[column] + multiplier * toWhite[column];
                if (!Double.isFinite(cells[3 * row + column])) {
                    throw new ArithmeticException("the patches do not differ enough in colour");
                }
            }
        }
        return Matrix3.ofRows(cells);
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
