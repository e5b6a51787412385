package akin.model.tone;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How scene light becomes a code value: a transfer curve in pieces, as published.
 *
 * <p>Scene-linear light is relative to the exposure: 0.18 is the light of an 18 % grey card that is exposed correctly, 1
 * that of a perfect white reflector. Results are shares of the full code range, 1023 in 10 bit being 1, whatever scale
 * the curve was published in.
 *
 * @param id lower-case words joined by hyphens, the name of the encoding's file
 * @param name published name
 * @param kind what the curve is for
 * @param pieces the curve from dark to bright; bounds rise, only the last is unbounded
 * @param inputScale factor from scene-linear light to the input of the pieces, for curves whose published formula takes
 *     another unit (1/0.9 where the formula's 1 is a 90 % reflector). 1 when {@code referenceWhite} is given
 * @param referenceWhite for curves of absolute light: the luminance in cd/m2 that a perfect white reflector is shown at;
 *     the input of the pieces is then cd/m2
 * @param codeScale what the curve's value 1 stands for
 * @param clipCode the curve's value at which the published camera processing clips, on the code scale of the curve; null
 *     when the curve is used up to its value 1
 * @param source the document the constants come from
 * @param note what a user should know about the curve's reading
 */
public record Encoding(
        String id,
        String name,
        Kind kind,
        List<Piece> pieces,
        double inputScale,
        @Nullable Double referenceWhite,
        CodeScale codeScale,
        @Nullable Double clipCode,
        String source,
        @Nullable String note) {

    /** Scene-linear light of an 18 % grey card, the middle grey of exposure. Common practice, no source. */
    public static final double MIDDLE_GREY = 0.18;

    /** The widest step tolerated where two pieces meet: one code value in 10 bit. Published roundings stay far below. */
    public static final double WIDEST_STEP = 1.0 / 1023;

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    /** What a curve is for. */
    public enum Kind {
        /** A camera's or a grading space's logarithmic curve. */
        LOG,
        /** A curve for a standard-range display: graded or with the look baked in. */
        DISPLAY,
        /** A curve for a high-dynamic-range display. */
        HDR,
        /** Raw or float data, proportional to light; it has no ceiling of its own, the sensor has. */
        LINEAR
    }

    /** @throws IllegalArgumentException when the parts do not make one rising curve; the message says where */
    public Encoding {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(codeScale, "codeScale");
        Objects.requireNonNull(source, "source");
        pieces = List.copyOf(pieces);
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("id must be lower-case words joined by hyphens, was '" + id + "'");
        }
        if (!(inputScale > 0) || Double.isInfinite(inputScale)) {
            throw new IllegalArgumentException("input scale must be greater than 0, was " + inputScale);
        }
        if (referenceWhite != null) {
            if (!(referenceWhite > 0) || Double.isInfinite(referenceWhite)) {
                throw new IllegalArgumentException(
                        "reference white must be greater than 0 cd/m2, was " + referenceWhite);
            }
            if (inputScale != 1) {
                throw new IllegalArgumentException("give an input scale or a reference white, not both");
            }
        }
        if (clipCode != null && !(clipCode > 0 && clipCode <= 1.2)) {
            throw new IllegalArgumentException("clip code must be between 0 and 1.2, was " + clipCode);
        }
        requireOneCurve(pieces);
    }

    /**
     * The code value of scene light.
     *
     * @param sceneLinear scene-linear light, 0.18 for middle grey; may be negative as noise around black is
     * @return share of the full code range; below 0 or above 1 where the curve goes there
     */
    public double encode(double sceneLinear) {
        double x = sceneLinear * scale();
        for (Piece piece : pieces) {
            if (x < piece.until()) {
                return codeScale.toFull(piece.form().at(x));
            }
        }
        return codeScale.toFull(pieces.get(pieces.size() - 1).form().at(x));
    }

    /**
     * The scene light of a code value, the exact inverse of {@link #encode}. Where the curve is flat the brightest light
     * with that code value is given.
     *
     * @param fullShare share of the full code range
     * @return scene-linear light
     */
    public double decode(double fullShare) {
        double y = codeScale.fromFull(fullShare);
        double from = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            boolean last = i == pieces.size() - 1;
            if (last || y < pieces.get(i + 1).form().at(piece.until())) {
                // Rounded constants leave steps at the borders; a code inside a step belongs to the border itself.
                double x = Math.min(piece.until(), Math.max(from, piece.form().inverse(y)));
                return x / scale();
            }
            from = piece.until();
        }
        throw new IllegalStateException("an encoding has at least one piece");
    }

    /** Share of the full code range that an 18 % grey card lands on. */
    public double middleGrey() {
        return encode(MIDDLE_GREY);
    }

    /**
     * The brightest scene-linear light the encoding can hold: at the clip code when one is published, else at the
     * curve's value 1, which is code 1023 on the full scale and 940 on the legal scale in 10 bit (what a camera records
     * above nominal peak is a fact of the camera). Infinite for {@link Kind#LINEAR} without a clip code.
     */
    public double ceiling() {
        if (clipCode == null && kind == Kind.LINEAR) {
            return Double.POSITIVE_INFINITY;
        }
        return decode(codeScale.toFull(clipCode == null ? 1 : clipCode));
    }

    /** Stops between middle grey and {@link #ceiling()}, {@code log2(ceiling / 0.18)}; infinite when that is. */
    public double headroomStops() {
        return Stops.between(MIDDLE_GREY, ceiling());
    }

    private double scale() {
        return referenceWhite == null ? inputScale : referenceWhite;
    }

    private static void requireOneCurve(List<Piece> pieces) {
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("an encoding needs at least one piece");
        }
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            boolean last = i == pieces.size() - 1;
            if (last != Double.isInfinite(piece.until())) {
                throw new IllegalArgumentException(
                        last
                                ? "the last piece must not have an upper bound"
                                : "piece " + (i + 1) + " needs an upper bound, since others follow");
            }
            if (i > 0 && !last && piece.until() <= pieces.get(i - 1).until()) {
                throw new IllegalArgumentException("piece " + (i + 1) + " ends at " + piece.until()
                        + ", not after piece " + i + " at " + pieces.get(i - 1).until());
            }
            double from = i == 0 ? -Double.MAX_VALUE : pieces.get(i - 1).until();
            double to = last ? Double.MAX_VALUE : piece.until();
            for (double end : new double[] {from, to}) {
                if (!piece.form().holdsAt(end)) {
                    throw new IllegalArgumentException("piece " + (i + 1)
                            + " takes the logarithm of a number that is not positive within its bounds");
                }
            }
        }
        for (int i = 1; i < pieces.size(); i++) {
            double border = pieces.get(i - 1).until();
            double before = pieces.get(i - 1).form().at(border);
            double after = pieces.get(i).form().at(border);
            if (Math.abs(after - before) > WIDEST_STEP) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "pieces %d and %d do not meet at %s: %.6f against %.6f",
                        i,
                        i + 1,
                        border,
                        before,
                        after));
            }
        }
    }
}
