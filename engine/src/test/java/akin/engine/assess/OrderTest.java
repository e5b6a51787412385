package akin.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import akin.engine.book.CompiledBook;
import akin.engine.book.Examples;
import akin.engine.book.Shelf;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.YamlReader;
import akin.engine.report.JsonReport;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The assessment does not depend on the order in which a rig file says things. */
class OrderTest {

    private static final Binder BINDER = new Binder();
    private static final Checker CHECKER =
            new Checker(RuleBase.builtIn(), CompiledBook.load(), BINDER, Catalogue.builtIn(BINDER));
    private static final Document FAULTY = faulty();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void keysAndUnitsInAnyOrderGiveTheSameReport(long seed) {
        StringBuilder text = new StringBuilder();
        write(FAULTY.root(), 0, text, new Random(seed));
        assertThat(report(YamlReader.read("rig.yaml", text.toString()))).isEqualTo(report(FAULTY));
    }

    @Test
    void theFaultyRigHasSomethingToOrder() {
        Assessment assessment = CHECKER.check(FAULTY, Terms.OF_THE_RIG, FailOn.LOSSY);
        assertThat(assessment.findings()).hasSizeGreaterThan(3);
        assertThat(assessment.unchecked()).isNotEmpty();
    }

    /** The report without the places, which move with the order of the file. */
    private static String report(Document document) {
        return JsonReport.render(CHECKER.check(document, Terms.OF_THE_RIG, FailOn.LOSSY), "test")
                .replaceAll("\"(line|column)\" : \\d+", "\"$1\" : 0");
    }

    /** The matched pair with a third unit, several things wrong, and a fact that is not known. */
    private static Document faulty() {
        String changes = """
                gear:
                  bodies:
                    large: {iso: ~}
                units:
                  B: {shutter: 1/100, iso: 200, white: 5600 K}
                  C:
                    body: small
                    mode: open
                    profile: log
                    codec: inside
                    lens: {use: long-zoom, focal: 24 mm, stop: T2.8}
                    shutter: 1/60
                    iso: 3200
                    filters: [ND 0.6]
                    white: 3200 K
                """;
        Document laid = Examples.lay(YamlReader.read("rig.yaml", changes), Shelf.matchedPair());
        return YamlReader.read("rig.yaml", laid.text());
    }

    private static void write(Node node, int depth, StringBuilder out, Random random) {
        if (node instanceof Node.Scalar scalar) {
            out.append(scalar.plain() ? scalar.text() : "'" + scalar.text().replace("'", "''") + "'");
        } else if (node instanceof Node.Items items) {
            out.append('[');
            for (int i = 0; i < items.items().size(); i++) {
                out.append(i == 0 ? "" : ", ");
                flow(items.items().get(i), out, random);
            }
            out.append(']');
        } else if (node instanceof Node.Fields fields) {
            for (Map.Entry<String, Node.Field> field : shuffled(fields, random)) {
                out.append(out.isEmpty() ? "" : "\n")
                        .append("  ".repeat(depth))
                        .append(field.getKey())
                        .append(": ");
                write(field.getValue().value(), depth + 1, out, random);
            }
        }
    }

    private static void flow(Node node, StringBuilder out, Random random) {
        if (node instanceof Node.Fields fields) {
            out.append('{');
            String comma = "";
            for (Map.Entry<String, Node.Field> field : shuffled(fields, random)) {
                out.append(comma).append(field.getKey()).append(": ");
                flow(field.getValue().value(), out, random);
                comma = ", ";
            }
            out.append('}');
        } else {
            write(node, 0, out, random);
        }
    }

    private static List<Map.Entry<String, Node.Field>> shuffled(Node.Fields fields, Random random) {
        List<Map.Entry<String, Node.Field>> entries =
                new ArrayList<>(fields.fields().entrySet());
        Collections.shuffle(entries, random);
        return entries;
    }
}
