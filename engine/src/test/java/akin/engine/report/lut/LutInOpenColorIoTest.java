package akin.engine.report.lut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.engine.equip.Catalogue;
import akin.engine.equip.Charts;
import akin.engine.read.Binder;
import akin.model.colour.Adaptation;
import akin.model.colour.Chart;
import akin.model.gear.SignalRange;
import akin.model.look.Cube;
import akin.model.look.CubeError;
import akin.model.look.LookTable;
import akin.model.look.Viewing;
import akin.model.look.ViewingLook;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Both files of a table, applied by OpenColorIO, against the exact function. */
class LutInOpenColorIoTest {

    private static final double CODE = 1 / 1023.0;
    private static final int RANDOM = 400;

    private static final Binder BINDER = new Binder();
    private static final Catalogue CATALOGUE = Catalogue.builtIn(BINDER);
    private static final Chart CHART = Charts.packaged(BINDER).get("after-november-2014");

    @TempDir
    static Path work;

    private static OutsideColour outside;

    @BeforeAll
    static void requireOpenColorIo() {
        outside = OutsideColour.in(work);
    }

    @ParameterizedTest
    @CsvSource({
        "sony-s-log3,s-gamut3,bt1886,bt709,full,legal",
        "arri-logc4,arri-wide-gamut-4,bt1886,bt709,full,legal",
        "arri-logc3-ei800,arri-wide-gamut-3,bt1886,bt709,full,full",
        "canon-log-3,cinema-gamut,bt1886,bt709,legal,legal",
        "red-log3g10,red-wide-gamut-rgb,bt1886,p3-d65,full,legal",
        "acescct,acescg,bt1886,bt709,full,legal",
        "nikon-n-log,n-gamut,pq,bt2020,full,full",
        "apple-log,bt2020,bt1886,dci-p3,full,legal",
        "hlg,bt2020,bt1886,bt709,full,legal",
    })
    void bothFilesGiveTheExactFunction(
            String encoding, String gamut, String viewing, String viewingGamut, String takes, String gives)
            throws IOException {
        LookTable table = table(encoding, gamut, viewing, viewingGamut, takes, gives);
        LookTable.Exact exact = table.exact();
        List<double[]> inputs = anything(encoding.hashCode());
        List<double[]> colours = CubeError.inputs(table, CHART);

        Path clf = work.resolve("a.clf");
        try (Writer out = Files.newBufferedWriter(clf)) {
            LookClf.write("A", "a", table, out);
        }
        List<double[]> all = new ArrayList<>(inputs);
        all.addAll(colours);
        List<double[]> given = outside.apply(clf, all);
        for (int i = 0; i < all.size(); i++) {
            // Wherever in the cube of codes: the steps of the file are those of the function.
            assertThat(given.get(i))
                    .as("CLF of %s", Arrays.toString(all.get(i)))
                    .containsExactly(exact.apply(all.get(i)), within(0.2 * CODE));
        }

        Cube cube = Cube.of(table, 65);
        Path file = work.resolve("a.cube");
        try (Writer out = Files.newBufferedWriter(file)) {
            CubeFile.write("A", table, cube, out);
        }
        List<double[]> shown = outside.apply(file, all);
        for (int i = 0; i < all.size(); i++) {
            // So what CubeError says of our own interpolation is true of that library's.
            assertThat(shown.get(i))
                    .as("cube of %s", Arrays.toString(all.get(i)))
                    .containsExactly(cube.apply(all.get(i)), within(5e-6));
        }
        CubeError error = CubeError.of(table, cube, colours);
        assertThat(error.mean()).as("%s", error).isLessThan(0.25);
        assertThat(error.nearlyAll()).as("%s", error).isLessThan(2);
    }

