package akin.engine.bench;

import akin.engine.assess.Assessment;
import akin.engine.assess.Checker;
import akin.engine.assess.FailOn;
import akin.engine.assess.RuleBase;
import akin.engine.book.CompiledBook;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.YamlReader;
import akin.engine.report.JsonReport;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Assessments of a rig of two units by one thread, with rules and catalogue loaded. One core's work: the collector that akin starts
 * with has no threads of its own. The compiler takes half a minute until it is done with all the rules.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 10, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
public class AssessmentBenchmark {
    /** The matched pair that rule pages start from, and the same with one shutter closed further. */
    @Param({"matched", "faulty"})
    String rig = "matched";

    private final Terms terms = new Terms(null, LocalDate.of(2027, 1, 1));
    private String text = "";
    private Document document = YamlReader.read("rig.yaml", "akin: 1");
    private Checker checker = checker();

    private static Checker checker() {
        Binder binder = new Binder();
        return new Checker(RuleBase.builtIn(), CompiledBook.load(), binder, Catalogue.builtIn(binder));
    }

    /** Reads the rig once, and makes sure that it is the rig it is called. */
    @Setup
    public void read() {
        try (InputStream in = Objects.requireNonNull(
                AssessmentBenchmark.class.getResourceAsStream("/akin/rules/matched-pair.yaml"))) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (rig.equals("faulty")) {
            int last = text.lastIndexOf("shutter: 180°");
            text = text.substring(0, last) + "shutter: 90°" + text.substring(last + "shutter: 180°".length());
        }
        document = YamlReader.read("rig.yaml", text);
        checker = checker();
        if (checker.check(document, terms, FailOn.ADVICE).findings().isEmpty() == rig.equals("faulty")) {
            throw new IllegalStateException("the " + rig + " rig does not give what it should");
        }
    }

    /** From the parsed file to the ranked assessment. */
    @Benchmark
    public Assessment assess() {
        return checker.check(document, terms, FailOn.LOSSY);
    }

    /** From the file's text to the JSON report's text. */
    @Benchmark
    public String fromTextToJson() {
        return JsonReport.render(checker.check(YamlReader.read("rig.yaml", text), terms, FailOn.LOSSY), "0");
    }
}
