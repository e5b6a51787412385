package akin.engine.report;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checked;
import akin.engine.assess.FailOn;
import akin.engine.assess.Unchecked;
import akin.engine.book.RulePage;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.jspecify.annotations.Nullable;

/**
 * The report as the XML in which test runs are reported: a suite for each rig file, a case for each check. A case fails
 * when it found something at or above the failing severity, and is skipped when a fact was missing.
 */
final class JunitReport {

    private JunitReport() {}

    /** What one case came to. */
    private static final class Case {
        private final List<Assessment.Entry> failures = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private final List<Unchecked> unchecked = new ArrayList<>();

        private boolean fails(FailOn failOn) {
            return !failures.isEmpty() || (failOn.failsUnchecked() && !unchecked.isEmpty());
        }

        private boolean skipped(FailOn failOn) {
            return !unchecked.isEmpty() && !fails(failOn);
        }
    }

    /** A suite: its cases by what was checked; of a rig file that cannot be read, none. */
    private record Suite(Batch.Part part, Map<Checked.Check, Case> cases) {}

    /** How many cases came to what. */
    private record Counts(long tests, long failures, long errors, long skipped) {

        static Counts of(Suite suite, FailOn failOn) {
            long errors = suite.part() instanceof Batch.Unread ? 1 : 0;
            return new Counts(
                    suite.cases().size() + errors,
                    suite.cases().values().stream()
                            .filter(one -> one.fails(failOn))
                            .count(),
                    errors,
                    suite.cases().values().stream()
                            .filter(one -> one.skipped(failOn))
                            .count());
        }

        Counts plus(Counts other) {
            return new Counts(
                    tests + other.tests, failures + other.failures, errors + other.errors, skipped + other.skipped);
        }

        void write(XMLStreamWriter xml) throws XMLStreamException {
            attribute(xml, "tests", String.valueOf(tests));
            attribute(xml, "failures", String.valueOf(failures));
            attribute(xml, "errors", String.valueOf(errors));
            attribute(xml, "skipped", String.valueOf(skipped));
        }
    }

    static String render(Batch batch) {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
            document(xml, batch);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return out.append('\n').toString();
    }

