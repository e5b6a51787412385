package akin.engine.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a person gets told about a rig file that is wrong: one line, at the place, in words that help. In the table
 * below the sign {@code ‸} stands where the message must point; it is taken out before the file is written.
 */
class BadRigTest {

    private static final String CARET = "‸";

    @TempDir
    Path folder;

    /**
     * A bad file.
     *
     * @param name what is wrong with it
     * @param text its text, with the sign where the message must point
     * @param words what the message must say
     */
    record Case(String name, String text, List<String> words) {
        @Override
        public String toString() {
            return name;
        }
    }

    /** A file of its own. */
    private static Case file(String name, String text, String... words) {
        return new Case(name, text, List.of(words));
    }

    /** The market rig with one piece of it written otherwise. */
    private static Case rig(String name, String old, String bad, String... words) {
        int at = Rigs.MARKET.indexOf(old);
        assertThat(at).as("%s: '%s' stands once in the rig", name, old).isNotNegative();
        assertThat(Rigs.MARKET.indexOf(old, at + 1))
                .as("%s: '%s' stands once in the rig", name, old)
                .isNegative();
        return new Case(name, Rigs.MARKET.replace(old, bad), List.of(words));
    }

    static Stream<Case> cases() {
        return Stream.of(
                // Not one strict YAML document.
                file("empty", "‸", "nothing is written in this file"),
                file("only comments", "‸# a plan\n\n# to come\n", "nothing is written in this file"),
                file("only a document start", "‸---\n", "nothing is written in this file"),
                file("a sentence", "‸Two cameras at a market\n", "the key 'akin' is missing", "akin: 1"),
                file("a list", "‸- A\n- B\n", "the key 'akin' is missing"),
                file("a zero byte", "akin: 1\nproduction: ‸\0\n", "a zero byte", "is this a text file?"),
                file("a control character", "akin: ‸\u0007\n", "U+0007", "is this a text file?"),
                file("a control character behind a rare letter", "akin: 𝔄‸\u0007\n", "U+0007"),
                file("two documents", "akin: 1\n‸---\nakin: 1\n", "a second document starts here"),
                file(
                        "text behind the end of the document",
                        "akin: 1\n...\n‸akin: 1\n",
                        "behind the end of the document"),
                file(
                        "a key twice",
                        "akin: 1\nmatch: {hero: A}\n‸match: {hero: B}\n",
                        "the key 'match' stands here again",
                        "line 2"),
                file(
                        "a key twice in a flow mapping",
                        "akin: 1\nmatch: {hero: A, ‸hero: B}\n",
                        "the key 'hero' stands here again"),
                file(
                        "an anchor",
                        "akin: 1\nunits:\n  A: ‸&first {body: heron}\n  B: *first\n",
                        "the anchor &first",
                        "anchors and aliases are not read"),
                file("an alias", "akin: 1\nunits:\n  B: ‸*first\n", "the alias *first", "write the value itself"),
                file("an alias bomb", bomb(), "the anchor &a"),
                file("a merge key", "akin: 1\nunits:\n  B:\n    ‸<<: {body: heron}\n", "merge keys (<<) are not read"),
                file("a tag", "akin: ‸!!int 1\n", "the tag", "tags are not read"),
                file(
                        "a tag that would make an object",
                        "akin: 1\nunits: ‸!!javax.script.ScriptEngineManager [x]\n",
                        "tags are not read"),
                file(
                        "nested too deep in flow",
                        "akin: 1\nunits: " + "[".repeat(31) + "‸" + "[".repeat(9_969),
                        "nested deeper than 32 levels"),
                file(
                        "nested too deep in block",
                        "- ".repeat(32) + "‸" + "- ".repeat(9_968) + "x\n",
                        "nested deeper than 32 levels"),
                file(
                        "mappings nested too deep",
                        "{a: ".repeat(32) + "‸" + "{a: ".repeat(9_968),
                        "nested deeper than 32 levels"),
                file("a list as a key", "akin: 1\n? ‸[a, b]\n: 2\n", "a key is a word"),
                file("an empty key", "akin: 1\n‸'': 2\n", "a key is a word"),
                file("a control character in a key", "akin: 1\n‸\"a\\u0007b\": 2\n", "\\u0007", "a key is a word"),
                file("a line end in a key", "akin: 1\n‸\"a\\nb\": 2\n", "'a\\nb'", "a key is a word"),
                file("a tab before a key", "akin: 1\nmatch:\n‸\thero: A\n", "a tab stands here; write spaces"),
                file("a colon too many", "akin: 1\nproduction: name‸: Market\n", "this colon makes no key", "quotes"),
                file("no space behind a colon", "akin:1\nmatch‸: {hero: A}\n", "this colon makes no key"),
                file(
                        "a quotation mark left open",
                        "akin: 1\nmatch: {hero: ‸\"A}\n",
                        "the quotation mark that opens here is not closed"),
                file(
                        "a bracket left open",
                        "akin: 1\nscenes: [a, b\nunits‸: {}\n",
                        "a comma or ] belongs here",
                        "the [ on line 2, column 9"),
                file(
                        "a brace left open",
                        "akin: 1\nmatch: {hero: A\nunits‸: {}\n",
                        "a comma or } belongs here",
                        "the { on line 2, column 8"),
                file(
                        "a key out of line",
                        "akin: 1\nmatch:\n   hero: A\n  ‸view: wide\n",
                        "does not go with the lines before it"),
                file(
                        "words behind a quoted value",
                        "akin: 1\nproduction:\n  name: 'x' ‸y\n",
                        "does not go with the lines before it"),
                file(
                        "a value that starts with @",
                        "akin: 1\nproduction: {name: ‸@home}\n",
                        "a value cannot start with '@'",
                        "quotes"),
                file(
                        "too many values",
                        "akin: 1\nscenes: [" + "1,".repeat(99_999) + "‸1,1]\n",
                        "more than the 100000 values"),

                // The version.
                rig(
                        "no version",
                        "# Night market, two bodies.\nakin: 1\n",
                        "‸",
                        "the key 'akin' is missing",
                        "akin: 1"),
                rig("a later version", "akin: 1\n", "akin: ‸2\n", "read '2'", "start with akin: 1"),
                rig("a version in quotes", "akin: 1\n", "akin: ‸\"1\"\n", "read '\"1\"'", "start with akin: 1"),
                rig("a version with a point", "akin: 1\n", "akin: ‸1.0\n", "read '1.0'", "start with akin: 1"),
                rig("a version left out", "akin: 1\n", "akin:‸\n", "read ''", "start with akin: 1"),
                rig("a list for the version", "akin: 1\n", "akin: ‸[1]\n", "a list or mapping", "start with akin: 1"),

                // Keys.
                rig(
                        "an unknown key",
                        "    shutter: 180°",
                        "    ‸shuter: 180°",
                        "the key 'shuter' is not known here",
                        "Did you mean 'shutter'?",
                        "Allowed: body, "),
                rig("an unknown key at the top", "kit:", "‸kitt:", "'kitt'", "Did you mean 'kit'?"),
                rig(
                        "an unknown key in a flow mapping",
                        "mains: 50 Hz",
                        "‸main: 50 Hz",
                        "'main'",
                        "Did you mean 'mains'?"),
                rig(
                        "an unknown key in a list",
                        "subject-distance: 2.4 m",
                        "‸subjekt-distance: 2.4 m",
                        "'subjekt-distance'",
                        "Did you mean 'subject-distance'?"),
                rig(
                        "an unknown key with CRLF line ends",
                        "shutter: 180°\n    iso: 800",
                        "shutter: 180°\r\n    ‸isso: 800",
                        "'isso'",
                        "Did you mean 'iso'?"),
                rig(
                        "an unknown key in gear",
                        "readout: 12 ms",
                        "‸read-out: 12 ms",
                        "'read-out'",
                        "Did you mean 'readout'?"),
                rig(
                        "an id in gear",
                        "      name: Heron\n",
                        "      name: Heron\n      ‸id: heron\n",
                        "'id' is not known here",
                        "the word before the colon is the id"),
                rig("an id in a mode", "uhd: {picture", "uhd: {‸id: uhd, picture", "'id' is not known here"),
                rig(
                        "a key that is missing",
                        "A:\n    body: heron\n    mode: uhd\n    profile: log\n    codec: inside",
                        "‸A:\n    mode: uhd\n    profile: log\n    codec: inside",
                        "the key 'body' is missing"),
                rig(
                        "a section that is missing",
                        Rigs.MARKET.substring(Rigs.MARKET.indexOf("akin: 1"), Rigs.MARKET.indexOf("tolerances:")),
                        "‸akin: 1\nproduction: {name: Market, rate: 25}\n",
                        "the key 'match' is missing"),

                // Shapes.
                rig("nothing behind a key", "shutter: 180°", "shutter:‸", "no value stands here", "take the line out"),
                rig("null", "shutter: 180°", "shutter: ‸null", "no value stands here"),
                rig("a tilde", "mains: 50 Hz", "mains: ‸~", "no value stands here"),
                rig("nothing in a list", "[ND 0.3, ND 0.6]", "[ND 0.3, ‸~]", "no value stands here"),
                rig(
                        "a list for a single value",
                        "shutter: 180°",
                        "shutter: ‸[180°]",
                        "a single value belongs here, not a list"),
                rig(
                        "a mapping for a single value",
                        "shutter: 180°",
                        "shutter: ‸{angle: 180°}",
                        "a single value belongs here, not a mapping"),
                rig(
                        "a single value for a list",
                        "[ND 0.3, ND 0.6]",
                        "‸ND 0.3",
                        "read 'ND 0.3'",
                        "a list",
                        "belongs here"),
                rig(
                        "a single value for a mapping",
                        "lens: {use: brindle-50, stop: T2.8}",
                        "lens: ‸brindle-50",
                        "read 'brindle-50'",
                        "a mapping (key: value) belongs here"),
                rig(
                        "a list for a mapping",
                        "lens: {use: brindle-50, stop: T2.8}",
                        "lens: ‸[brindle-50]",
                        "a mapping (key: value) belongs here"),
                rig(
                        "a list for the units",
                        Rigs.MARKET.substring(Rigs.MARKET.indexOf("units:\n  A")),
                        "units: ‸[A, B]\n",
                        "a mapping (key: value) belongs here"),
                rig(
                        "a unit that is a word",
                        "tolerances: {blur: 6 %}\n",
                        "tolerances: ‸wide\n",
                        "a mapping (key: value) belongs here"),
                rig("a number for a word", "hero: A", "hero: ‸1", "read '1'", "a word belongs here", "quotes"),
                rig(
                        "a value with an empty source",
                        "readout: 12 ms",
                        "readout: {value: 12 ms, source: ‸~}",
                        "the source of gear.bodies.heron.modes.uhd.readout"),
                rig(
                        "a value with a list of sources",
                        "readout: 12 ms",
                        "readout: {value: 12 ms, source: ‸[a, b]}",
                        "the source of gear.bodies.heron.modes.uhd.readout"),
                rig(
                        "a value with half a source",
                        "readout: 12 ms",
                        "readout: ‸{value: 12 ms}",
                        "{value: ..., source: ...}"),
                rig(
                        "a bad value with a source",
                        "readout: 12 ms",
                        "readout: {value: ‸12, source: a test}",
                        "\"12\"",
                        "ms"),

                // Quantities.
                rig(
                        "a unit of measure missing",
                        "subject-distance: 2.4 m",
                        "subject-distance: ‸2.4",
                        "\"2.4\" is not a length",
                        "m"),
                rig(
                        "a wrong unit of measure",
                        "subject-distance: 2.4 m",
                        "subject-distance: ‸2.4 yd",
                        "\"2.4 yd\" is not a length"),
                rig(
                        "a length below nothing",
                        "subject-distance: 2.4 m",
                        "subject-distance: ‸-2.4 m",
                        "\"-2.4 m\" is not a length"),
                rig(
                        "not a number",
                        "subject-distance: 2.4 m",
                        "subject-distance: ‸NaN m",
                        "write a plain decimal number"),
                rig("infinity", "focal: 35 mm", "focal: ‸Infinity mm", "write a plain decimal number"),
                rig("an exponent", "focal: 35 mm", "focal: ‸1e400 mm", "without an exponent"),
                rig(
                        "an exponent for a factor",
                        "squeeze: 1",
                        "squeeze: ‸1e400",
                        "read '1e400'",
                        "a decimal number belongs here"),
                rig(
                        "not a number for a factor",
                        "squeeze: 1",
                        "squeeze: ‸.nan",
                        "read '.nan'",
                        "a decimal number belongs here"),
                rig("a factor in quotes", "squeeze: 1", "squeeze: ‸'1'", "in quotes that do not belong there"),
                rig("a decimal comma", "focal: 35 mm", "focal: ‸\"35,5 mm\"", "write 35.5 mm"),
                rig("a shutter without its unit", "shutter: 180°", "shutter: ‸180", "\"180\" is not a shutter", "180°"),
                rig("a rate that is none", "rate: 25, mains", "rate: ‸fast, mains", "\"fast\" is not a frame rate"),
                rig("one filter of a list", "[ND 0.3, ND 0.6]", "[ND 0.3, ‸0.6]", "\"0.6\" is not a"),
                rig("a stop that is none", "stop: T2.8", "stop: ‸2.8", "\"2.8\" is not an aperture"),
                rig("a control character in a quantity", "shutter: 180°", "shutter: ‸\"180\\u001b[2J\"", "\\u{1b}[2J"),
                rig(
                        "a line end in a word",
                        "body: heron\n    mode: uhd\n    profile: log\n    codec",
                        "body: ‸\"heron\\nakin: all is well\"\n    mode: uhd\n    profile: log\n    codec",
                        "'heron\\nakin: all is well'"),
                rig("a very long value", "shutter: 180°", "shutter: ‸" + "9".repeat(500_000), "is not a shutter", "…"),
                rig(
                        "a very long word",
                        "profile: log\n    codec: inside",
                        "profile: ‸" + "x".repeat(500_000) + "\n    codec: inside",
                        "no profile of Heron is called 'xxx",
                        "…"),
                rig(
                        "a light that is none",
                        "lights: [tungsten]",
                        "lights: [‸tungstem]",
                        "read 'tungstem'",
                        "Did you mean 'tungsten'?"),

                // Words that are looked up.
                rig(
                        "an unknown body",
                        "body: heron\n    mode: uhd\n    profile: log\n    codec",
                        "body: ‸herron\n    mode: uhd\n    profile: log\n    codec",
                        "no body is called 'herron'",
                        "Did you mean 'heron'?"),
                rig(
                        "an unknown mode",
                        "mode: uhd\n    profile: log\n    codec",
                        "mode: ‸uhdd\n    profile: log\n    codec",
                        "no mode of Heron is called 'uhdd'",
                        "Did you mean 'uhd'?",
                        "Allowed: uhd, hd"),
                rig(
                        "an unknown profile",
                        "profile: log\n    codec",
                        "profile: ‸lok\n    codec",
                        "no profile of Heron is called 'lok'",
                        "Did you mean 'log'?"),
                rig(
                        "a profile that the mode lacks",
                        "profile: log\n    codec",
                        "profile: ‸look\n    codec",
                        "Heron does not offer the profile 'look' in the mode 'uhd'",
                        "it offers log"),
                rig(
                        "an unknown codec",
                        "codec: inside",
                        "codec: ‸insight",
                        "no codec of Heron is called 'insight'",
                        "Did you mean 'inside'?"),
                rig(
                        "a codec that the mode lacks",
                        "codec: inside",
                        "codec: ‸proxy",
                        "Heron does not offer 'proxy' in the mode 'uhd'",
                        "it offers inside"),
                rig(
                        "an unknown lens",
                        "use: brindle-50,",
                        "use: ‸brindle-5O,",
                        "no lens is called 'brindle-5O'",
                        "Did you mean 'brindle-50'?"),
                rig(
                        "an unknown lens on the van",
                        "lenses: [brindle-50]",
                        "lenses: [‸brindle]",
                        "no lens is called 'brindle'",
                        "Did you mean 'brindle-50'?"),
                rig(
                        "a focal length outside the zoom",
                        "focal: 35 mm",
                        "focal: ‸85 mm",
                        "read 85 mm",
                        "Brindle Zoom covers 24 mm to 70 mm"),
                rig(
                        "another focal length of a prime",
                        "{use: brindle-50,",
                        "{use: brindle-50, focal: ‸40 mm,",
                        "read 40 mm",
                        "Brindle 50 is a prime of 50 mm"),
                rig(
                        "an unknown recorder",
                        "{use: basket,",
                        "{use: ‸casket,",
                        "no recorder is called 'casket'",
                        "Did you mean 'basket'?"),
                rig(
                        "an unknown output",
                        "output: sdi",
                        "output: ‸sdl",
                        "no output of Heron is called 'sdl'",
                        "Did you mean 'sdi'?"),
                rig(
                        "an output that the mode lacks",
                        "output: sdi",
                        "output: ‸hdmi",
                        "Heron does not offer 'hdmi' in the mode 'uhd'",
                        "it offers sdi"),
                rig(
                        "an unknown codec of the recorder",
                        "codec: intra}",
                        "codec: ‸inter}",
                        "no codec of Basket is called 'inter'",
                        "Did you mean 'intra'?"),
                rig(
                        "a codec beside a recorder",
                        "iso: auto\n",
                        "iso: auto\n    codec: ‸inside\n",
                        "its codec stands under recorder"),
                rig(
                        "an unknown encoding to deliver",
                        "encoding: bt1886",
                        "encoding: ‸bt1887",
                        "no encoding is called 'bt1887'",
                        "Did you mean 'bt1886'?"),
                rig(
                        "an unknown encoding of a profile",
                        "{encoding: hlg,",
                        "{encoding: ‸hlq,",
                        "no encoding is called 'hlq'",
                        "Did you mean 'hlg'?"),
                rig(
                        "an unknown gamut of a profile",
                        "gamut: bt2020",
                        "gamut: ‸bt2021",
                        "no gamut is called 'bt2021'",
                        "Did you mean 'bt2020'?"),
                rig(
                        "an unknown key with a dot in it",
                        "    shutter: 180°",
                        "    ‸lens.stop: T4",
                        "the key 'lens.stop' is not known here"),
                rig(
                        "a bad reason under a key with a dot in it",
                        "    iso: auto",
                        "    iso: auto\n    intent: {lens.stop: ‸[]}",
                        "a single value belongs here, not a list"),
                rig(
                        "an encoding outside the catalogue's folder",
                        "encoding: bt1886",
                        "encoding: ‸../gamuts",
                        "no encoding is called '../gamuts'"),
                rig(
                        "an unknown tolerance profile",
                        "tolerance: intercut",
                        "tolerance: ‸intercot",
                        "no tolerance profile is called 'intercot'",
                        "Did you mean 'intercut'?",
                        "Allowed: insert, intercut"),
                rig(
                        "an unknown tolerance",
                        "{blur: 6 %}",
                        "{‸blurr: 6 %}",
                        "no tolerance is called 'blurr'",
                        "Did you mean 'blur'?"),
                rig("a tolerance without its unit", "{blur: 6 %}", "{blur: ‸6}", "\"6\" is not a percentage"),
                rig("a tolerance of nothing", "{blur: 6 %}", "{blur: ‸0 %}", "read '0 %'", "a tolerance is over 0"),
                rig(
                        "a list for a tolerance",
                        "{blur: 6 %}",
                        "{blur: ‸[6 %]}",
                        "a single value belongs here, not a list"),
                rig("a hero that is no unit", "hero: A", "hero: ‸C", "the hero 'C' is not one of the units: A, B."),
                rig(
                        "a scene with an unknown unit",
                        "units: [A, B]",
                        "units: [A, ‸C]",
                        "read 'C'",
                        "the units are A, B"),
                rig("a unit with an odd name", "  B:\n", "  ‸B cam:\n", "the unit name 'B cam'", "a short word"),
                rig(
                        "one unit",
                        Rigs.MARKET.substring(Rigs.MARKET.indexOf("units:\n  A"), Rigs.MARKET.indexOf("  B:\n")),
                        "‸units:\n",
                        "a pairing needs at least two units; read one, B"),
                rig(
                        "no units",
                        Rigs.MARKET.substring(Rigs.MARKET.indexOf("units:\n  A")),
                        "‸units: {}\n",
                        "a pairing needs at least two units; read none"));
    }

