package akin.model.tone;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of an encoding's curve.
 *
 * @param until upper bound of the input (scene-linear light times the encoding's input scale), exclusive: at the bound
 *     itself the next piece holds. Positive infinity for the last piece.
 * @param form the formula that holds up to there
 */
public record Piece(double until, CurveForm form) {

    public Piece {
        Objects.requireNonNull(form, "form");
        if (Double.isNaN(until) || until == Double.NEGATIVE_INFINITY) {
            throw new IllegalArgumentException("until must be a number, was " + until);
        }
    }

    /** A piece without an upper bound. */
    public static Piece last(CurveForm form) {
        return new Piece(Double.POSITIVE_INFINITY, form);
    }

    /**
     * A piece as it is written in an encoding file: a bound, absent in the last piece, and exactly one formula.
     *
     * @throws IllegalArgumentException when none or several formulas are given
     */
    public static Piece of(
            @Nullable Double until,
            CurveForm.@Nullable Linear linear,
            CurveForm.@Nullable Log log,
            CurveForm.@Nullable Power power,
            CurveForm.@Nullable Pq pq) {
        List<CurveForm> given = new ArrayList<>();
        for (CurveForm form : Arrays.<@Nullable CurveForm>asList(linear, log, power, pq)) {
            if (form != null) {
                given.add(form);
            }
        }
        if (given.size() != 1) {
            throw new IllegalArgumentException(
                    "a piece has exactly one of linear, log, power and pq, but this one has " + given.size());
        }
        return new Piece(until == null ? Double.POSITIVE_INFINITY : until, given.get(0));
    }
}
