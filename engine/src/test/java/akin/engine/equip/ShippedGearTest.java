package akin.engine.equip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.GearSheet;
import akin.engine.read.Node;
import akin.model.gear.Adapter;
import akin.model.gear.Body;
import akin.model.gear.IsoMenu;
import akin.model.gear.Lens;
import akin.model.gear.Mode;
import akin.model.gear.Mount;
import akin.model.gear.Output;
import akin.model.gear.Profile;
import akin.model.gear.Recorder;
import akin.model.gear.Sampling;
import akin.model.gear.Stabilisation;
import akin.model.quantity.Aperture;
import akin.model.quantity.Area;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Iso;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.PictureSize;
import akin.model.tone.Encoding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every gear file that is shipped reads, is named after what it holds, refers to what exists, and is plausible. */
class ShippedGearTest {

    private static final Set<String> SHARED_FILES = Set.of("mounts.yaml", "formats.yaml");

    private final ShippedGear gear = new ShippedGear();
    private final Catalogue catalogue = Catalogue.builtIn(new Binder());
    private final Map<String, Body> bodies = gear.all(GearSheet::bodies);
    private final Map<String, Lens> lenses = gear.all(GearSheet::lenses);
    private final Map<String, Recorder> recorders = gear.all(GearSheet::recorders);
    private final Map<String, Adapter> adapters = gear.all(GearSheet::adapters);
    private final Map<String, Mount> mounts = gear.all(GearSheet::mounts);

    @Test
    void eachFileHoldsTheOneThingItIsNamedAfter() {
        assertThat(gear.sheets()).hasSizeGreaterThan(25);
        gear.sheets().forEach((file, sheet) -> {
            assertThat(sheet.akinGear()).as("%s", file).isEqualTo(GearSheet.VERSION);
            String name = String.valueOf(file.getFileName());
            if (SHARED_FILES.contains(name)) {
                return;
            }
            List<String> ids = new ArrayList<>();
            List.of(
                            sheet.bodies(),
                            sheet.lenses(),
                            sheet.recorders(),
                            sheet.adapters(),
                            sheet.mounts(),
                            sheet.formats())
                    .forEach(kind -> ids.addAll(kind.keySet()));
            assertThat(ids).as("%s", file).containsExactly(name.replace(".yaml", ""));
            Node.Fields root = (Node.Fields) document(file.toString()).root();
            String folder =
                    String.valueOf(Objects.requireNonNull(file.getParent()).getFileName());
            assertThat(root.fields().keySet()).as("%s", file).containsExactly("akin-gear", "source", folder);
        });
    }

    @Test
    void theCatalogueFindsEachOfThem() {
        bodies.forEach((id, body) -> assertThat(catalogue.body(id)).contains(body));
        lenses.forEach((id, lens) -> assertThat(catalogue.lens(id)).contains(lens));
        recorders.forEach((id, recorder) -> assertThat(catalogue.recorder(id)).contains(recorder));
        adapters.forEach((id, adapter) -> assertThat(catalogue.adapter(id)).contains(adapter));
        assertThat(catalogue.mounts()).isEqualTo(mounts);
        assertThat(catalogue.ids("bodies")).containsExactlyElementsOf(bodies.keySet());
        assertThat(catalogue.ids("lenses")).containsExactlyElementsOf(lenses.keySet());
        assertThat(catalogue.ids("recorders")).containsExactlyElementsOf(recorders.keySet());
        assertThat(catalogue.ids("adapters")).containsExactlyElementsOf(adapters.keySet());
    }

    @Test
    void everyReferenceLeadsSomewhere() {
        Set<String> gamuts = ShippedGear.gamuts();
        bodies.forEach((id, body) -> {
            assertThat(mounts).as(id).containsKey(known(body.mount()));
            assertThat(body.modes()).as(id).isNotEmpty();
            assertThat(body.profiles()).as(id).isNotEmpty();
            body.modes().forEach((word, mode) -> {
                allOf(mode.profiles(), body.profiles().keySet(), id + " " + word);
                allOf(mode.codecs(), body.codecs().keySet(), id + " " + word);
                allOf(mode.outputs(), body.outputs().keySet(), id + " " + word);
                allOf(mode.isoFloors().keySet(), body.profiles().keySet(), id + " " + word);
                boolean recordable = mode.codecs() == null
                        || !mode.codecs().isEmpty()
                        || !Objects.requireNonNullElse(
                                        mode.outputs(), body.outputs().keySet())
                                .isEmpty();
                assertThat(recordable)
                        .as("%s %s can be recorded somewhere", id, word)
                        .isTrue();
            });
            body.profiles().forEach((word, profile) -> {
                assertThat(catalogue.encoding(known(profile.encoding())))
                        .as("%s %s", id, word)
                        .isPresent();
                assertThat(gamuts).as("%s %s", id, word).contains(known(profile.gamut()));
            });
            body.outputs().forEach((word, output) -> {
                if (output.encoding() != null) {
                    assertThat(catalogue.encoding(output.encoding()))
                            .as("%s %s", id, word)
                            .isPresent();
                }
                if (output.gamut() != null) {
                    assertThat(gamuts).as("%s %s", id, word).contains(output.gamut());
                }
            });
        });
        lenses.forEach((id, lens) -> assertThat(mounts).as(id).containsKey(known(lens.mount())));
        adapters.forEach((id, adapter) ->
                assertThat(mounts).as(id).containsKeys(known(adapter.lensMount()), known(adapter.bodyMount())));
    }

