package akin.model.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import akin.model.colour.Adaptation;
import akin.model.colour.Gamut;
import akin.model.colour.Matrix3;
import akin.model.colour.RgbMatrix;
import akin.model.gear.SignalRange;
import akin.model.tone.Encoding;
import akin.published.PublishedTable;
import akin.published.PublishedTable.Row;
import akin.published.SharedData;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ViewingLookTest {

    private static final Map<String, Gamut> GAMUTS = SharedData.gamuts();
    private static final Map<String, Encoding> ENCODINGS = SharedData.encodings();

    private static ViewingLook on(String encoding, String gamut, double peak) {
        return new ViewingLook(new Viewing(ENCODINGS.get(encoding), GAMUTS.get(gamut), peak), Adaptation.BRADFORD);
    }

    // Rec. ITU-R BT.709, opto-electronic transfer function, and BT.1886: 0.18 reads 0.409008, and shows 0.409008^2.4.
    @ParameterizedTest
    @ValueSource(doubles = {100, 400, 1000, 4000})
    void greyIsAsBrightOnEveryDisplay(double peak) {
        ViewingLook look = on("pq", "bt2020", peak);
        double light = Math.pow(look.tone(0.18), 2.4) * peak;
        assertThat(light).isCloseTo(100 * Math.pow(0.409008, 2.4), within(0.05));
    }

    @ParameterizedTest
    @ValueSource(doubles = {100, 1000, 4000})
    void contrastAtGreyIsTheSameOnEveryDisplay(double peak) {
        ViewingLook look = on("pq", "bt2020", peak);
        double step = 1.001;
        double slope = Math.log(look.tone(0.18 * step) / look.tone(0.18 / step)) / (2 * Math.log(step));
        assertThat(2.4 * slope).isCloseTo(1.42, within(0.005));
    }

    // Rec. ITU-R BT.2100: 1000 cd/m2 is PQ 0.751827 (transfer-functions.csv), of the legal range.
    @Test
    void whiteIsThePeakOfTheDisplay() {
        double white = on("pq", "bt2020", 1000).finish(2);
        assertThat((1023 * white - 64) / 876).isCloseTo(0.751827, within(2e-4));
        assertThat(on("bt1886", "bt709", 1000).finish(2)).isCloseTo(940 / 1023.0, within(1e-4));
        assertThat(on("bt1886", "bt709", 1000).finish(-1)).isCloseTo(64 / 1023.0, within(1e-3));
    }

    @Test
    void theScaleRisesWithTheLight() {
        ViewingLook look = on("bt1886", "bt709", 100);
        double before = -1;
        for (double light = -0.2; light < 60; light += light < 1 ? 0.001 : 0.1) {
            assertThat(look.tone(light)).isGreaterThan(before).isBetween(0.0, 1.0);
            before = look.tone(light);
        }
        assertThat(look.tone(Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(look.tone(Double.NEGATIVE_INFINITY)).isEqualTo(0);
    }

    // gamut-matrices.csv, RGB to XYZ: what goes to the working gamut and on to XYZ went there as published.
    @ParameterizedTest
    @CsvSource({
        "ARRI Wide Gamut 3,arri-wide-gamut-3", "ARRI Wide Gamut 4,arri-wide-gamut-4", "S-Gamut3,s-gamut3",
        "S-Gamut3.Cine,s-gamut3-cine", "Cinema Gamut,cinema-gamut", "REDWideGamutRGB,red-wide-gamut-rgb",
        "ITU-R BT.2020,bt2020"
    })
    void cameraLightReachesTheWorkingGamutAsPublished(String name, String id) {
        Matrix3 xyz = RgbMatrix.toXyz(ViewingLook.WORKING)
                .times(on("bt1886", "bt709", 100).toWorking(GAMUTS.get(id)));
        Row row = matrix(name, "none", "");
        for (int i = 0; i < 9; i++) {
            assertThat(xyz.at(i / 3, i % 3)).isCloseTo(row.number("m" + i / 3 + i % 3), within(1e-9));
        }
        assertThat(ViewingLook.adapts(GAMUTS.get(id))).isFalse();
    }

    // ACEScg has another white. The published way from BT.2020 to ACES2065-1 by Bradford, and by CAT02, undone.
    @ParameterizedTest
    @CsvSource({"Bradford,BRADFORD", "CAT02,CAT02"})
    void anotherWhiteIsAdaptedAsPublished(String published, Adaptation adaptation) {
        ViewingLook look = new ViewingLook(new Viewing(ENCODINGS.get("bt1886"), GAMUTS.get("bt709"), 100), adaptation);
        Row row = matrix("ITU-R BT.2020", published, "AP0");
        double[] cells = new double[9];
        for (int i = 0; i < 9; i++) {
            cells[i] = row.number("m" + i / 3 + i % 3);
        }
        Matrix3 there = Matrix3.ofRows(cells);
        Matrix3 back = look.toWorking(GAMUTS.get("aces2065-1")).times(there);
        Matrix3 direct = look.toWorking(GAMUTS.get("bt2020"));
        for (int i = 0; i < 9; i++) {
            assertThat(back.at(i / 3, i % 3)).isCloseTo(direct.at(i / 3, i % 3), within(1e-9));
        }
        assertThat(ViewingLook.adapts(GAMUTS.get("aces2065-1"))).isTrue();
    }

    private static Row matrix(String gamut, String adaptation, String to) {
        return PublishedTable.read("gamut-matrices.csv").stream()
                .filter(row -> row.text("gamut").equals(gamut))
                .filter(row -> row.text("adaptation").equals(adaptation))
                .filter(row -> to.isEmpty() || !row.text("provenance").contains("OpenColorIO"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void finishedAndUndevelopedPicturesGetNoTable() {
        assertThat(LookTable.unfit(ENCODINGS.get("bt709"))).isEqualTo(LookTable.Unfit.FINISHED);
        assertThat(LookTable.unfit(ENCODINGS.get("pq"))).isEqualTo(LookTable.Unfit.FINISHED);
        assertThat(LookTable.unfit(ENCODINGS.get("linear"))).isEqualTo(LookTable.Unfit.UNDEVELOPED);
        assertThat(LookTable.unfit(ENCODINGS.get("hlg"))).isNull();
        ViewingLook look = on("bt1886", "bt709", 100);
        assertThatThrownBy(() -> new LookTable(
                        ENCODINGS.get("bt709"), GAMUTS.get("bt709"), look, SignalRange.FULL, SignalRange.LEGAL))
                .hasMessageContaining("no look");
        assertThatThrownBy(() -> on("hlg", "bt2020", 1000)).hasMessageContaining("HLG");
        assertThatThrownBy(() -> on("pq", "bt2020", 50)).hasMessageContaining("50");
    }

    @Test
    void aCubeIsFittedToTheFunctionRedFastest() {
        LookTable table = new LookTable(
                ENCODINGS.get("sony-s-log3"),
                GAMUTS.get("s-gamut3"),
                on("bt1886", "bt709", 100),
                SignalRange.FULL,
                SignalRange.LEGAL);
        LookTable.Exact exact = table.exact();
        Cube cube = Cube.of(table, 17);
        assertThat(cube.count()).isEqualTo(17 * 17 * 17 * 3);
        // The neighbours of the second point are further off in each channel than a fit may move it.
        for (int c = 0; c < 3; c++) {
            assertThat(cube.millionths(3 + c) / 1e6).isCloseTo(exact.apply(1 / 16.0, 0, 0)[c], within(1.5e-3));
        }
        double[] third = exact.apply(2 / 16.0, 0, 0);
        assertThat(cube.millionths(3) / 1e6).isNotCloseTo(third[0], within(1.5e-3));
        assertThat(cube.apply(-1, 2, 0.5)).containsExactly(cube.apply(0, 1, 0.5), within(0.0));
        assertThatThrownBy(() -> Cube.of(table, 1)).hasMessageContaining("not 1");
    }

    /** The tone scale bends up below grey and down over it; a fitted line is off on one side at its ends, on the other between. */
    @Test
    void aCubeIsOffByAsMuchAtItsPointsAsBetweenThem() {
        LookTable table = new LookTable(
                ENCODINGS.get("sony-s-log3"),
                GAMUTS.get("s-gamut3"),
                on("bt1886", "bt709", 100),
                SignalRange.FULL,
                SignalRange.FULL);
        LookTable.Exact exact = table.exact();
        Cube cube = Cube.of(table, 65);
        for (int point : new int[] {14, 16, 18, 32, 34, 36}) {
            double at = point / 64.0;
            double between = (point + 0.5) / 64.0;
            double here = cube.apply(at, at, at)[1] - exact.apply(at, at, at)[1];
            double there = cube.apply(between, between, between)[1] - exact.apply(between, between, between)[1];
            assertThat(Math.abs(here)).as("at %d", point).isGreaterThan(1e-5);
            assertThat(there / here).as("at %d", point).isCloseTo(-1, within(0.25));
        }
    }
}
