package akin.model.tone;

/** Stops: powers of two of light. */
final class Stops {
    private static final double LN2 = Math.log(2);

    private Stops() {}

    /** Stops from one amount of light to another, positive when {@code to} is brighter. */
    static double between(double from, double to) {
        return Math.log(to / from) / LN2;
    }
}
