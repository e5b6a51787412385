package akin.model.colour;

/** A chromatic adaptation: scaling cone responses by the ratio of two whites. */
public enum Adaptation {
    /** Source: the Bradford matrix as in the ACES colour-space library of the Academy (Lib.Academy.ColorSpaces). */
    BRADFORD(Matrix3.ofRows(0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296)),
    /** Source: CIE 159:2004 (CIECAM02), the matrix of CAT02. */
    CAT02(Matrix3.ofRows(0.7328, 0.4296, -0.1624, -0.7036, 1.6975, 0.0061, 0.0030, 0.0136, 0.9834));

    private final Matrix3 cone;

    Adaptation(Matrix3 cone) {
        this.cone = cone;
    }

    /** The XYZ to XYZ matrix that turns colours seen under one white into colours seen under another. */
    public Matrix3 between(Chromaticity from, Chromaticity to) {
        return between(from.toXyz(), to.toXyz());
    }

    /** As {@link #between(Chromaticity, Chromaticity)}, for whites given as XYZ. */
    public Matrix3 between(double[] fromXyz, double[] toXyz) {
        double[] source = cone.times(fromXyz);
        double[] target = cone.times(toXyz);
        Matrix3 scale = Matrix3.diagonal(target[0] / source[0], target[1] / source[1], target[2] / source[2]);
        return cone.inverse().times(scale).times(cone);
    }
}
