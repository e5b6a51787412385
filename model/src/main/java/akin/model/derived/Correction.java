package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.colour.Adaptation;
import akin.model.colour.Matrix3;
import akin.model.colour.RgbMatrix;
import akin.model.exposure.Light;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What brings a unit's pictures to the hero's, as test shots say.
 *
 * @param unit name of the unit
 * @param hero name of the hero
 * @param from encoding of the unit
 * @param to encoding of the hero
 * @param matrix from scene-linear light of the unit's gamut to that of the hero's
 * @param plain the same without any correction: what the encodings and gamuts alone ask for
 * @param slope of the correction of codes, red, green and blue
 * @param offset of the correction of codes
 * @param basis what it is worked out from
 */
public record Correction(
        String unit,
        String hero,
        Encoding from,
        Encoding to,
        Matrix3 matrix,
        Matrix3 plain,
        List<Double> slope,
        List<Double> offset,
        Basis basis) {

    private static final int FIRST = 19;
    private static final int LAST = 23;

    /** What was read of both. */
    public enum Basis {
        /** The 24 patches. */
        CHART,
        /** A neutral in colour: exposure and white. */
        NEUTRAL,
        /** Neutrals of unlike reflectance, and no grey: white alone. */
        WHITE,
        /** One level of grey: brightness alone. */
        GREY
    }

    /** Copies the lists. */
    public Correction {
        slope = List.copyOf(slope);
        offset = List.copyOf(offset);
    }

    /** Why there is none for a unit. */
    public enum Lack {
        /** Nothing was read of the unit. */
        UNIT,
        /** Nothing was read of the hero. */
        HERO,
        /** The encoding or the gamut of one of them is not known. */
        MEANING,
        /** Nothing was read of both that light can be told from. */
        COMMON
    }

    /** Why {@link #of} gives none; null when it gives one. */
    public static @Nullable Lack lack(Rig rig, Unit unit, Unit hero) {
        if (rig.reading(unit) == null) {
            return Lack.UNIT;
        }
        if (rig.reading(hero) == null) {
            return Lack.HERO;
        }
        if (unit.encoding() == null || hero.encoding() == null || unit.gamut() == null || hero.gamut() == null) {
            return Lack.MEANING;
        }
        return of(rig, unit, hero) == null ? Lack.COMMON : null;
    }

    /** The correction of a unit, from the most that was read of both; null where nothing was, or a gamut is not known. */
    public static @Nullable Correction of(Rig rig, Unit unit, Unit hero) {
        if (rig.reading(unit) == null
                || rig.reading(hero) == null
                || unit.encoding() == null
                || hero.encoding() == null
                || unit.gamut() == null
                || hero.gamut() == null) {
            return null;
        }
        Matrix3 plain = RgbMatrix.between(unit.gamut(), hero.gamut(), Adaptation.BRADFORD);
        List<Object> mine = MeasuredColour.derive(rig, unit);
        List<Object> heros = MeasuredColour.derive(rig, hero);
        if (first(mine) instanceof MeasuredColour colour && first(heros) instanceof MeasuredColour other) {
            ColourMatch match = ColourMatch.of(other, colour);
            if (match.matrix() != null) {
                return ofChart(colour, other, match.matrix(), plain, unit, hero);
            }
        }
        return ofNeutral(rig, unit, hero, plain);
    }

    private static @Nullable Object first(List<Object> facts) {
        return facts.isEmpty() ? null : facts.get(0);
    }

    private static Correction ofChart(
            MeasuredColour colour, MeasuredColour other, Matrix3 matrix, Matrix3 plain, Unit unit, Unit hero) {
        double[] slope = new double[3];
        double[] offset = new double[3];
        Encoding to = requireNonNull(hero.encoding());
        for (int c = 0; c < 3; c++) {
            // A straight line through the greys, by least squares: in a logarithmic encoding gain is an offset of
            // codes.
            double n = 0;
            double x = 0;
            double y = 0;
            double xx = 0;
            double xy = 0;
            for (int i = FIRST; i <= LAST; i++) {
                double in = to.encode(plain.times(colour.light().get(i))[c]);
                double out = other.levels().get(i).all()[c];
                n++;
                x += in;
                y += out;
                xx += in * in;
                xy += in * out;
            }
            slope[c] = (n * xy - x * y) / (n * xx - x * x);
            offset[c] = (y - slope[c] * x) / n;
        }
        return made(unit, hero, matrix, plain, slope, offset, Basis.CHART);
    }

    private static @Nullable Correction ofNeutral(Rig rig, Unit unit, Unit hero, Matrix3 plain) {
        double[] from = ReadLight.neutral(rig, unit);
        double[] to = ReadLight.neutral(rig, hero);
        Double stops = stops(rig, unit, hero);
        double[] gains = {1, 1, 1};
        Basis basis;
        if (from != null && to != null) {
            double[] at = plain.times(from);
            double level = level(rig, unit, hero, luminance(hero, at) / luminance(hero, to), stops);
            for (int c = 0; c < 3; c++) {
                gains[c] = level * to[c] / ReadLight.some(at[c]);
            }
            basis = stops == null && sheet(rig, unit) != sheet(rig, hero) ? Basis.WHITE : Basis.NEUTRAL;
        } else if (stops != null) {
            double gain = Light.ratio(stops);
            gains = new double[] {gain, gain, gain};
            basis = Basis.GREY;
        } else {
            return null;
        }
        double[] offset = new double[3];
        Encoding encoding = requireNonNull(hero.encoding());
        for (int c = 0; c < 3; c++) {
            offset[c] = encoding.encode(Encoding.MIDDLE_GREY) - encoding.encode(Encoding.MIDDLE_GREY / gains[c]);
        }
        Matrix3 matrix =
                Matrix3.ofRows(gains[0], 0, 0, 0, gains[1], 0, 0, 0, gains[2]).times(plain);
        return made(unit, hero, matrix, plain, new double[] {1, 1, 1}, offset, basis);
    }

    /** By what the ratio of two neutrals is out: a sheet's reflectance is not known, so greys go before it. */
    private static double level(Rig rig, Unit unit, Unit hero, double darker, @Nullable Double stops) {
        boolean mine = sheet(rig, unit);
        boolean heros = sheet(rig, hero);
        if (!mine && !heros) {
            return 1;
        }
        if (stops != null) {
            return darker * Light.ratio(stops);
        }
        return mine && heros ? 1 : darker;
    }

    private static boolean sheet(Rig rig, Unit unit) {
        return MeasuredWhite.ofSheet(requireNonNull(rig.reading(unit)));
    }

    private static double luminance(Unit hero, double[] rgb) {
        return ReadLight.some(RgbMatrix.toXyz(requireNonNull(hero.gamut())).times(rgb)[1]);
    }

    /** Stops by which the hero's grey is brighter; null when one was not read. */
    private static @Nullable Double stops(Rig rig, Unit unit, Unit hero) {
        return first(MeasuredGrey.derive(rig, unit)) instanceof MeasuredGrey grey
                        && first(MeasuredGrey.derive(rig, hero)) instanceof MeasuredGrey other
                ? other.stopsFrom(grey)
                : null;
    }

    private static Correction made(
            Unit unit, Unit hero, Matrix3 matrix, Matrix3 plain, double[] slope, double[] offset, Basis basis) {
        return new Correction(
                unit.name(),
                hero.name(),
                requireNonNull(unit.encoding()),
                requireNonNull(hero.encoding()),
                matrix,
                plain,
                List.of(slope[0], slope[1], slope[2]),
                List.of(offset[0], offset[1], offset[2]),
                basis);
    }
}
