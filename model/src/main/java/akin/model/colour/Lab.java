package akin.model.colour;

/** A colour in CIE 1976 L*a*b*: lightness 0 to 100, and two opponent axes. */
public record Lab(double l, double a, double b) {
    public Lab {
        if (!Double.isFinite(l) || !Double.isFinite(a) || !Double.isFinite(b)) {
            throw new IllegalArgumentException("L*, a* and b* must be finite, was " + l + ", " + a + ", " + b);
        }
    }
}
