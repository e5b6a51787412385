package akin.model.quantity;

import java.util.List;

/**
 * The opening a lens is set to, as a geometric f-number or a photometric T-number, from 0.5 to 128.
 *
 * @param number focal length over entrance pupil (geometric), or that corrected for the lens's transmission (photometric)
 * @param kind which of the two
 */
public record Aperture(double number, Kind kind) {
    /** What the number counts. */
    public enum Kind {
        /** f-number: shape of the opening only; decides depth of field. */
        GEOMETRIC,
        /** T-number: light that arrives; decides exposure. */
        PHOTOMETRIC
    }

    /** How an aperture may be written. */
    public static final String ALLOWED = "an f-number (f/2.8) or a T-number (T2.9)";

    /** The shape of {@link #ALLOWED}. */
    public static final String PATTERN =
            "^([fFtT])" + Notation.GAP + "/?" + Notation.GAP + "(" + Notation.NUMBER + ")$";

    /** Whole-stop marks as engraved on lenses, powers of the square root of two rounded by custom (ISO 517). */
    public static final List<Double> FULL_STOP_MARKS =
            List.of(0.7, 1.0, 1.4, 2.0, 2.8, 4.0, 5.6, 8.0, 11.0, 16.0, 22.0, 32.0, 45.0, 64.0);

    /** Third-stop marks as cameras and meters show them (common practice). */
    public static final List<Double> THIRD_STOP_MARKS = List.of(
            0.7, 0.8, 0.9, 1.0, 1.1, 1.2, 1.4, 1.6, 1.8, 2.0, 2.2, 2.5, 2.8, 3.2, 3.5, 4.0, 4.5, 5.0, 5.6, 6.3, 7.1,
            8.0, 9.0, 10.0, 11.0, 13.0, 14.0, 16.0, 18.0, 20.0, 22.0, 25.0, 29.0, 32.0, 36.0, 40.0, 45.0, 51.0, 57.0,
            64.0);

    private static final int THIRDS_BELOW_ONE = THIRD_STOP_MARKS.indexOf(1.0);
    private static final Notation NOTATION =
            new Notation("aperture", ALLOWED, PATTERN, "from 0.5 to 128").bare("f/$1 or T$1?");

    public Aperture {
        NOTATION.check(number >= 0.5 && number <= 128, number);
    }

    /**
     * Reads {@code f/2.8}, {@code f2.8}, {@code T2.9}, {@code t/2.9}.
     *
     * @throws QuantityException if the text is none of these; a number that stands alone is refused
     */
    public static Aperture parse(String text) {
        return NOTATION.read(
                text,
                m -> new Aperture(
                        Double.parseDouble(m.group(2)),
                        m.group(1).equalsIgnoreCase("f") ? Kind.GEOMETRIC : Kind.PHOTOMETRIC));
    }

    /**
     * Stops by which this opening passes less light than another: 2 log2(this / other), positive when this one is the
     * smaller hole. The kinds are not reconciled here; compare like with like.
     */
    public double stopsFrom(Aperture other) {
        return 2 * Math.log(number / other.number) / Math.log(2);
    }

    /**
     * The printed third-stop mark nearest to a number, counted in stops on the exact series 2^(n/6); beyond the ends of
     * {@link #THIRD_STOP_MARKS}, the end.
     *
     * @param number any positive, finite number
     */
    public static double nearestThirdStopMark(double number) {
        NOTATION.check(number > 0 && Double.isFinite(number), number);
        long thirds = Math.round(6 * Math.log(number) / Math.log(2)) + THIRDS_BELOW_ONE;
        return THIRD_STOP_MARKS.get((int) Math.max(0, Math.min(THIRD_STOP_MARKS.size() - 1L, thirds)));
    }

    /** "f/2.8" or "T2.9". */
    @Override
    public String toString() {
        return (kind == Kind.GEOMETRIC ? "f/" : "T") + Notation.plain(number);
    }
}
