package akin.engine.equip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.GearSheet;
import akin.engine.read.ReadingsSheet;
import akin.engine.read.RigSheet;
import akin.engine.read.YamlReader;
import akin.model.finding.Severity;
import akin.model.gear.Adapter;
import akin.model.gear.Aid;
import akin.model.gear.Body;
import akin.model.gear.Clips;
import akin.model.gear.Clock;
import akin.model.gear.Codec;
import akin.model.gear.Connector;
import akin.model.gear.DataFlow;
import akin.model.gear.Input;
import akin.model.gear.Lens;
import akin.model.gear.Media;
import akin.model.gear.Mode;
import akin.model.gear.Mount;
import akin.model.gear.Output;
import akin.model.gear.Profile;
import akin.model.gear.Recorder;
import akin.model.gear.Sampling;
import akin.model.gear.SensorFormat;
import akin.model.gear.SignalRange;
import akin.model.gear.Stabilisation;
import akin.model.gear.TimecodeSource;
import akin.model.quantity.AngularSpeed;
import akin.model.quantity.Aperture;
import akin.model.quantity.Area;
import akin.model.quantity.ColourTemperature;
import akin.model.quantity.CropFactor;
import akin.model.quantity.DataRate;
import akin.model.quantity.DataSize;
import akin.model.quantity.Energy;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Frequency;
import akin.model.quantity.Iso;
import akin.model.quantity.Length;
import akin.model.quantity.Level;
import akin.model.quantity.Mass;
import akin.model.quantity.Mired;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.Percent;
import akin.model.quantity.PictureSize;
import akin.model.quantity.Power;
import akin.model.quantity.Shutter;
import akin.model.quantity.Stops;
import akin.model.quantity.Timespan;
import akin.model.quantity.Tint;
import akin.model.quantity.Voltage;
import akin.model.rig.Battery;
import akin.model.rig.Build;
import akin.model.rig.Cable;
import akin.model.rig.Dimming;
import akin.model.rig.Knob;
import akin.model.rig.LightKind;
import akin.model.rig.Match;
import akin.model.rig.Screen;
import akin.model.rig.Standing;
import akin.model.rig.SyncPlan;
import akin.model.rig.Tolerance;
import akin.model.tone.CodeScale;
import akin.model.tone.Encoding;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** The JSON Schemas say what the reader does: the same keys, words and notations, and the same yes or no. */
class SchemasTest {

    private static final Path CORPUS = Path.of("src", "test", "resources", "akin", "corpus");
    private static final Pattern PLACE = Pattern.compile("# the reader points at (\\d+):(\\d+)\n");
    private static final Schemas SCHEMAS = new Schemas();

    private final Binder binder = new Binder();
    private final Catalogue catalogue = Catalogue.builtIn(binder);

    @ParameterizedTest
    @ValueSource(strings = {"quantity", "rig", "gear", "encoding", "tolerance", "report", "run", "baseline"})
    void eachIsASchemaOfTheStandard(String name) {
        assertThat(SCHEMAS.complaintsOfTheStandard(name)).isEmpty();
        assertThat(SCHEMAS.node(name).path("description").asString("")).isNotBlank();
    }

    @Test
    void notationsAreThoseOfTheReader() {
        Map<String, String> patterns = Map.ofEntries(
                Map.entry("data-rate", DataRate.PATTERN),
                Map.entry("data-size", DataSize.PATTERN),
                Map.entry("frame-rate", FrameRate.PATTERN),
                Map.entry("shutter", Shutter.PATTERN),
                Map.entry("aperture", Aperture.PATTERN),
                Map.entry("iso", Iso.PATTERN),
                Map.entry("neutral-density", NeutralDensity.PATTERN),
                Map.entry("colour-temperature", ColourTemperature.PATTERN),
                Map.entry("tint", Tint.PATTERN),
                Map.entry("crop-factor", CropFactor.PATTERN),
                Map.entry("length", Length.PATTERN),
                Map.entry("area", Area.PATTERN),
                Map.entry("picture-size", PictureSize.PATTERN),
                Map.entry("timespan", Timespan.PATTERN),
                Map.entry("frequency", Frequency.PATTERN),
                Map.entry("turning-speed", AngularSpeed.PATTERN),
                Map.entry("stops", Stops.PATTERN),
                Map.entry("percent", Percent.PATTERN),
                Map.entry("mired", Mired.PATTERN),
                Map.entry("mass", Mass.PATTERN),
                Map.entry("power", Power.PATTERN),
                Map.entry("energy", Energy.PATTERN),
                Map.entry("voltage", Voltage.PATTERN),
                Map.entry("level", Level.PATTERN));
        List<String> checked = new ArrayList<>();
        SCHEMAS.node("quantity").path("$defs").forEachEntry((name, definition) -> {
            assertThat(definition.path("description").asString("")).as(name).isNotBlank();
            if (definition.has("pattern")) {
                assertThat(definition.path("pattern").asString()).as(name).isEqualTo(patterns.get(name));
                checked.add(name);
            }
            JsonNode examples = definition.path("examples");
            assertThat(examples.size()).as(name).isPositive();
        });
        assertThat(checked).containsExactlyInAnyOrderElementsOf(patterns.keySet());
    }