    private static void document(XMLStreamWriter xml, Batch batch) throws XMLStreamException {
        List<Suite> suites = batch.parts().stream()
                .map(part -> new Suite(part, part instanceof Batch.Read read ? cases(batch, read) : Map.of()))
                .toList();
        xml.writeStartDocument("UTF-8", "1.0");
        line(xml, 0);
        xml.writeStartElement("testsuites");
        attribute(xml, "name", "akin");
        Counts baseline =
                batch.baseline() == null ? new Counts(0, 0, 0, 0) : new Counts(1, batch.baselineFails() ? 1 : 0, 0, 0);
        suites.stream()
                .map(suite -> Counts.of(suite, batch.failOn()))
                .reduce(baseline, Counts::plus)
                .write(xml);
        for (Suite suite : suites) {
            suite(xml, suite, batch.failOn());
        }
        if (batch.baseline() != null) {
            baseline(xml, batch, baseline);
        }
        line(xml, 0);
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    /** The baseline is a suite of its own, with one case: that it holds what is there. */
    private static void baseline(XMLStreamWriter xml, Batch batch, Counts counts) throws XMLStreamException {
        List<String> lines = Story.baseline(batch);
        line(xml, 1);
        xml.writeStartElement("testsuite");
        attribute(xml, "name", "baseline");
        counts.write(xml);
        line(xml, 2);
        xml.writeStartElement("testcase");
        attribute(xml, "classname", "baseline");
        attribute(xml, "name", "the baseline holds what is there");
        if (batch.baselineFails()) {
            report(xml, "failure", "outdated", lines.get(0), lines);
        } else {
            line(xml, 3);
            xml.writeStartElement("system-out");
            text(xml, lines);
            xml.writeEndElement();
        }
        line(xml, 2);
        xml.writeEndElement();
        line(xml, 1);
        xml.writeEndElement();
    }

    private static void suite(XMLStreamWriter xml, Suite suite, FailOn failOn) throws XMLStreamException {
        line(xml, 1);
        xml.writeStartElement("testsuite");
        attribute(xml, "name", suite.part().file());
        Counts.of(suite, failOn).write(xml);
        if (suite.part() instanceof Batch.Unread unread) {
            line(xml, 2);
            xml.writeStartElement("testcase");
            attribute(xml, "classname", "rig");
            attribute(xml, "name", "the rig file can be read");
            report(xml, "error", "bad-input", unread.problem(), List.of(unread.place() + ": " + unread.problem()));
            line(xml, 2);
            xml.writeEndElement();
        }
        for (Map.Entry<Checked.Check, Case> entry : suite.cases().entrySet()) {
            testCase(xml, suite.part().file(), entry.getKey(), entry.getValue(), failOn);
        }
        List<String> aside = suite.part() instanceof Batch.Read read ? aside(read.assessment()) : List.of();
        if (!aside.isEmpty()) {
            line(xml, 2);
            xml.writeStartElement("system-out");
            text(xml, aside);
            xml.writeEndElement();
        }
        line(xml, 1);
        xml.writeEndElement();
    }

    /** What is said of a rig beside its checks. */
    private static List<String> aside(Assessment a) {
        List<String> lines = new ArrayList<>();
        if (!a.notes().isEmpty()) {
            lines.add(Story.NOTES);
            lines.addAll(a.notes());
        }
        if (!a.cautions().isEmpty()) {
            lines.add(Story.CARE);
            a.cautions()
                    .forEach(caution ->
                            lines.add(caution.sentence() + " " + Story.here(caution) + " [" + caution.rule() + "]"));
        }
        return lines;
    }

    private static void testCase(XMLStreamWriter xml, String file, Checked.Check check, Case one, FailOn failOn)
            throws XMLStreamException {
        line(xml, 2);
        boolean empty = one.failures.isEmpty() && one.unchecked.isEmpty() && one.notes.isEmpty();
        if (empty) {
            xml.writeEmptyElement("testcase");
        } else {
            xml.writeStartElement("testcase");
        }
        attribute(
                xml,
                "classname",
                check.rule().substring(0, Math.max(0, check.rule().indexOf('/'))));
        attribute(xml, "name", check.rule() + " of " + String.join(", ", check.units()));
        if (empty) {
            return;
        }
        List<String> gaps =
                one.unchecked.stream().map(Story::missing).distinct().toList();
        if (one.skipped(failOn)) {
            line(xml, 3);
            xml.writeEmptyElement("skipped");
            attribute(xml, "message", "not checked, since this is not known: " + String.join("; ", gaps));
        } else if (!one.failures.isEmpty()) {
            List<String> text = new ArrayList<>();
            for (Assessment.Entry entry : one.failures) {
                text.add(entry.title());
                text.addAll(Story.lines(entry));
                text.add(file + ":" + entry.place().line() + ":" + entry.place().column() + " " + entry.path());
            }
            Assessment.Entry worst = one.failures.get(0);
            report(xml, "failure", worst.severity().word(), worst.title(), text);
        } else if (!gaps.isEmpty()) {
            report(xml, "failure", "unchecked", "not checked: a fact is not known", gaps);
        }
        if (!one.notes.isEmpty()) {
            line(xml, 3);
            xml.writeStartElement("system-out");
            text(xml, one.notes);
            xml.writeEndElement();
        }
        line(xml, 2);
        xml.writeEndElement();
    }

    private static void report(XMLStreamWriter xml, String name, String type, String message, List<String> lines)
            throws XMLStreamException {
        line(xml, 3);
        xml.writeStartElement(name);
        attribute(xml, "type", type);
        attribute(xml, "message", message);
        text(xml, lines);
        xml.writeEndElement();
    }

    /** Every check that ran, or could not, or found something, in the order of the book. */
    private static Map<Checked.Check, Case> cases(Batch batch, Batch.Read read) {
        Map<String, Integer> order = new HashMap<>();
        for (RulePage page : batch.book().pages()) {
            order.put(page.id(), order.size());
        }
        Map<Checked.Check, Case> cases = new TreeMap<>(
                Comparator.<Checked.Check>comparingInt(check -> order.getOrDefault(check.rule(), order.size()))
                        .thenComparing(Checked.Check::rule)
                        .thenComparing(check -> String.join(", ", check.units()))
                        .thenComparing(check -> check.units().toString()));
        Assessment a = read.assessment();
        read.checked().ran().forEach(check -> cases.put(check, new Case()));
        for (Unchecked line : a.unchecked()) {
            of(cases, line.rule(), List.of(line.unit())).unchecked.add(line);
        }
        for (Assessment.Entry entry : a.findings()) {
            Case one = of(cases, entry.rule(), entry.units());
            if (batch.failOn().fails(entry.severity())) {
                one.failures.add(entry);
            } else {
                note(one, entry, entry.severity().word(), null);
            }
        }
        a.waived().forEach(w -> note(of(cases, w.entry().rule(), w.entry().units()), w.entry(), "waived", w));
        a.known().forEach(entry -> note(of(cases, entry.rule(), entry.units()), entry, "known", null));
        return cases;
    }

    private static Case of(Map<Checked.Check, Case> cases, String rule, List<String> units) {
        return cases.computeIfAbsent(new Checked.Check(rule, units), check -> new Case());
    }

    private static void note(Case one, Assessment.Entry entry, String label, Assessment.@Nullable Waived waived) {
        Stream.concat(
                        Stream.of(label + ": " + entry.title(), entry.because()),
                        waived == null ? Stream.empty() : Stream.of(Story.agreed(waived)))
                .forEach(one.notes::add);
    }

    private static void attribute(XMLStreamWriter xml, String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, Wrap.clean(value));
    }

    private static void text(XMLStreamWriter xml, List<String> lines) throws XMLStreamException {
        xml.writeCharacters(String.join("\n", lines.stream().map(Wrap::clean).toList()));
    }

    private static void line(XMLStreamWriter xml, int depth) throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(depth));
    }
}
