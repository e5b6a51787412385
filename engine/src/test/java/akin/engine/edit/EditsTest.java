package akin.engine.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.YamlReader;
import akin.model.finding.Edit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An edit changes what it names and leaves every other character as it was. */
class EditsTest {

    private static final long SEED = 20_270_301L;

    /**
     * A text, the edits, and the text that must come out.
     *
     * @param name what is edited
     */
    record Case(String name, String before, List<Edit> edits, String after) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Case edit(String name, String before, String path, @Nullable String to, String after) {
        return new Case(name, before, List.of(new Edit(path, to)), after);
    }

    static Stream<Case> cases() {
        return Stream.of(
                // A value for another.
                edit("in a block", "a: 1 # one\nb: 2\n", "a", "3", "a: 3 # one\nb: 2\n"),
                edit("in a flow mapping", "a: {b: 1, c: 2} # one\n", "a.b", "3", "a: {b: 3, c: 2} # one\n"),
                edit("in a flow list", "a: [1, 2,  3]\n", "a.1", "9", "a: [1, 9,  3]\n"),
                edit("in a block list", "a:\n- 1\n- 2 # two\n", "a.1", "9", "a:\n- 1\n- 9 # two\n"),
                edit("in a mapping in a list", "a:\n- b: 1\n  c: 2\n", "a.0.c", "9", "a:\n- b: 1\n  c: 9\n"),
                edit(
                        "behind rare letters",
                        "n: 𝔄𝔅 # 𝔠\na: {é: 𝔡, b: 1}\n",
                        "a.b",
                        "2",
                        "n: 𝔄𝔅 # 𝔠\na: {é: 𝔡, b: 2}\n"),
                edit("with CRLF line ends", "a: 1\r\nb: 2\r\n", "a", "3", "a: 3\r\nb: 2\r\n"),
                edit("behind a byte order mark", "\uFEFFa: 1\nb: 2\n", "a", "3", "\uFEFFa: 3\nb: 2\n"),
                edit("tabs and spaces around it stay", "a:   1 \t # one\n", "a", "2", "a:   2 \t # one\n"),
                edit("on the line below its key", "a:\n  1\nb: 2\n", "a", "3", "a:\n  3\nb: 2\n"),
                edit("over several lines", "a: one\n  two\n\nb: 2\n", "a", "3", "a: 3\n\nb: 2\n"),
                edit("where nothing stood", "a:\nb: 2\n", "a", "3", "a: 3\nb: 2\n"),
                edit("a block scalar", "a: |\n  one\n  two\n\n# c\nb: 2\n", "a", "3", "a: 3\n\n# c\nb: 2\n"),
                edit("a block scalar at the end", "b: 2\na: >-\n  one", "a", "3", "b: 2\na: 3"),
                edit("with its source", "a: {value: 1, source: x} # c\n", "a", "2", "a: 2 # c\n"),
                edit(
                        "below a value with its source",
                        "a: {value: {b: 1}, source: x}\n",
                        "a.b",
                        "2",
                        "a: {value: {b: 2}, source: x}\n"),

                // Quotes.
                edit("double quotes stay", "a: \"1\"\n", "a", "2 x", "a: \"2 x\"\n"),
                edit("double quotes within", "a: \"1\"\n", "a", "2\" \\", "a: \"2\\\" \\\\\"\n"),
                edit("single quotes stay", "a: '1'\n", "a", "it's", "a: 'it''s'\n"),
                edit("quotes where they are needed", "a: 1\n", "a", "x: y # z", "a: 'x: y # z'\n"),
                edit("quotes around null", "a: 1\n", "a", "null", "a: 'null'\n"),
                edit("quotes around nothing", "a: 1\n", "a", "", "a: ''\n"),
                edit("quotes around a dash", "a: 1\n", "a", "-7 M", "a: '-7 M'\n"),
                edit("quotes around a trailing space", "a: 1\n", "a", "x ", "a: 'x '\n"),
                edit(
                        "a line end is written as a sign",
                        "a: 1\n",
                        "a",
                        "x\ny\u0007",
                        "a: \"x\\U0000000Ay\\U00000007\"\n"),
                edit("no quotes in a flow mapping", "a: {b: 1}\n", "a.b", "1/50", "a: {b: 1/50}\n"),
                edit("quotes around a comma", "a: {b: 1}\n", "a.b", "1, c: 2", "a: {b: '1, c: 2'}\n"),

                // Lists and mappings for another.
                edit("a flow list for a flow list", "a: [1, 2] # c\n", "a", "[3]", "a: [3] # c\n"),
                edit(
                        "a flow list for a block list",
                        "a:\n  - 1\n  - 2\n\n# c\nb: 2\n",
                        "a",
                        "[3]",
                        "a: [3]\n\n# c\nb: 2\n"),
                edit(
                        "a flow list for a block list in line with its key",
                        "a:\n- 1\n- 2\nb: 2\n",
                        "a",
                        "[3]",
                        "a: [3]\nb: 2\n"),
                edit(
                        "a flow list for a block list with a comment above",
                        "a: # c\n- 1\n- 2\nb: 2\n",
                        "a",
                        "[3]",
                        "a: # c\n  [3]\nb: 2\n"),
                edit(
                        "an item less in a block list",
                        "a:\n  - 1 # one\n  # of both\n  - 2 # two\nb: 2\n",
                        "a",
                        "[2]",
                        "a:\n  # of both\n  - 2 # two\nb: 2\n"),
                edit(
                        "the last item less in a block list",
                        "a:\n  - 1 # one\n  - 2 # two",
                        "a",
                        "[1]",
                        "a:\n  - 1 # one"),
                edit(
                        "an item more in a block list",
                        "a:\n- 1 # one\n- 2\n\nb: 2\n",
                        "a",
                        "[1, 2, 'x: y']",
                        "a:\n- 1 # one\n- 2\n- 'x: y'\n\nb: 2\n"),
                edit(
                        "another last item in a block list with CRLF",
                        "a:\r\n  - 1 # one\r\n  - 2 # two\r\nb: 2\r\n",
                        "a",
                        "[1, 3]",
                        "a:\r\n  - 1 # one\r\n  - 3\r\nb: 2\r\n"),
                edit(
                        "other items, the comments between stay",
                        "a:\n  - 1\n  # of both\n  - 2\nb: 2\n",
                        "a",
                        "[3]",
                        "a:\n  # of both\n  - 3\nb: 2\n"),
                edit(
                        "no items, the comments stay",
                        "a: # kit\n  - 1\n  # of both\n  - 2\nb: 2\n",
                        "a",
                        "[]",
                        "a: [] # kit\n  # of both\nb: 2\n"),
                edit("other items of a list of lists", "a:\n- - 1\n- - 2\nb: 2\n", "a", "[3]", "a: [3]\nb: 2\n"),
                edit("a flow list for a value", "a: 1\n", "a", "[3, 4]", "a: [3, 4]\n"),
                edit("a value for a block mapping", "a:\n  b: 1\n  c: 2\nd: 3\n", "a", "4", "a: 4\nd: 3\n"),
                edit(
                        "a flow list for a block list with CRLF",
                        "a:\r\n  - 1\r\nb: 2\r\n",
                        "a",
                        "[3]",
                        "a: [3]\r\nb: 2\r\n"),

                // Keys added.
                edit("added to a block", "a:\n  b: 1 # c\nd: 2\n", "a.c", "3", "a:\n  b: 1 # c\n  c: 3\nd: 2\n"),
                edit("added at the top", "a: 1\n", "b", "2", "a: 1\nb: 2\n"),
                edit("added behind a last line without its end", "a:\n  b: 1", "a.c", "3", "a:\n  b: 1\n  c: 3"),
                edit(
                        "added before comment lines",
                        "a:\n  b: 1\n  # to come\n\n# more\nd: 2\n",
                        "a.c",
                        "3",
                        "a:\n  b: 1\n  c: 3\n  # to come\n\n# more\nd: 2\n"),
                edit(
                        "added with the indentation of its block",
                        "a:\n     b:\n        c: 1\n     d: 2\n",
                        "a.b.e",
                        "3",
                        "a:\n     b:\n        c: 1\n        e: 3\n     d: 2\n"),
                edit(
                        "added behind a nested block",
                        "a:\n  b:\n    c: 1\nd: 2\n",
                        "a.e",
                        "3",
                        "a:\n  b:\n    c: 1\n  e: 3\nd: 2\n"),
                edit(
                        "added with CRLF line ends",
                        "a:\r\n  b: 1\r\nd: 2\r\n",
                        "a.c",
                        "3",
                        "a:\r\n  b: 1\r\n  c: 3\r\nd: 2\r\n"),
                edit(
                        "added behind a block scalar",
                        "a:\n  b: |\n    x\n\nd: 2\n",
                        "a.c",
                        "3",
                        "a:\n  b: |\n    x\n  c: 3\n\nd: 2\n"),
                edit(
                        "added behind a block list",
                        "a:\n  b:\n  - 1\nd: 2\n",
                        "a.c",
                        "3",
                        "a:\n  b:\n  - 1\n  c: 3\nd: 2\n"),
                edit("added in a list's mapping", "a:\n- b: 1\n- d: 2\n", "a.0.c", "3", "a:\n- b: 1\n  c: 3\n- d: 2\n"),
                edit("added to a flow mapping", "a: {b: 1}\n", "a.c", "3", "a: {b: 1, c: 3}\n"),
                edit(
                        "added to a flow mapping over lines",
                        "a: {\n  b: 1 # c\n}\n",
                        "a.c",
                        "3",
                        "a: {\n  b: 1, c: 3 # c\n}\n"),
                edit("added to an empty flow mapping", "a: {}\nb: 1\n", "a.c", "3", "a: {c: 3}\nb: 1\n"),
                edit("added to an empty document", "{}\n", "c", "3", "{c: 3}\n"),
                edit("added with a mapping of its own", "a:\n  b: 1\n", "a.c.d", "3", "a:\n  b: 1\n  c: {d: 3}\n"),
                edit(
                        "added within a value with its source",
                        "a: {value: {b: 1}, source: x}\n",
                        "a.c",
                        "2",
                        "a: {value: {b: 1, c: 2}, source: x}\n"),

                // A reason is given by the whole path of its setting, which is one key.
                edit(
                        "a reason by a dotted key",
                        "units:\n  B:\n    intent:\n      white: blue # c\n",
                        "units.B.intent.lens.stop",
                        "soft",
                        "units:\n  B:\n    intent:\n      white: blue # c\n      lens.stop: soft\n"),
                edit(
                        "a reason by a dotted key in flow",
                        "units: {B: {intent: {lens.focal: near}, iso: 800}}\n",
                        "units.B.intent.lens.stop",
                        "soft, on purpose",
                        "units: {B: {intent: {lens.focal: near, lens.stop: 'soft, on purpose'}, iso: 800}}\n"),
                edit(
                        "a reason beside the start of its key",
                        "units: {B: {intent: {lens: near}}}\n",
                        "units.B.intent.lens.stop",
                        "soft",
                        "units: {B: {intent: {lens: near, lens.stop: soft}}}\n"),
                edit(
                        "a first reason",
                        "units:\n  B:\n    iso: 800\n",
                        "units.B.intent.lens.stop",
                        "soft",
                        "units:\n  B:\n    iso: 800\n    intent: {lens.stop: soft}\n"),
                edit(
                        "a first reason, quoted",
                        "units:\r\n  B: {iso: 800}\r\n",
                        "units.B.intent.lens.stop",
                        "soft: his wish",
                        "units:\r\n  B: {iso: 800, intent: {lens.stop: 'soft: his wish'}}\r\n"),
                edit(
                        "another reason by the same key",
                        "units: {B: {intent: {lens.stop: near}}}\n",
                        "units.B.intent.lens.stop",
                        "soft",
                        "units: {B: {intent: {lens.stop: soft}}}\n"),
                edit(
                        "a reason by a dotted key taken out",
                        "units: {B: {intent: {lens.stop: near, white: blue}}}\n",
                        "units.B.intent.lens.stop",
                        null,
                        "units: {B: {intent: {white: blue}}}\n"),
                edit(
                        "a setting by the same words",
                        "units:\n  intent: {lens: {use: x}}\n",
                        "units.intent.lens.stop",
                        "T4",
                        "units:\n  intent: {lens: {use: x, stop: T4}}\n"),

                // Keys taken out.
                edit("taken out of a block", "a: 1\nb: 2 # two\nc: 3\n", "b", null, "a: 1\nc: 3\n"),
                edit("the first one taken out", "# c\na: 1\nb: 2\n", "a", null, "# c\nb: 2\n"),
                edit("the first one taken out behind a mark", "\uFEFFa: 1\nb: 2\n", "a", null, "\uFEFFb: 2\n"),
                edit("the last one taken out", "a: 1\nb: 2\n", "b", null, "a: 1\n"),
                edit("the last one taken out, without a line end", "a: 1\nb: 2", "b", null, "a: 1\n"),
                edit("taken out with CRLF line ends", "a: 1\r\nb: 2\r\nc: 3", "c", null, "a: 1\r\nb: 2\r\n"),
                edit("a block taken out", "a: 1\nb:\n  c: 2\n  d: 3\n\n# e\ne: 4\n", "b", null, "a: 1\n\n# e\ne: 4\n"),
                edit("a block scalar taken out", "a: 1\nb: |\n  x\ne: 4\n", "b", null, "a: 1\ne: 4\n"),
                edit("the only one taken out", "a:\n  b: 1\nc: 2\n", "a.b", null, "a:\n  {}\nc: 2\n"),
                edit(
                        "the first of a list's mapping taken out",
                        "a:\n- b: 1 # c\n  d: 2\n",
                        "a.0.b",
                        null,
                        "a:\n- d: 2\n"),
                edit("taken out of a flow mapping, first", "a: {b: 1, c: 2}\n", "a.b", null, "a: {c: 2}\n"),
                edit("taken out of a flow mapping, last", "a: {b: 1, c: 2}\n", "a.c", null, "a: {b: 1}\n"),
                edit("taken out of a flow mapping, only", "a: {b: 1}\n", "a.b", null, "a: {}\n"),
                edit(
                        "taken out of a flow mapping over lines",
                        "a: {\n  b: 1\n  , c: 2 }\n",
                        "a.b",
                        null,
                        "a: {\n  c: 2 }\n"),

                // Several in one go.
                several(
                        "several",
                        "a: 1\nb: {c: 2, d: 3}\n# e\ne: 4\n",
                        "a: 9\nb: {c: 2, d: 8, f: 7}\ng: 6\n# e\n",
                        new Edit("e", null),
                        new Edit("b.f", "7"),
                        new Edit("a", "9"),
                        new Edit("b.d", "8"),
                        new Edit("g", "6")),
                several(
                        "all of a flow mapping taken out",
                        "a: {b: 1, c: 2}\n",
                        "a: {}\n",
                        new Edit("a.b", null),
                        new Edit("a.c", null)),
                several(
                        "two of a mapping that was not there",
                        "a:\n  b: 1\n",
                        "a:\n  b: 1\n  c: {d: 2, e: 3}\n",
                        new Edit("a.c.d", "2"),
                        new Edit("a.c.e", "3")),
                several(
                        "longer and shorter ones",
                        "a: 1\nb: 22222\nc: 3\n",
                        "a: 11111\nb: 2\nc: 33\n",
                        new Edit("c", "33"),
                        new Edit("a", "11111"),
                        new Edit("b", "2")));
    }