    @Test
    void keysAreThoseOfTheReader() {
        JsonNode rig = SCHEMAS.node("rig");
        keys(rig, RigSheet.class, Set.of());
        keys(rig.at("/properties/production"), RigSheet.ProductionSheet.class, Set.of());
        keys(rig.at("/properties/production/properties/delivery"), RigSheet.DeliverySheet.class, Set.of());
        keys(rig.at("/properties/match"), RigSheet.MatchSheet.class, Set.of());
        keys(rig.at("/properties/scenes/items"), RigSheet.SceneSheet.class, Set.of());
        keys(rig.at("/properties/scenes/items/properties/screens/items"), Screen.class, Set.of());
        keys(rig.at("/properties/scenes/items/properties/dimming/items"), Dimming.class, Set.of());
        keys(rig.at("/properties/waivers/items"), RigSheet.WaiverSheet.class, Set.of());
        keys(rig.at("/properties/kit"), RigSheet.KitSheet.class, Set.of());
        keys(rig.at("/properties/scenes/items/properties/takes"), RigSheet.TakesSheet.class, Set.of());
        keys(rig.at("/$defs/unit/properties/media"), RigSheet.MediaPlanSheet.class, Set.of());
        keys(rig.at("/$defs/unit/properties/timecode"), RigSheet.TimecodeSheet.class, Set.of());
        keys(rig.at("/$defs/unit/properties/sound"), RigSheet.SoundSheet.class, Set.of());
        keys(rig.at("/$defs/unit"), RigSheet.UnitSheet.class, Set.of());
        keys(rig.at("/$defs/unit/properties/build"), Build.class, Set.of());
        keys(rig.at("/$defs/unit/properties/build/properties/battery"), Battery.class, Set.of());
        keys(rig.at("/$defs/unit/properties/lens"), RigSheet.LensSheet.class, Set.of());
        keys(rig.at("/$defs/unit/properties/recorder"), RigSheet.RecorderSheet.class, Set.of());
        keys(rig.at("/$defs/unit/properties/recorder/properties/cable"), Cable.class, Set.of());
        keys(rig.at("/properties/readings"), ReadingsSheet.class, Set.of("akin-readings"));
        JsonNode readings = SCHEMAS.node("readings");
        keys(readings, ReadingsSheet.class, Set.of());
        keys(readings.at("/$defs/reading"), ReadingsSheet.ReadingSheet.class, Set.of());
        keys(readings.at("/$defs/typed-reading"), ReadingsSheet.ReadingSheet.class, Set.of("frame"));
        keys(readings.at("/$defs/black"), ReadingsSheet.BlackSheet.class, Set.of());
        keys(readings.at("/$defs/frame"), ReadingsSheet.FrameSheet.class, Set.of());
        JsonNode gear = SCHEMAS.node("gear");
        keys(gear, GearSheet.class, Set.of());
        keys(gear.at("/$defs/gear-section"), GearSheet.class, Set.of("overrides", "amends"));
        keys(gear.at("/$defs/input"), Input.class, Set.of("id"));
        Map.of("clips", Clips.class, "clock", Clock.class, "data", DataFlow.class, "media", Media.class)
                .forEach((name, type) -> keys(gear.at("/$defs/" + name), type, Set.of("id")));
        Map.of(
                        "body", Body.class,
                        "mode", Mode.class,
                        "profile", Profile.class,
                        "codec", Codec.class,
                        "output", Output.class,
                        "lens", Lens.class,
                        "recorder", Recorder.class,
                        "adapter", Adapter.class,
                        "mount", Mount.class,
                        "format", SensorFormat.class)
                .forEach((name, type) -> keys(gear.at("/$defs/" + name), type, Set.of("id")));
        keys(SCHEMAS.node("encoding"), Encodings.EncodingSheet.class, Set.of());
        keys(SCHEMAS.node("encoding").at("/properties/pieces/items"), Encodings.PieceSheet.class, Set.of());
    }

