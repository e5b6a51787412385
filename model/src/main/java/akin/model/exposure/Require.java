package akin.model.exposure;

/** Range checks of this room's arguments; the name given is the one that the message shows. */
final class Require {
    private Require() {}

    static double positive(String name, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be above 0 " + unit + " and finite, was " + value);
        }
        return value;
    }

    static double notNegative(String name, double value, String unit) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be 0 " + unit + " or above and finite, was " + value);
        }
        return value;
    }
}
