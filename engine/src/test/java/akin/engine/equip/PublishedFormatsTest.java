package akin.engine.equip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import akin.engine.read.GearSheet;
import akin.model.gear.Body;
import akin.model.gear.SensorFormat;
import akin.model.optics.CropReference;
import akin.model.optics.FieldOfView;
import akin.model.quantity.Area;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The shipped formats are the published ones, and crop factors counted from areas are those that are published. */
class PublishedFormatsTest {

    /** Sizes of formats with the source of each row. */
    private static final Path PUBLISHED =
            Path.of("..", "model", "src", "test", "resources", "akin", "published", "film-formats.csv");

    /** The lensfun database (CC BY-SA 3.0), Debian package liblensfun-data-v1; nothing of it is copied. */
    private static final Path LENSFUN = Path.of("/usr/share/lensfun");

    private static final Pattern CROP_FACTOR = Pattern.compile("<cropfactor>([0-9.]+)</cropfactor>");

    /** The shipped formats in the order of the published table. */
    private static final List<String> ORDER = List.of(
            "full-frame",
            "super-35-4-perf",
            "academy",
            "anamorphic-35",
            "super-35-185",
            "super-35-239",
            "super-16",
            "aps-c-15",
            "aps-c-16",
            "four-thirds",
            "one-inch",
            "two-thirds-inch");

    /** Handbook values that no published table at hand confirms; they say so themselves. */
    private static final List<String> FROM_MEMORY = List.of("super-35-3-perf", "sixty-five-5-perf");

    private final ShippedGear gear = new ShippedGear();
    private final Map<String, SensorFormat> formats = gear.all(GearSheet::formats);

    @Test
    void formatsHaveThePublishedSizesAndCropFactors() {
        List<String> rows = ShippedGear.text(PUBLISHED).lines().skip(1).toList();
        assertThat(formats.keySet())
                .containsAll(ORDER)
                .containsAll(FROM_MEMORY)
                .hasSize(rows.size() + FROM_MEMORY.size());
        assertThat(rows).hasSameSizeAs(ORDER);
        for (int i = 0; i < ORDER.size(); i++) {
            String[] cells = rows.get(i).split(",", 6);
            SensorFormat format = Objects.requireNonNull(formats.get(ORDER.get(i)));
            Area area = format.area();
            assertThat(area.widthMm()).as(cells[0]).isEqualTo(Double.parseDouble(cells[1]));
            assertThat(area.heightMm()).as(cells[0]).isEqualTo(Double.parseDouble(cells[2]));
            assertThat(area.diagonalMm()).as(cells[0]).isCloseTo(Double.parseDouble(cells[3]), within(1e-3));
            assertThat(crop(area)).as(cells[0]).isCloseTo(Double.parseDouble(cells[4]), within(1e-4));
            assertThat(format.source()).as(cells[0]).isNotNull().doesNotContain("from memory");
        }
        FROM_MEMORY.forEach(
                id -> assertThat(Objects.requireNonNull(formats.get(id)).source())
                        .as(id)
                        .contains("from memory"));
    }

    @Test
    void cropFactorsOfEveryModeLeadBackToItsArea() {
        gear.all(GearSheet::bodies)
                .forEach((id, body) -> body.modes().forEach((word, mode) -> {
                    Area area = Objects.requireNonNull(mode.area());
                    double ratio = area.widthMm() / area.heightMm();
                    for (CropReference reference : CropReference.values()) {
                        double crop = FieldOfView.cropFactor(area.widthMm(), area.heightMm(), reference);
                        assertThat(FieldOfView.activeWidthFromCrop(crop, reference, ratio))
                                .as("%s %s by its %s", id, word, reference)
                                .isCloseTo(area.widthMm(), within(1e-9));
                    }
                    // a picture flatter than 3:2 has lost more of its diagonal than of its width, a taller one less
                    double byWidth = FieldOfView.cropFactor(area.widthMm(), area.heightMm(), CropReference.WIDTH);
                    assertThat(crop(area) > byWidth).as("%s %s", id, word).isEqualTo(ratio > 1.5);
                }));
    }

    @Test
    void publishedCropFactorsBracketThoseOfTheFormats() throws IOException {
        NavigableSet<Double> published = published();
        for (String id : List.of("full-frame", "aps-c-15", "aps-c-16", "four-thirds", "one-inch", "two-thirds-inch")) {
            bracket(id, crop(Objects.requireNonNull(formats.get(id)).area()), published);
        }
    }

    @Test
    void publishedCropFactorsBracketThoseOfTheBodies() throws IOException {
        NavigableSet<Double> published = published();
        Map<String, Body> bodies = gear.all(GearSheet::bodies);
        // the whole sensor of a hybrid in 3:2, of Micro Four Thirds in 4:3, of an action body in 16:9
        Map<String, Double> shapes = Map.of(
                "fenwright-sedge",
                1.5,
                "corvane-plover",
                1.5,
                "pellworth-teasel",
                17.3 / 13,
                "skerrivore-whelk",
                16 / 9.0);
        shapes.forEach((id, ratio) -> {
            double width = Objects.requireNonNull(bodies.get(id)).modes().values().stream()
                    .mapToDouble(mode -> Objects.requireNonNull(mode.area()).widthMm())
                    .max()
                    .orElseThrow();
            bracket(id, crop(new Area(width, width / ratio)), published);
        });
    }

    /** A published crop factor stands on each side within 3 %, or it is one itself, to the digits that are published. */
    private static void bracket(String what, double crop, NavigableSet<Double> published) {
        assertThat(published.floor(crop + 1e-3))
                .as("published at or under %s %s", what, crop)
                .isGreaterThan(crop / 1.03);
        assertThat(published.ceiling(crop - 1e-3))
                .as("published at or over %s %s", what, crop)
                .isLessThan(crop * 1.03);
    }

    private static double crop(Area area) {
        return FieldOfView.cropFactor(area.widthMm(), area.heightMm(), CropReference.DIAGONAL);
    }

    private static NavigableSet<Double> published() throws IOException {
        assumeTrue(Files.isDirectory(LENSFUN), "needs the lensfun database (Debian package liblensfun-data-v1)");
        NavigableSet<Double> factors = new TreeSet<>();
        try (var tree = Files.walk(LENSFUN)) {
            for (Path file : tree.filter(f -> f.toString().endsWith(".xml")).toList()) {
                Matcher each = CROP_FACTOR.matcher(ShippedGear.text(file));
                while (each.find()) {
                    factors.add(Double.valueOf(each.group(1)));
                }
            }
        }
        assertThat(factors).hasSizeGreaterThan(50);
        return factors;
    }
}
