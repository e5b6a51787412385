package akin.engine.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import akin.engine.edit.Edits;
import akin.model.finding.Edit;
import akin.model.quantity.Iso;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Any value may be written with its source, and a setting may be left to the body. */
class WithSourceTest {

    private static final Path PAIR =
            Path.of("..", "rules", "src", "main", "resources", "akin", "rules", "matched-pair.yaml");

    private final Binder binder = new Binder();

    @Test
    void everyValueReadsTheSameWithItsSource() throws IOException {
        Document pair = YamlReader.read("pair.yaml", Files.readString(PAIR));
        RigSheet bare = binder.bind(pair, RigSheet.class);
        List<String> paths = new ArrayList<>();
        walk(pair.root(), "", paths);
        assertThat(paths).hasSizeGreaterThan(150).contains("gear.bodies.large.aids.0", "units.B.lens", "units.A.iso");
        for (String path : paths) {
            String old = Edits.slice(pair, pair.at(path).orElseThrow().place());
            String text = Edits.apply(pair, List.of(new Edit(path, "{value: " + old + ", source: page 3}")));
            Document with = YamlReader.read("pair.yaml", text);
            assertThat(binder.bind(with, RigSheet.class)).as(path).isEqualTo(bare);
            assertThat(Edits.slice(with, with.placeOf(path))).as(path).isEqualTo(old);
        }
    }

    /** Values on one line, those in lists and those that hold others included. */
    private static void walk(Node node, String path, List<String> paths) {
        if (node instanceof Node.Fields fields) {
            if (fields.flow()) {
                paths.add(path);
            }
            fields.fields()
                    .forEach((key, field) -> walk(field.value(), path.isEmpty() ? key : path + "." + key, paths));
        } else if (node instanceof Node.Items items) {
            if (items.flow()) {
                paths.add(path);
            }
            for (int i = 0; i < items.items().size(); i++) {
                walk(items.items().get(i), path + "." + i, paths);
            }
        } else {
            paths.add(path);
        }
    }

    @Test
    void aValueWithinAValueWithItsSourceIsComplainedOfAtItsPlace() {
        assertThatThrownBy(() -> binder.bind(
                        YamlReader.read("gear.yaml", "kit: {value: {filters: [ND 0.3, 0.6]}, source: the van}\n"),
                        RigSheet.class))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith("gear.yaml:1:33: \"0.6\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"auto", "'auto'", "{value: auto, source: the camera assistant}"})
    void autoLeavesASettingToTheBody(String auto) {
        RigSheet.UnitSheet unit = unit(
                "shutter: " + auto + ", iso: " + auto + ", white: " + auto + ", lens: {use: x, stop: " + auto + "}");
        assertThat(Objects.requireNonNull(unit.shutter()).automatic()).isTrue();
        assertThat(Objects.requireNonNull(unit.iso()).given()).isEmpty();
        assertThat(Objects.requireNonNull(unit.white()).automatic()).isTrue();
        assertThat(Objects.requireNonNull(Objects.requireNonNull(unit.lens()).stop())
                        .automatic())
                .isTrue();
    }

    @Test
    void whatIsGivenIsGivenAndWhatIsNotSaidIsNotAutomatic() {
        RigSheet.UnitSheet unit = unit("iso: 800");
        assertThat(Objects.requireNonNull(unit.iso()).given()).contains(Iso.parse("800"));
        assertThat(unit.iso().automatic()).isFalse();
        assertThat(unit.shutter()).isNull();
    }

    @Test
    void autoIsWrittenSmall() {
        assertThatThrownBy(() -> unit("iso: Auto"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("read 'Auto'. Did you mean 'auto'?");
    }

    private RigSheet.UnitSheet unit(String settings) {
        return binder.bind(
                YamlReader.read("unit.yaml", "{body: heron, mode: uhd, " + settings + "}\n"), RigSheet.UnitSheet.class);
    }
}