    @Test
    void wordsAreThoseOfTheReader() {
        JsonNode rig = SCHEMAS.node("rig");
        JsonNode gear = SCHEMAS.node("gear");
        JsonNode encoding = SCHEMAS.node("encoding");
        words(rig.at("/properties/match/properties/view/enum"), Match.ViewAxis.values());
        words(rig.at("/properties/scenes/items/properties/lights/items/enum"), LightKind.values());
        words(rig.at("/$defs/unit/properties/stabilisation/enum"), Stabilisation.values());
        words(rig.at("/$defs/unit/properties/build/properties/standing/enum"), Standing.values());
        words(rig.at("/$defs/unit/properties/keep/items/enum"), Knob.values());
        words(rig.at("/$defs/unit/properties/recorder/properties/reads/enum"), SignalRange.values());
        JsonNode readings = SCHEMAS.node("readings");
        words(readings.at("/$defs/frame/properties/levels/enum"), SignalRange.values());
        assertThat(texts(readings.at("/$defs/chart/enum")))
                .containsExactlyElementsOf(Charts.packaged(binder).keySet());
        words(gear.at("/$defs/stabilisation/else/enum"), Stabilisation.values());
        words(gear.at("/$defs/signal-range/else/enum"), SignalRange.values());
        words(gear.at("/$defs/codec-kind/else/enum"), Codec.Kind.values());
        words(gear.at("/$defs/codec-kinds/else/items/enum"), Codec.Kind.values());
        words(gear.at("/$defs/connector/else/enum"), Connector.values());
        words(gear.at("/$defs/speed-class/else/enum"), Media.SpeedClass.values());
        words(gear.at("/$defs/timecode-sources/else/items/enum"), TimecodeSource.values());
        words(rig.at("/$defs/unit/properties/timecode/properties/source/enum"), TimecodeSource.values());
        words(rig.at("/$defs/unit/properties/timecode/properties/counting/enum"), SyncPlan.Counting.values());
        words(gear.at("/$defs/sampling/else/enum"), Sampling.values());
        words(gear.at("/$defs/iris/else/enum"), Lens.Iris.values());
        words(gear.at("/$defs/aids/else/items/enum"), Aid.values());
        assertThat(texts(encoding.at("/properties/kind/enum")))
                .containsExactlyInAnyOrderElementsOf(lower(Encoding.Kind.values()));
        assertThat(texts(encoding.at("/properties/code-scale/enum")))
                .containsExactlyInAnyOrderElementsOf(lower(CodeScale.values()));
        List<String> severities =
                Arrays.stream(Severity.values()).map(Severity::word).toList();
        assertThat(texts(SCHEMAS.node("report").at("/$defs/finding/properties/severity/enum")))
                .isEqualTo(severities);
    }

    @Test
    void limitsAreThoseThatRulesRead() {
        List<String> limits =
                Arrays.stream(Tolerance.values()).map(Tolerance::key).toList();
        JsonNode profile = SCHEMAS.node("tolerance").at("/properties/limits");
        assertThat(profile.path("properties").propertyNames()).containsExactlyInAnyOrderElementsOf(limits);
        assertThat(texts(profile.path("required"))).containsExactlyInAnyOrderElementsOf(limits);
        assertThat(SCHEMAS.node("rig").at("/properties/tolerances/properties").propertyNames())
                .containsExactlyInAnyOrderElementsOf(limits);
    }