    @Test
    void picturesFitTheAreasTheyAreReadFrom() {
        bodies.forEach((id, body) -> {
            double pitch = 0;
            for (Mode mode : body.modes().values()) {
                String what = id + " " + mode.id();
                PictureSize picture = known(mode.picture());
                Area area = known(mode.area());
                assertThat(area.widthMm() / area.heightMm()).as(what).isCloseTo(picture.aspect(), within(0.012));
                // a body has one sensor, so its photosites are as far apart in every mode
                double spacing = known(mode.photositePitch());
                if (pitch > 0) {
                    assertThat(spacing).as("µm between photosites of %s", what).isCloseTo(pitch, withinPercentage(0.5));
                }
                pitch = spacing;
                // common practice, no source: photosites of cameras lie between 1 and 9 µm
                assertThat(pitch).as(what).isBetween(1.0, 9.0);
                PictureSize photosites = mode.photosites() == null ? picture : mode.photosites();
                assertThat(photosites.aspect()).as(what).isCloseTo(picture.aspect(), within(0.012));
                boolean more = photosites.width() > picture.width();
                assertThat(more).as(what).isEqualTo(mode.sampling() != Sampling.ONE_TO_ONE);
            }
        });
    }

    @Test
    void aFrameIsReadOutBeforeTheNextBegins() {
        bodies.forEach((id, body) -> body.modes().forEach((word, mode) -> {
            if (mode.readout() == null) {
                return;
            }
            List<FrameRate> rates = new ArrayList<>(known(mode.rates()).listed());
            if (mode.rates().fastest() != null) {
                rates.add(mode.rates().fastest());
            }
            assertThat(rates).as("%s %s", id, word).isNotEmpty();
            rates.forEach(rate -> assertThat(mode.readout().milliseconds())
                    .as("%s %s at %s", id, word, rate)
                    .isLessThan(1000 / rate.perSecond()));
            assertThat(mode.readout().milliseconds() > 0)
                    .as("%s %s rolls", id, word)
                    .isEqualTo(body.rolls());
        }));
    }

    @Test
    void somethingIsHonestlyNotKnown() {
        assertThat(bodies.values())
                .anyMatch(body -> body.modes().values().stream().allMatch(mode -> mode.readout() == null));
        assertThat(lenses.values()).anyMatch(lens -> lens.openT() == null);
    }

    @Test
    void sensitivitiesStandInTheMenuAndHeadroomFitsTheCurve() {
        bodies.forEach((id, body) -> {
            IsoMenu menu = known(body.iso());
            assertThat(menu.offered()).as(id).hasSizeGreaterThan(4);
            for (Profile profile : body.profiles().values()) {
                String what = id + " " + profile.id();
                Encoding encoding =
                        catalogue.encoding(known(profile.encoding())).orElseThrow();
                Iso floor = known(profile.isoFloor());
                List<Iso> bases = known(profile.isoBases());
                assertThat(menu.offers(floor)).as("%s floor %s", what, floor).isTrue();
                assertThat(bases).extracting(Iso::value).as(what).isNotEmpty().isSorted();
                assertThat(bases).as(what).allMatch(menu::offers, "stands in the menu");
                // a sensor may clip below the curve's ceiling, but nothing is recorded above it
                assertThat(known(profile.headroom()).value()).as(what).isBetween(2.0, encoding.headroomStops());
                assertThat(known(profile.footroom()).value()).as(what).isBetween(4.0, 9.0);
                assertThat(profile.look()).as(what).isEqualTo(encoding.kind() == Encoding.Kind.DISPLAY);
            }
            body.modes().values().forEach(mode -> {
                assertThat(mode.isoFloors().values()).as(id).allMatch(menu::offers, "stands in the menu");
                if (mode.isoBases() != null) {
                    assertThat(mode.isoBases()).as(id).allMatch(menu::offers, "stands in the menu");
                }
            });
        });
    }

