package akin.engine.edit;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.model.finding.Edit;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Splices on the text as it is are the same as edits one after the other. */
class SpliceTest {

    private static final String RIG = """
            akin: 1 # 𝔑 takes two halves
            units:
              A: {shutter: 180°, iso: 800}
              B:
                shutter: "1/60" # out of habit
                filters: [ND 0.3, ND 0.6]
                lens:
                  use: wide
                  stop: T4
            """;

    record Case(String name, String text, List<Edit> edits, int pieces) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Edit edit(String path, @Nullable String to) {
        return new Edit(path, to);
    }

    static Stream<Case> cases() {
        Edit shutter = edit("units.B.shutter", "1/50");
        return Stream.of(
                new Case("one value", RIG, List.of(shutter), 1),
                new Case("two values, the later first", RIG, List.of(shutter, edit("units.A.shutter", "172.8°")), 2),
                new Case("neighbours", RIG, List.of(edit("units.A.shutter", "90°"), edit("units.A.iso", "400")), 2),
                new Case("a list", RIG, List.of(edit("units.B.filters", "[ND 0.9]")), 1),
                new Case("a mapping", RIG, List.of(edit("units.B.lens", "none")), 1),
                new Case("a key more", RIG, List.of(edit("units.B.white", "4300 K")), 1),
                new Case("a key less", RIG, List.of(edit("units.B.filters", null)), 1),
                new Case("a key less in braces", RIG, List.of(edit("units.A.iso", null)), 1),
                new Case("the same value again", RIG, List.of(edit("units.A.iso", "800")), 1),
                new Case(
                        "two keys more in one mapping",
                        RIG,
                        List.of(edit("units.B.white", "4300 K"), edit("units.B.iso", "800")),
                        1),
                new Case(
                        "two keys that are one after the other taken out",
                        RIG,
                        List.of(edit("units.B.filters", null), edit("units.B.shutter", null)),
                        2),
                new Case(
                        "both keys of a mapping",
                        RIG,
                        List.of(edit("units.A.iso", null), edit("units.A.shutter", null)),
                        1),
                new Case(
                        "lines that end as on Windows",
                        RIG.replace("\n", "\r\n"),
                        List.of(shutter, edit("units.B.white", "4300 K"), edit("units.A.iso", "400")),
                        3),
                new Case("a byte order mark", "\uFEFF" + RIG, List.of(shutter), 1));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void splicesAreTheEdits(Case one) {
        Document document = YamlReader.read("rig.yaml", one.text());
        List<Splice> splices = Splice.of(document, one.edits());
        assertThat(made(one.text(), splices)).isEqualTo(Edits.apply(document, one.edits()));
        assertThat(splices).hasSize(one.pieces());
    }

    @Test
    void aValueIsReplacedWhole() {
        Document document = YamlReader.read("rig.yaml", RIG);
        List<Splice> splices = Splice.of(document, List.of(edit("units.A.shutter", "172.8°")));
        assertThat(splices).singleElement().satisfies(splice -> {
            assertThat(splice.text()).isEqualTo("172.8°");
            assertThat(RIG.codePoints()
                            .skip(splice.from())
                            .limit(splice.to() - splice.from())
                            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                            .toString())
                    .isEqualTo("180°");
        });
    }

    /** From the end to the start, so that no splice moves another. */
    private static String made(String text, List<Splice> splices) {
        StringBuilder out = new StringBuilder(text);
        for (int i = splices.size() - 1; i >= 0; i--) {
            Splice splice = splices.get(i);
            out.replace(
                    text.offsetByCodePoints(0, splice.from()), text.offsetByCodePoints(0, splice.to()), splice.text());
        }
        return out.toString();
    }
}
