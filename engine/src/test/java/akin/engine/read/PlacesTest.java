package akin.engine.read;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.edit.Edits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every key and value of a document is where the reader says it is. */
class PlacesTest {

    private static final String PLAN = """
            # 𝔄 plan
            akin: 1
            production: {name: "𝔑ight", rate: 25, notes: [é, 'b c', {d: 𝔡}]} # 𝔢
            scenes:
              - {name: stalls}
              - name: 'late'
                note: |
                  one

                  two

            units:
              A:
                filters:
                - ND 0.3
                - ND 0.6

              # in between
              B:
                  shutter: {value: 180°, source: a plan}
                  white:
                    4300 K
            """;

    /** Line ends, marks and whatever else may stand in front. */
    @ParameterizedTest
    @ValueSource(strings = {"as it is", "CRLF", "byte order mark", "both"})
    void keysAndValues(String how) {
        String text = PLAN;
        if (how.equals("CRLF") || how.equals("both")) {
            text = text.replace("\n", "\r\n");
        }
        if (how.equals("byte order mark") || how.equals("both")) {
            text = "\uFEFF" + text;
        }
        Document document = YamlReader.read("plan.yaml", text);
        assertThat(document.text()).isEqualTo(text);
        value(document, "akin", 2, 7, "1");
        value(document, "production.name", 3, 20, "\"𝔑ight\"");
        value(document, "production.rate", 3, 35, "25");
        value(document, "production.notes.1", 3, 50, "'b c'");
        value(document, "production.notes.2.d", 3, 61, "𝔡");
        value(document, "production.notes", 3, 46, "[é, 'b c', {d: 𝔡}]");
        value(document, "scenes.0", 5, 5, "{name: stalls}");
        value(document, "scenes.1.name", 6, 11, "'late'");
        value(document, "units.A.filters.1", 16, 7, "ND 0.6");
        value(document, "units.B.white", 22, 9, "4300 K");
        String newline = text.contains("\r") ? "\r\n" : "\n";
        value(document, "scenes.1.note", 7, 11, String.join(newline, "|", "      one", "", "      two"));
        value(document, "units.A.filters", 15, 5, String.join(newline, "- ND 0.3", "    - ND 0.6"));
        key(document, "akin", 2, 1);
        key(document, "production.rate", 3, 29);
        key(document, "production.notes.2.d", 3, 58);
        key(document, "scenes.1.note", 7, 5);
        key(document, "units.B", 19, 3);
    }

    @Test
    void aValueWithItsSourceIsWhereTheValueIs() {
        Document document = YamlReader.read("plan.yaml", PLAN);
        assertThat(document.placeOf("units.B.shutter"))
                .extracting(Place::line, Place::column)
                .containsExactly(20, 24);
        assertThat(document.at("units.B.shutter").map(Node::bare))
                .get()
                .extracting(node -> ((Node.Scalar) node).text())
                .isEqualTo("180°");
    }

    @Test
    void whatIsNotThereIsPlacedAtWhatIsAroundIt() {
        Document document = YamlReader.read("plan.yaml", PLAN);
        assertThat(document.placeOf("units.A.lens.stop").line()).isEqualTo(13);
        assertThat(document.placeOf("units.C").line()).isEqualTo(12);
        assertThat(document.placeOf("match.hero").line()).isEqualTo(2);
        assertThat(document.at("scenes.2")).isEmpty();
        assertThat(document.at("scenes.-1")).isEmpty();
        assertThat(document.at("akin.x")).isEmpty();
        assertThat(document.keyOf("units.C")).isEmpty();
    }

    @Test
    void aLoneCarriageReturnEndsALineToo() {
        Document document = YamlReader.read("plan.yaml", "a: 1\rb:\r  c: 2\r");
        value(document, "b.c", 3, 6, "2");
    }

    private static void value(Document document, String path, int line, int column, String written) {
        Place place = document.at(path).orElseThrow().place();
        assertThat(place.line() + ":" + place.column()).as(path).isEqualTo(line + ":" + column);
        assertThat(Edits.slice(document, place)).as(path).isEqualTo(written);
    }

    private static void key(Document document, String path, int line, int column) {
        Place place = document.keyOf(path).orElseThrow();
        assertThat(place.line() + ":" + place.column()).as(path).isEqualTo(line + ":" + column);
        assertThat(Edits.slice(document, place)).as(path).isEqualTo(path.substring(path.lastIndexOf('.') + 1));
    }
}