    /**
     * The vectors are the patches of the chart: both files, applied by OpenColorIO, are within a code of the exact function at a
     * cube of 65 points, at the right exposure, a stop under, and as many stops over as the encoding's steps allow.
     */
    @ParameterizedTest
    @CsvSource({
        "sony-s-log3,s-gamut3,1",
        "sony-s-log3,s-gamut3-cine,1",
        "arri-logc3-ei800,arri-wide-gamut-3,1",
        "canon-log-2,cinema-gamut,1",
        "canon-log-3,cinema-gamut,1",
        "fujifilm-f-log2,f-gamut,1",
        "nikon-n-log,n-gamut,1",
        "dji-d-log,d-gamut,1",
        "apple-log,bt2020,1",
        "hlg,bt2020,1",
        "arri-logc4,arri-wide-gamut-4,1",
        "acescct,acescg,1",
        // Its code steps are the largest, and its blue is far from the display's: bright yellow is off by 1.7 codes a
        // stop over.
        "red-log3g10,red-wide-gamut-rgb,0",
    })
    void theChartIsWithinACodeInBothFiles(String encoding, String gamut, double over) throws IOException {
        LookTable table = table(encoding, gamut, "bt1886", "bt709", "full", "legal");
        LookTable.Exact exact = table.exact();
        Path clf = work.resolve("chart.clf");
        try (Writer out = Files.newBufferedWriter(clf)) {
            LookClf.write("A", "chart", table, out);
        }
        Path file = work.resolve("chart.cube");
        try (Writer out = Files.newBufferedWriter(file)) {
            CubeFile.write("A", table, Cube.of(table, 65), out);
        }
        List<double[]> inputs = new ArrayList<>();
        for (double stops = -1; stops <= over; stops += 0.25) {
            List<double[]> patches = CubeError.inputs(table, CHART, stops);
            assertThat(patches).hasSize(Chart.PATCHES);
            inputs.addAll(patches);
        }
        for (Path table65 : List.of(clf, file)) {
            List<double[]> given = outside.apply(table65, inputs);
            for (int i = 0; i < inputs.size(); i++) {
                assertThat(given.get(i))
                        .as("%s of %s", table65.getFileName(), Arrays.toString(inputs.get(i)))
                        .containsExactly(exact.apply(inputs.get(i)), within(CODE));
            }
        }
    }

    @Test
    void greysStayGreyAndLegalIsTheSameSignalElsewhere() throws IOException {
        LookTable full = table("sony-s-log3", "s-gamut3", "bt1886", "bt709", "full", "legal");
        LookTable legal = table("sony-s-log3", "s-gamut3", "bt1886", "bt709", "legal", "full");
        double grey = full.encoding().middleGrey();
        double[] shown = full.exact().apply(grey, grey, grey);
        // Rec. ITU-R BT.709: 18 % grey reads 40.9 %.
        assertThat(shown).containsExactly(new double[] {0.409, 0.409, 0.409}, within(1e-3));
        double in = (1023 * grey - 64) / 876;
        double[] again = legal.exact().apply(in, in, in);
        assertThat(again[0]).isCloseTo((64 + 876 * shown[0]) / 1023, within(1e-9));
        Cube cube = Cube.of(full, 33);
        for (double code = 0; code <= 1; code += 0.013) {
            double[] out = cube.apply(code, code, code);
            assertThat(out[1]).isCloseTo(out[0], within(1e-6));
            assertThat(out[2]).isCloseTo(out[0], within(1e-6));
        }
    }

    private static LookTable table(
            String encoding, String gamut, String viewing, String viewingGamut, String takes, String gives) {
        Viewing display = new Viewing(
                CATALOGUE.encoding(viewing).orElseThrow(), CATALOGUE.gamuts().get(viewingGamut), 1000);
        return new LookTable(
                CATALOGUE.encoding(encoding).orElseThrow(),
                CATALOGUE.gamuts().get(gamut),
                new ViewingLook(display, Adaptation.BRADFORD),
                range(takes),
                range(gives));
    }

    private static SignalRange range(String word) {
        return word.equals("full") ? SignalRange.FULL : SignalRange.LEGAL;
    }

    private static List<double[]> anything(int seed) {
        Random random = new Random(seed);
        List<double[]> inputs = new ArrayList<>();
        for (int i = 0; i < RANDOM; i++) {
            inputs.add(random.doubles(3).toArray());
            double grey = random.nextDouble();
            inputs.add(new double[] {grey, grey, grey});
        }
        return inputs;
    }
}