    private static Case several(String name, String before, String after, Edit... edits) {
        return new Case(name, before, List.of(edits), after);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void changesThisAndNothingElse(Case edit) {
        assertThat(Edits.apply(read(edit.before()), edit.edits())).isEqualTo(edit.after());
    }

    @Test
    void twoEditsOfOneSettingAreRefused() {
        Document document = read("a:\n  b: 1\n  c: 2\n");
        refused(document, "t.yaml:2:6: two edits of a.b", new Edit("a.b", "2"), new Edit("a.b", "3"));
        refused(document, "t.yaml:2:6: two edits of a;", new Edit("a", "2"), new Edit("a.b", "3"));
        refused(document, "two edits of a.b", new Edit("a.b", "2"), new Edit("a", null));
        refused(document, "two edits of d", new Edit("d", "2"), new Edit("d", "3"));
    }

    @Test
    void whatIsNotThereIsNotTakenOut() {
        refused(read("a: 1\nb: {c: 2}\n"), "there is no b.d to take out", new Edit("b.d", null));
    }

    @Test
    void anElementOfAListIsNotTakenOut() {
        refused(read("a: [1, 2]\n"), "t.yaml:1:5: only a key can be taken out", new Edit("a.0", null));
    }

    @Test
    void nothingIsAddedBelowASingleValue() {
        refused(read("a: 1\n"), "t.yaml:1:1: there is no mapping to add a.b.c to", new Edit("a.b.c", "2"));
        refused(read("a: [1]\n"), "there is no mapping to add a.1 to", new Edit("a.1", "2"));
    }

    private static void refused(Document document, String words, Edit... edits) {
        assertThatThrownBy(() -> Edits.apply(document, List.of(edits)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(words);
    }

    /** Random block lists: what is read back is the new list, and comments on lines of their own are still there. */
    @Test
    void aBlockListBecomesWhatItIsToBe() {
        Random random = new Random(SEED);
        for (int round = 0; round < 2_000; round++) {
            String end = random.nextBoolean() ? "\n" : "\r\n";
            String indent = random.nextBoolean() ? "" : "  ";
            StringBuilder text = new StringBuilder(random.nextBoolean() ? "a:" : "a:   # kit").append(end);
            int comments = 0;
            int count = 1 + random.nextInt(4);
            for (int i = 0; i < count; i++) {
                if (random.nextInt(3) == 0) {
                    text.append(indent).append("# line ").append(comments++).append(end);
                }
                text.append(indent).append("- ").append(word(random));
                text.append(random.nextInt(3) == 0 ? " # of this" : "");
                text.append(i < count - 1 || random.nextBoolean() ? end : "");
            }
            if (text.toString().endsWith(end) && random.nextBoolean()) {
                text.append("b: 1").append(end);
            }
            List<String> wanted = new ArrayList<>();
            for (int i = random.nextInt(5); i > 0; i--) {
                wanted.add(word(random));
            }
            String before = text.toString();
            String after = Edits.apply(read(before), List.of(new Edit("a", wanted.toString())));
            assertThat(((Node.Items) read(after).at("a").orElseThrow())
                            .items().stream().map(item -> ((Node.Scalar) item).text()))
                    .as("%s in\n%s\ngives\n%s", wanted, before, after)
                    .isEqualTo(wanted);
            assertThat(read(after).at("b").isPresent())
                    .isEqualTo(read(before).at("b").isPresent());
            for (int i = 0; i < comments; i++) {
                assertThat(after).as("%s in\n%s", wanted, before).contains("# line " + i);
            }
        }
    }

    private static String word(Random random) {
        return String.valueOf((char) ('p' + random.nextInt(5)));
    }

    private static final List<String> SAMPLES = List.of(
            """
            # A plan with one of everything.
            akin: 1
            production: {name: "Night: market", rate: 25} # agreed

            scenes:
              - {name: stalls, lights: [tungsten, led], pan: 40 °/s}
              - name: 'it''s late'   # the last one
                # where we stand
                subject-distance: 2.4 m
                note: |
                  one
                  two

            # the cameras
            units:
              A:
                body: 𝔥eron 𝔅
                filters:
                - ND 0.3
                - ND 0.6 # the van's

                lens: {
                  use: brindle,   # hired
                  stop: T2.8
                }
                white:
                  4300 K
                empty: {}
              B:
                  body: heron
                  shutter: {value: 180°, source: 'the plan'}
                  intent: {shutter: on purpose}
            # the end
            """,
            "\uFEFFa:\r\n  b: 1 # c\r\n  c: [1, {d: 2, e: 3}]\r\n\r\n  f: >-\r\n    x\r\n    y\r\ng: \"h\"\r\n",
            "{a: 1, b: [x, y, {c: 2}], d: {}, e: {f: {g: 1}}}",
            "a:\n- b: 1\n  c:\n  - 1\n  - 2\n- d:\n    e: 1\n    f: |+\n      x\n\n\ng: 1");

    /** Random edits: the tree that is read back is the old one with the edits made, and comments are still there. */
    @ParameterizedTest
    @MethodSource("samples")
    void randomEditsChangeNothingElse(String sample) {
        Random random = new Random(SEED);
        for (int round = 0; round < 600; round++) {
            String text = sample;
            for (int step = 0; step < 4; step++) {
                Document before = read(text);
                Map<String, String> expected = leaves(before.root());
                Edit edit = randomEdit(random, before);
                String after;
                try {
                    after = Edits.apply(before, List.of(edit));
                    make(expected, edit, before);
                    assertThat(leaves(read(after).root()))
                            .as("round %d: %s in\n%s\ngives\n%s", round, edit, text, after)
                            .isEqualTo(expected);
                } catch (BadInput e) {
                    throw new AssertionError("round " + round + ": " + edit + " in\n" + text, e);
                }
                assertThat(untouched(before.text(), after))
                        .as("round %d: characters of\n%s\nleft as they were by %s in\n%s", round, after, edit, text)
                        .isGreaterThanOrEqualTo(mustStay(before, edit, after));
                text = after;
            }
        }
    }

    static Stream<String> samples() {
        return SAMPLES.stream();
    }

    /** How many characters of two texts are the same, counted from both ends. */
    private static int untouched(String before, String after) {
        int most = Math.min(before.length(), after.length());
        int same = 0;
        while (same < most && before.charAt(same) == after.charAt(same)) {
            same++;
        }
        int end = 0;
        while (end < most - same
                && before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
            end++;
        }
        return same + end;
    }

    /** A replacement leaves all but the old value, an addition everything, a removal all that is still there. */
    private static int mustStay(Document before, Edit edit, String after) {
        if (edit.to() == null) {
            return after.length() - "{}".length();
        }
        int old = before.at(edit.path())
                .map(node -> Edits.slice(before, node.place()).length())
                .orElse(0);
        return before.text().length() - old;
    }

    private static Edit randomEdit(Random random, Document document) {
        List<String> mappings = new ArrayList<>();
        List<String> scalars = new ArrayList<>();
        List<String> keys = new ArrayList<>();
        walk(document.root(), "", mappings, scalars, keys);
        List<String> values =
                List.of("1/50", "x: y", "it's", "[1, 'b c']", "say \"so\"", "", "null", "𝔄 b", "-7 M", "# no");
        String to = values.get(random.nextInt(values.size()));
        int kind = random.nextInt(3);
        if (kind == 0 && !scalars.isEmpty()) {
            return new Edit(scalars.get(random.nextInt(scalars.size())), to);
        }
        if (kind == 1 && !keys.isEmpty()) {
            return new Edit(keys.get(random.nextInt(keys.size())), null);
        }
        String parent = mappings.get(random.nextInt(mappings.size()));
        String key = "new-" + random.nextInt(1_000_000) + (random.nextBoolean() ? "" : ".below");
        return new Edit(parent.isEmpty() ? key : parent + "." + key, to);
    }

    private static void walk(Node node, String path, List<String> mappings, List<String> scalars, List<String> keys) {
        if (node.bare() != node) {
            keys.add(path);
            scalars.add(path);
            return;
        }
        if (node instanceof Node.Fields fields) {
            mappings.add(path);
            fields.fields().forEach((key, field) -> {
                String below = path.isEmpty() ? key : path + "." + key;
                keys.add(below);
                walk(field.value(), below, mappings, scalars, keys);
            });
        } else if (node instanceof Node.Items items) {
            for (int i = 0; i < items.items().size(); i++) {
                walk(items.items().get(i), path + "." + i, mappings, scalars, keys);
            }
        } else {
            scalars.add(path);
        }
    }

    /** Every leaf of a tree by its path: text, and whether it is in quotes where that changes its meaning. */
    private static Map<String, String> leaves(Node root) {
        Map<String, String> leaves = new LinkedHashMap<>();
        collect(root, "", leaves);
        return new java.util.TreeMap<>(leaves);
    }

    private static void collect(Node node, String path, Map<String, String> leaves) {
        if (node instanceof Node.Fields fields) {
            if (fields.fields().isEmpty()) {
                leaves.put(path, "{}");
            }
            fields.fields()
                    .forEach((key, field) -> collect(field.value(), path.isEmpty() ? key : path + "." + key, leaves));
        } else if (node instanceof Node.Items items) {
            for (int i = 0; i < items.items().size(); i++) {
                collect(items.items().get(i), path + "." + i, leaves);
            }
        } else if (node instanceof Node.Scalar scalar) {
            boolean nothing =
                    scalar.plain() && (scalar.text().isEmpty() || scalar.text().equals("null"));
            leaves.put(path, nothing ? "nothing" : "'" + scalar.text());
        }
    }

    /** The same edit made on the leaves. */
    private static void make(Map<String, String> leaves, Edit edit, Document before) {
        leaves.keySet().removeIf(path -> path.equals(edit.path()) || path.startsWith(edit.path() + "."));
        String parent = parentOf(edit.path());
        if (edit.to() != null) {
            for (String around = parent; !around.isEmpty(); around = parentOf(around)) {
                leaves.remove(around, "{}");
            }
            leaves.remove("", "{}");
            if (edit.to().startsWith("[")) {
                leaves.put(edit.path() + ".0", "'1");
                leaves.put(edit.path() + ".1", "'b c");
            } else {
                leaves.put(edit.path(), "'" + edit.to());
            }
            return;
        }
        // A reason's key may have dots in it.
        while (before.at(parent).isEmpty()) {
            parent = parentOf(parent);
        }
        Optional<Node> around = before.at(parent);
        if (((Node.Fields) around.orElseThrow()).fields().size() == 1) {
            leaves.put(parent, "{}");
        }
    }

    private static String parentOf(String path) {
        return path.substring(0, Math.max(0, path.lastIndexOf('.')));
    }

    private static Document read(String text) {
        return YamlReader.read("t.yaml", text);
    }
}