    private static String bomb() {
        StringBuilder text = new StringBuilder("akin: 1\na: ‸&a [x,x,x,x,x,x,x,x,x]\n");
        for (char c = 'b'; c <= 'z'; c++) {
            String before = "*" + (char) (c - 1);
            text.append(c)
                    .append(": &")
                    .append(c)
                    .append(" [")
                    .append((before + ",").repeat(8))
                    .append(before)
                    .append("]\n");
        }
        return text.toString();
    }

    @Test
    void theRigThatTheTableStartsFromReads() throws IOException {
        Run run = Run.of("check", write(Rigs.MARKET));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isIn(Akin.PASSES, Akin.FAILS);
        assertThat(run.out()).contains("Night market");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void oneLineAtThePlace(Case bad) throws IOException {
        String file = write(bad.text().replace(CARET, ""));
        Run run = Run.of("check", file);
        Said.of(run, file).isAt(place(bad.text())).says(bad.words());
    }

    /** Line and column of the sign, counted in code points. */
    private static String place(String text) {
        int at = text.indexOf(CARET);
        assertThat(at).as("the case says where").isNotNegative();
        String before = text.substring(0, at);
        String[] lines = before.split("\r\n|\n", -1);
        String last = lines[lines.length - 1];
        return lines.length + ":" + (1 + last.codePointCount(0, last.length()));
    }

    private String write(String text) throws IOException {
        return Files.writeString(folder.resolve("rig.yaml"), text).toString();
    }
}
