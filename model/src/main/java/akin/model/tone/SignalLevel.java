package akin.model.tone;

/**
 * Signal levels as shares of the full 10-bit code range (code / 1023) and of the legal range (black code 64 is 0, nominal
 * peak code 940 is 1). Values outside 0 to 1 are kept: legal values run from -0.073 to 1.095.
 *
 * <p>Source: Rec. ITU-R BT.709 and BT.2100, 10-bit narrow range quantisation. In 12 bit the same legal level differs by
 * less than 0.0002 of the full range.
 */
public final class SignalLevel {
    private static final double TOP = 1023;
    private static final double BLACK = 64;
    private static final double SPAN = 876;

    private SignalLevel() {}

    /** Share of the legal range, {@code (1023 v - 64) / 876}. */
    public static double fullToLegal(double full) {
        return (TOP * full - BLACK) / SPAN;
    }

    /** Share of the full range, {@code (876 v + 64) / 1023}. */
    public static double legalToFull(double legal) {
        return (SPAN * legal + BLACK) / TOP;
    }

    /** The 10-bit code value, not rounded and not limited to 0 to 1023. */
    public static double code10(double full) {
        return TOP * full;
    }
}
