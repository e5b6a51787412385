package akin.engine.cli;

import akin.engine.assess.Checker;
import akin.engine.assess.RuleBase;
import akin.engine.book.CompiledBook;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Charts;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.YamlReader;
import akin.model.colour.Adaptation;
import akin.model.colour.Chart;
import akin.model.colour.Matrix3;
import akin.model.colour.RgbMatrix;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** A chart as a unit of the lantern room would record it, had it been shot: nothing here was ever photographed. */
final class ShotChart {

    static final Path RIG = Path.of("..", "samples", "lantern-room", "rig.yaml");
    static final Matrix3 NOTHING = Matrix3.ofRows(1, 0, 0, 0, 1, 0, 0, 0, 1);

    private static final int TOP = 65535;
    private static final Binder BINDER = new Binder();
    private static final Rig PLANNED = new Checker(
                    RuleBase.builtIn(), CompiledBook.load(), BINDER, Catalogue.builtIn(BINDER))
            .equip(YamlReader.read("rig.yaml", text()), Terms.OF_THE_RIG);

    private ShotChart() {}

    private static String text() {
        try {
            return Files.readString(RIG);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Unit unit(String name) {
        return PLANNED.units().stream()
                .filter(unit -> unit.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    static Chart chart(String edition) {
        return Objects.requireNonNull(Charts.packaged(BINDER).get(edition));
    }

    static Chart chart() {
        return chart("after-november-2014");
    }

    /** Code shares of the patches, exposed so many stops over, with the unit's own way of seeing colour. */
    static List<double[]> levels(String name, Chart chart, double stops, Matrix3 own) {
        Unit unit = unit(name);
        Matrix3 toUnit = RgbMatrix.toXyz(unit.gamut())
                .inverse()
                .times(Adaptation.BRADFORD.between(
                        Chart.white(), unit.gamut().white().toXyz()));
        return chart.patches().stream()
                .map(patch -> toUnit.times(patch.xyz()))
                .map(own::times)
                .map(light -> Arrays.stream(light)
                        .map(one -> unit.encoding().encode(one * Math.pow(2, stops)))
                        .toArray())
                .toList();
    }

    /** One grey card, each channel so many times as bright. */
    static double[] grey(String name, double... gains) {
        return Arrays.stream(gains)
                .map(gain -> unit(name).encoding().encode(0.18 * gain))
                .toArray();
    }

    static String yaml(double[] levels) {
        return Arrays.stream(levels)
                .mapToObj(level -> "code " + Math.round(level * TOP) + " of " + TOP)
                .collect(Collectors.joining(", ", "[", "]"));
    }

    static String yaml(List<double[]> patches) {
        return patches.stream().map(ShotChart::yaml).collect(Collectors.joining(", ", "[", "]"));
    }

    static String csv(String unit, List<double[]> patches) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < patches.size(); i++) {
            String levels = yaml(patches.get(i));
            rows.append(unit)
                    .append(',')
                    .append(i + 1)
                    .append(',')
                    .append(levels, 1, levels.length() - 1)
                    .append('\n');
        }
        return rows.toString();
    }

    /** Where the corners of the patches are in {@link #frame}: a trapezium, or a rectangle without lean. */
    static double[][] corners(int lean) {
        return new double[][] {{60 + lean, 50}, {660 - lean, 50 + lean / 2.0}, {660, 450}, {60, 450 - lean / 3.0}};
    }

    /** A frame of 720 by 500 pixels with the chart in it, seen in the perspective of the corners; grey around it. */
    static BufferedImage frame(List<double[]> patches, int lean, int bits) {
        int type = bits == 16 ? DataBuffer.TYPE_USHORT : DataBuffer.TYPE_BYTE;
        ComponentColorModel colours = new ComponentColorModel(
                ColorSpace.getInstance(ColorSpace.CS_sRGB), false, false, Transparency.OPAQUE, type);
        WritableRaster raster = Raster.createInterleavedRaster(type, 720, 500, 3, null);
        double[][] c = corners(lean);
        double top = Math.pow(2, bits) - 1;
        for (int y = 0; y < 500; y++) {
            for (int x = 0; x < 720; x++) {
                double[] uv = inverse(c, x + 0.5, y + 0.5);
                int column = (int) Math.floor(uv[0] * 6);
                int row = (int) Math.floor(uv[1] * 4);
                boolean on = column >= 0 && column < 6 && row >= 0 && row < 4;
                // The frame around each patch is black, as on the chart.
                boolean edge = on && (edge(uv[0] * 6) || edge(uv[1] * 4));
                for (int band = 0; band < 3; band++) {
                    double level = !on ? 0.3 : edge ? 0.05 : patches.get(6 * row + column)[band];
                    raster.setSample(x, y, band, (int) Math.round(level * top));
                }
            }
        }
        return new BufferedImage(colours, raster, false, null);
    }

    private static boolean edge(double place) {
        double part = place - Math.floor(place);
        return part < 0.08 || part > 0.92;
    }

    /**
     * Where a point lies in the chart, 0 to 1 across and down, by Newton's method on the crossings of lines: found another
     * way than by the perspective that the reader solves for.
     */
    private static double[] inverse(double[][] c, double x, double y) {
        double u = (x - 60) / 600;
        double v = (y - 50) / 400;
        for (int i = 0; i < 12; i++) {
            double[] at = project(c, u, v);
            double[] du = project(c, u + 1e-5, v);
            double[] dv = project(c, u, v + 1e-5);
            double a = (du[0] - at[0]) / 1e-5;
            double b = (dv[0] - at[0]) / 1e-5;
            double d = (du[1] - at[1]) / 1e-5;
            double e = (dv[1] - at[1]) / 1e-5;
            double det = a * e - b * d;
            double rx = x - at[0];
            double ry = y - at[1];
            u += (e * rx - b * ry) / det;
            v += (a * ry - d * rx) / det;
        }
        return new double[] {u, v};
    }

    /** A point of the chart in the frame: weighed by how far each corner is away, as a pinhole camera sees a plane. */
    private static double[] project(double[][] c, double u, double v) {
        // The plane's corners have depths w with w0 p0 - w1 p1 + w2 p2 - w3 p3 = 0 (a parallelogram in space), w2 = 1.
        double[][] m = {
            {c[0][0], -c[1][0], -c[3][0], -c[2][0]},
            {c[0][1], -c[1][1], -c[3][1], -c[2][1]},
            {1, -1, -1, -1}
        };
        double[] w = solve(m);
        double w0 = w[0];
        double w1 = w[1];
        double w3 = w[2];
        // In space the chart is p0 + u (p1 - p0) + v (p3 - p0), each corner times its depth.
        double px = w0 * c[0][0] + u * (w1 * c[1][0] - w0 * c[0][0]) + v * (w3 * c[3][0] - w0 * c[0][0]);
        double py = w0 * c[0][1] + u * (w1 * c[1][1] - w0 * c[0][1]) + v * (w3 * c[3][1] - w0 * c[0][1]);
        double pz = w0 + u * (w1 - w0) + v * (w3 - w0);
        return new double[] {px / pz, py / pz};
    }

    /** Three equations by Cramer's rule. */
    private static double[] solve(double[][] m) {
        double det = det(m, 0, 1, 2);
        return new double[] {det(m, 3, 1, 2) / det, det(m, 0, 3, 2) / det, det(m, 0, 1, 3) / det};
    }

    private static double det(double[][] m, int a, int b, int c) {
        return m[0][a] * (m[1][b] * m[2][c] - m[1][c] * m[2][b])
                - m[0][b] * (m[1][a] * m[2][c] - m[1][c] * m[2][a])
                + m[0][c] * (m[1][a] * m[2][b] - m[1][b] * m[2][a]);
    }
}
