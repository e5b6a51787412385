package akin.model.colour;

/** Matrices between RGB signals of different gamuts and CIE XYZ. */
public final class RgbMatrix {
    private RgbMatrix() {}

    /**
     * Linear RGB to XYZ relative to the gamut's own white, which gets luminance 1.
     *
     * <p>Source: SMPTE RP 177, derivation from primaries and white.
     */
    public static Matrix3 toXyz(Gamut gamut) {
        Matrix3 primaries = Matrix3.ofColumns(
                gamut.red().toXyz(), gamut.green().toXyz(), gamut.blue().toXyz());
        double[] luminance = primaries.inverse().times(gamut.white().toXyz());
        return primaries.times(Matrix3.diagonal(luminance[0], luminance[1], luminance[2]));
    }

    /** Linear RGB of one gamut to linear RGB of another; white maps to white. */
    public static Matrix3 between(Gamut from, Gamut to, Adaptation adaptation) {
        return toXyz(to)
                .inverse()
                .times(adaptation.between(from.white(), to.white()))
                .times(toXyz(from));
    }
}
