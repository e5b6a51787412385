package akin.model.colour;

/**
 * Colour temperature on a scale where equal steps look about equal: micro reciprocal degrees, {@code 10^6 / kelvin}.
 * Filters shift a light by a fixed number of mired, whatever its temperature.
 */
public final class Mired {
    private static final double MICRO = 1e6;

    private Mired() {}

    /**
     * @param kelvin colour temperature, greater than 0
     * @throws IllegalArgumentException when it is not
     */
    public static double of(double kelvin) {
        return reciprocal("colour temperature", kelvin);
    }

    /** The colour temperature in kelvin of a mired value greater than 0. */
    public static double toKelvin(double mired) {
        return reciprocal("mired value", mired);
    }

    /** Shift that turns one colour temperature into another: negative towards blue, positive towards amber. */
    public static double shift(double fromKelvin, double toKelvin) {
        return of(toKelvin) - of(fromKelvin);
    }

    private static double reciprocal(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be greater than 0, was " + value);
        }
        return MICRO / value;
    }
}
