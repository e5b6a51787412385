package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.colour.Adaptation;
import akin.model.colour.Chart;
import akin.model.colour.ColourDifference;
import akin.model.colour.Gamut;
import akin.model.colour.Lab;
import akin.model.colour.Matrix3;
import akin.model.colour.RgbMatrix;
import akin.model.colour.WhiteKeepingFit;
import akin.model.rig.Levels;
import akin.model.rig.Reading;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.List;

/**
 * The patches of a chart as a unit recorded them.
 *
 * @param unitName name of the unit
 * @param encoding what they are encoded in
 * @param gamut what they are relative to
 * @param chart the chart
 * @param levels its patches, as they were read
 */
public record MeasuredColour(String unitName, Encoding encoding, Gamut gamut, Chart chart, List<Levels> levels)
        implements Derived {

    /** Greys that a matrix keeps: between the white patch, which clips first, and the black one, which is mostly flare. */
    private static final List<Integer> NEUTRALS = List.of(19, 20, 21, 22);

    /** Copies the list. */
    public MeasuredColour {
        levels = List.copyOf(levels);
    }

    /** The patches, or what is missing for them; nothing where no unit's were read. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (!ReadLight.asked(rig, one -> !one.patches().isEmpty())) {
            return List.of();
        }
        Reading reading = rig.reading(unit);
        List<Levels> levels = reading == null ? List.of() : reading.patches();
        Inputs inputs = ReadLight.gamut(ReadLight.encoding(Inputs.of(MeasuredColour.class, unit), unit), unit);
        return ReadLight.reading(inputs, unit, "patches", levels.isEmpty() ? null : levels)
                .derive(() -> new MeasuredColour(
                        unit.name(),
                        requireNonNull(unit.encoding()),
                        requireNonNull(unit.gamut()),
                        requireNonNull(requireNonNull(rig.readings()).chart()),
                        levels));
    }

    /** Scene-linear red, green and blue of each patch. */
    public List<double[]> light() {
        return levels.stream().map(one -> ReadLight.rgb(encoding, one)).toList();
    }

    /** The light of the greys together: what is neutral to this unit. */
    public double[] neutral() {
        double[] sum = new double[3];
        for (int index : NEUTRALS) {
            double[] light = ReadLight.rgb(encoding, levels.get(index));
            for (int c = 0; c < 3; c++) {
                sum[c] += light[c];
            }
        }
        return sum;
    }

    /**
     * How far apart two units recorded the chart.
     *
     * @param mean CIEDE2000 over all patches
     * @param meanGive by how much that may be off, as the levels were read
     * @param worst CIEDE2000 of the patch that is furthest
     * @param worstGive by how much that may be off
     * @param patch name of that patch
     */
    public record Apart(double mean, double meanGive, double worst, double worstGive, String patch) {

        /** The mean that is certain. */
        public double surely() {
            return Math.max(0, mean - meanGive);
        }
    }

    /** The matrix from this unit's light to another's that comes nearest and keeps its neutral neutral. */
    public Matrix3 fitTo(MeasuredColour other) {
        return WhiteKeepingFit.of(light(), other.light(), neutral(), other.neutral());
    }

    /** How far apart the patches are as recorded, each decoded by its own encoding and gamut. */
    public Apart from(MeasuredColour other) {
        return apart(other, RgbMatrix.between(gamut, other.gamut, Adaptation.BRADFORD));
    }

    /** How far apart they stay once exposure and white are taken out: each channel by what brings the neutrals together. */
    public Apart balanced(MeasuredColour other) {
        Matrix3 plain = RgbMatrix.between(gamut, other.gamut, Adaptation.BRADFORD);
        double[] at = plain.times(neutral());
        double[] to = other.neutral();
        double[] gains = new double[3];
        for (int c = 0; c < 3; c++) {
            gains[c] = ReadLight.some(to[c]) / ReadLight.some(at[c]);
        }
        return apart(
                other,
                Matrix3.ofRows(gains[0], 0, 0, 0, gains[1], 0, 0, 0, gains[2]).times(plain));
    }

    /** How far apart they stay after a matrix from this unit's light to the other's. */
    public Apart apart(MeasuredColour other, Matrix3 matrix) {
        Matrix3 toXyz = RgbMatrix.toXyz(other.gamut);
        Matrix3 mine = toXyz.times(matrix);
        // The white that lightness is counted from: as bright as the other unit's white patch says.
        double scale = toXyz.times(ReadLight.rgb(other.encoding, other.levels.get(Chart.FIRST_GREY)))[1]
                / chart.patches().get(Chart.FIRST_GREY).xyz()[1];
        double[] white = other.gamut.white().toXyz();
        for (int c = 0; c < 3; c++) {
            white[c] *= scale;
        }
        List<Double> apart = new ArrayList<>();
        List<Double> give = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            Levels of = levels.get(i);
            Levels others = other.levels.get(i);
            double at = difference(mine, of, toXyz, others, other, white);
            double square = 0;
            for (int c = 0; c < 3; c++) {
                double moved = difference(mine, of.moved(c, of.give()), toXyz, others, other, white) - at;
                double movedOther = difference(mine, of, toXyz, others.moved(c, others.give()), other, white) - at;
                square += moved * moved + movedOther * movedOther;
            }
            apart.add(at);
            give.add(Math.sqrt(square));
        }
        int worst = 0;
        for (int i = 1; i < apart.size(); i++) {
            worst = apart.get(i) > apart.get(worst) ? i : worst;
        }
        return new Apart(
                mean(apart),
                mean(give),
                apart.get(worst),
                give.get(worst),
                chart.patches().get(worst).name());
    }

    private double difference(
            Matrix3 mine, Levels of, Matrix3 toXyz, Levels others, MeasuredColour other, double[] white) {
        return ColourDifference.ciede2000(
                Lab.of(toXyz.times(ReadLight.rgb(other.encoding, others)), white),
                Lab.of(mine.times(ReadLight.rgb(encoding, of)), white));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(value -> value).average().orElse(0);
    }
}