    @Test
    void menusAndSignalsArePlausible() {
        bodies.forEach((id, body) -> {
            assertThat(body.shutter()).as(id).isNotNull();
            assertThat(known(body.white()).offered())
                    .as(id)
                    .hasSizeGreaterThan(4)
                    .allMatch(white -> white.kelvin() >= 2000 && white.kelvin() <= 15000);
            assertThat(known(body.internalNd()))
                    .as(id)
                    .extracting(NeutralDensity::density)
                    .allMatch(density -> density > 0 && density <= 3);
            assertThat((body.stabilisation() == Stabilisation.SENSOR) == (known(body.steadyTravel()) > 0))
                    .as("%s travels when its sensor steadies", id)
                    .isTrue();
            assertThat(body.steadyCrop() != null)
                    .as("%s cuts into its picture when that steadies it", id)
                    .isEqualTo(body.stabilisation() == Stabilisation.ELECTRONIC);
            body.codecs()
                    .values()
                    .forEach(codec -> assertThat(codec.bits()).as(id).isIn(8, 10, 12, 16));
            for (Output output : body.outputs().values()) {
                assertThat(output.bits()).as(id).isIn(8, 10, 12, 16);
                assertThat(output.range()).as(id).isNotNull();
                assertThat(output.connector()).as(id).isNotNull();
                // common practice, no source: a camera's picture comes a few frames late at most
                assertThat(known(output.delay())).as(id).isBetween(0.0, 5.0);
            }
        });
        recorders.forEach((id, recorder) -> {
            assertThat(recorder.codecs()).as(id).isNotEmpty();
            assertThat(recorder.inputs()).as(id).isNotEmpty();
            recorder.inputs().values().forEach(input -> {
                assertThat(input.connector()).as(id).isNotNull();
                assertThat(input.kinds()).as(id).isNotEmpty();
            });
            recorder.codecs()
                    .values()
                    .forEach(codec -> assertThat(codec.bits()).as(id).isIn(8, 10, 12, 16));
        });
    }

    @Test
    void lensesArePlausible() {
        lenses.forEach((id, lens) -> {
            Aperture open = known(lens.open());
            Aperture closed = known(lens.closed());
            assertThat(open.number()).as(id).isBetween(1.0, closed.number());
            if (lens.openAtLong() != null) {
                assertThat(lens.prime()).as(id).isFalse();
                assertThat(lens.openAtLong().number()).as(id).isBetween(open.number(), closed.number());
            }
            if (lens.openT() != null) {
                // glass loses light, but no lens of today half of it
                assertThat(2 * Math.log(lens.openT().number() / open.number()) / Math.log(2))
                        .as("%s loses", id)
                        .isBetween(0.0, 1.0);
                assertThat(known(lens.closedT()).number()).as(id).isGreaterThanOrEqualTo(closed.number());
            }
            double focal = known(lens.focal()).millimetres();
            if (lens.focalTo() != null) {
                assertThat(lens.focalTo().millimetres()).as(id).isGreaterThan(focal);
            }
            assertThat(focal).as(id).isBetween(2.0, 400.0);
            assertThat(known(lens.squeeze())).as(id).isBetween(1.0, 2.0);
            assertThat(known(lens.circle()).millimetres()).as(id).isBetween(7.0, 60.0);
            assertThat(known(lens.closeFocus()).millimetres()).as(id).isGreaterThan(focal);
        });
        assertThat(lenses.values())
                .filteredOn(lens -> known(lens.squeeze()) > 1)
                .isNotEmpty();
        assertThat(lenses.values())
                .filteredOn(lens -> lens.openAtLong() != null)
                .isNotEmpty();
    }

    @Test
    void adaptersHaveRoomBetweenTheMounts() {
        adapters.forEach((id, adapter) -> {
            double lens = known(known(mounts.get(known(adapter.lensMount()))).flange())
                    .millimetres();
            double body = known(known(mounts.get(known(adapter.bodyMount()))).flange())
                    .millimetres();
            assertThat(lens - body).as("%s is this thick, in mm", id).isGreaterThan(3);
            assertThat(known(adapter.factor())).as(id).isBetween(0.5, 2.0);
        });
        // from the specification as quoted by avcemporium.com, "Micro Four-Thirds Mount"
        assertThat(known(known(mounts.get("micro-four-thirds")).flange()).millimetres())
                .isEqualTo(19.25);
    }

    private Document document(String file) {
        return gear.documents().entrySet().stream()
                .filter(entry -> entry.getKey().toString().equals(file))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
    }

    private static void allOf(@Nullable Collection<String> words, Set<String> known, String what) {
        if (words != null) {
            assertThat(known).as(what).containsAll(words);
        }
    }

    private static <T> T known(@Nullable T fact) {
        assertThat(fact).isNotNull();
        return Objects.requireNonNull(fact);
    }
}