    static Stream<String> shipped() {
        return Stream.of("gear", "encodings", "tolerances")
                .flatMap(folder -> ShippedGear.yaml(ShippedGear.SHARED.resolve(folder)).stream())
                .map(Path::toString);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyFileThatIsShippedIsValid(String file) {
        String folder = ShippedGear.SHARED.relativize(Path.of(file)).getName(0).toString();
        String schema = Map.of("gear", "gear", "encodings", "encoding", "tolerances", "tolerance")
                .getOrDefault(folder, "");
        assertThat(SCHEMAS.complaints(schema, ShippedGear.text(Path.of(file)))).isEmpty();
    }

    static Stream<String> good() {
        return corpus("good");
    }

    static Stream<String> bad() {
        return corpus("bad");
    }

    static Stream<String> readerOnly() {
        return corpus("reader-only");
    }

    @Test
    void theCorpusIsLarge() {
        assertThat(Stream.of("good", "bad", "reader-only").flatMap(SchemasTest::corpus))
                .filteredOn(file -> file.startsWith("rig"))
                .hasSizeGreaterThan(60);
        assertThat(Stream.of("good", "bad", "reader-only").flatMap(SchemasTest::corpus))
                .filteredOn(file -> file.startsWith("gear"))
                .hasSizeGreaterThan(30);
    }

    @ParameterizedTest
    @MethodSource("good")
    void bothAcceptGoodFiles(String file) {
        String text = ShippedGear.text(CORPUS.resolve(file));
        reader(file).accept(text);
        assertThat(SCHEMAS.complaints(schema(file), text)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("bad")
    void bothRejectBadFiles(String file) {
        readerRejects(file);
        assertThat(SCHEMAS.complaints(schema(file), ShippedGear.text(CORPUS.resolve(file))))
                .isNotEmpty();
    }

    /** Unknown ids, keys written twice, values out of their range: a schema cannot or need not tell. */
    @ParameterizedTest
    @MethodSource("readerOnly")
    void theReaderAloneRejectsWhatASchemaCannotTell(String file) {
        readerRejects(file);
        assertThat(SCHEMAS.complaints(schema(file), ShippedGear.text(CORPUS.resolve(file))))
                .isEmpty();
    }

    private void readerRejects(String file) {
        String text = ShippedGear.text(CORPUS.resolve(file));
        Matcher place = PLACE.matcher(text);
        assertThat(place.lookingAt()).as("%s says where its mistake is", file).isTrue();
        assertThatThrownBy(() -> reader(file).accept(text)).isInstanceOfSatisfying(BadInput.class, e -> {
            assertThat(e.line() + ":" + e.column()).as(e.getMessage()).isEqualTo(place.group(1) + ":" + place.group(2));
            assertThat(e.problem()).isNotBlank().doesNotContain("Exception", "akin.", "null");
        });
    }

    private Consumer<String> reader(String file) {
        return switch (schema(file)) {
            case "rig" -> text -> Equipper.equip(YamlReader.read(file, text), binder, catalogue, Terms.OF_THE_RIG);
            case "readings" -> text -> ReadingsFile.read(CORPUS.resolve(file), file, binder);
            default -> text -> GearSheet.read(YamlReader.read(file, text), binder);
        };
    }

    private static String schema(String file) {
        return file.substring(0, file.indexOf('/'));
    }

    private static Stream<String> corpus(String folder) {
        return Stream.of("rig", "gear", "readings")
                .flatMap(kind -> ShippedGear.yaml(CORPUS.resolve(kind).resolve(folder)).stream())
                .map(file -> CORPUS.relativize(file).toString().replace('\\', '/'));
    }

    private static void keys(JsonNode schema, Class<? extends Record> type, Set<String> unwritten) {
        List<String> names = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getName)
                .map(name -> name.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT))
                .filter(name -> !unwritten.contains(name))
                .toList();
        assertThat(schema.path("properties").propertyNames())
                .as("keys of %s", type.getSimpleName())
                .containsExactlyInAnyOrderElementsOf(names);
        assertThat(schema.path("additionalProperties").asBoolean(true))
                .as("%s is closed", type)
                .isFalse();
        schema.path("properties")
                .forEachEntry((key, property) -> assertThat(property.has("description") || property.has("$ref"))
                        .as("%s %s is described", type.getSimpleName(), key)
                        .isTrue());
    }

    private static void words(JsonNode list, Object[] values) {
        assertThat(texts(list))
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(values).map(Object::toString).toList());
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(item -> texts.add(item.asString()));
        return texts;
    }

    private static List<String> lower(Enum<?>[] values) {
        return Arrays.stream(values)
                .map(value -> value.name().toLowerCase(Locale.ROOT))
                .toList();
    }
}
