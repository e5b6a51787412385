package akin.model.derived;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import akin.model.finding.Missing;
import akin.model.finding.WhereFound;
import akin.model.gear.Adapter;
import akin.model.gear.Lens;
import akin.model.quantity.Aperture;
import akin.model.quantity.Iso;
import akin.model.quantity.Length;
import akin.model.rig.FittedLens;
import akin.model.rig.Tolerance;
import akin.model.rig.Tolerances;
import akin.published.PublishedTable;
import akin.published.PublishedTable.Row;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CollectedLightTest {

    private static final Tolerances LOSSES = losses();

    private static Tolerances losses() {
        Map<Tolerance, Double> limits = new EnumMap<>(LightRig.tolerances().limits());
        limits.put(Tolerance.PRIME_LOSS, 0.3);
        limits.put(Tolerance.ZOOM_LOSS, 0.6);
        return new Tolerances("test", limits);
    }

    static List<Row> lightValues() {
        return PublishedTable.read("exiftool-optics.csv");
    }

    /** ExifTool 12.57, composite tag LightValue: log2(100 N²/(t S)) must be what the light collected is the inverse of. */
    @ParameterizedTest
    @MethodSource("lightValues")
    void followsAnIndependentProgramsLightValues(Row row) {
        CollectedLight light = new CollectedLight(
                "B",
                row.number("exposure_s"),
                new Iso((int) row.number("iso")),
                new PhotometricStop(
                        "B",
                        new Aperture(row.number("fnumber"), Aperture.Kind.PHOTOMETRIC),
                        row.number("fnumber"),
                        PhotometricStop.Basis.ENGRAVED),
                0);
        assertThat(Math.log(100) / Math.log(2) - light.stops()).isCloseTo(row.number("light_value"), within(1e-6));
    }

    /** Arithmetic: f/4 on a 36 mm wide area has the depth of f/2.67 on 24 mm, and 1.17 stops less light. */
    @Test
    void matchedDepthCostsLight() {
        LightRig.Draft large = LightRig.draft("A");
        large.stop = "T4";
        LightRig.Draft small = LightRig.draft("B");
        small.stop = "T2.6667";
        assertThat(light(small).stopsFrom(light(large))).isCloseTo(1.170, within(5e-4));
        assertThat(light(large).stopsFrom(light(small))).isCloseTo(-1.170, within(5e-4));
    }

    /** opticalglasscn.com and camera-wiki.org, tables of neutral density: ND 0.6 takes 1.993157 stops. */
    @Test
    void filtersTakeTheirStops() {
        LightRig.Draft bare = LightRig.draft("B");
        bare.unit.put("filters", List.of());
        LightRig.Draft two = LightRig.draft("B");
        two.unit.put("filters", LightRig.filters("ND 0.3", "ND 0.3"));
        assertThat(light(bare).stopsFrom(light(LightRig.draft("B")))).isCloseTo(1.993157, within(1e-6));
        assertThat(light(two).stopsFrom(light(LightRig.draft("B")))).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "T2.8, 2.8, ENGRAVED, T2.8",
        "f/2.8, 3.0, FROM_LENS, T3 from f/2.8",
    })
    void photometricStopComesFromWhatIsKnown(String stop, double t, PhotometricStop.Basis basis, String words) {
        LightRig.Draft draft = LightRig.draft("B");
        draft.stop = stop;
        PhotometricStop found = light(draft).stop();
        assertThat(found.tNumber()).isCloseTo(t, within(1e-9));
        assertThat(found.basis()).isEqualTo(basis);
        assertThat(found.words()).isEqualTo(words);
        assertThat(found.guessed()).isFalse();
    }

    @Test
    void anFNumberStandsInForAnUnknownTAndSaysSo() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.stop = "f/2.8";
        draft.lens.remove("openT");
        PhotometricStop found = light(draft).stop();
        assertThat(found.tNumber()).isEqualTo(2.8);
        assertThat(found.guessed()).isTrue();
        assertThat(found.words()).isEqualTo("f/2.8 taken for T");
        assertThat(PhotometricStop.doubt(draft.make(), LOSSES)).isEqualTo(0.6);
        draft.lens.remove("focalTo");
        assertThat(PhotometricStop.doubt(draft.make(), LOSSES)).isEqualTo(0.3);
    }

    /** Geometric optics: T3 behind a loss-free 0.71 is T2.13, 0.988 stops brighter. */
    @Test
    void aReducerBrightens() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.stop = "T3";
        double bare = light(draft).stops();
        Adapter reducer = Sparse.of(Adapter.class, Map.of("id", "reducer", "factor", 0.71));
        LightRig.Draft reduced = LightRig.draft("B");
        reduced.unit.put(
                "lens",
                new FittedLens(
                        Sparse.of(Lens.class, new HashMap<>(reduced.lens)),
                        Length.parse("50 mm"),
                        Aperture.parse("T3"),
                        reducer));
        CollectedLight light = light(reduced);
        assertThat(light.stop().tNumber()).isCloseTo(2.13, within(1e-9));
        assertThat(light.stops() - bare).isCloseTo(0.988, within(5e-4));
    }

    @Test
    void saysWhatIsMissingAndWhereToFindIt() {
        LightRig.Draft draft = LightRig.draft("B");
        draft.unit.remove("iso");
        draft.unit.remove("filters");
        assertThat(CollectedLight.derive(draft.make()))
                .containsExactlyInAnyOrder(
                        new Missing("collected-light", "B", "units.B.iso", WhereFound.PLAN),
                        new Missing("collected-light", "B", "units.B.filters", WhereFound.PLAN));
    }

    private static CollectedLight light(LightRig.Draft draft) {
        return (CollectedLight) CollectedLight.derive(draft.make()).get(0);
    }
}
