package akin.engine.assess;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;

import akin.engine.book.CompiledBook;
import akin.engine.book.Examples;
import akin.engine.book.Pages;
import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.engine.book.Shelf;
import akin.engine.edit.Edits;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.Place;
import akin.engine.read.YamlReader;
import akin.model.finding.Edit;
import akin.model.finding.Severity;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Fixes are made only where they help, and change nothing else in the file. */
class MenderTest {

    private static final Path SAMPLES = Path.of("..", "samples");
    private static final Terms TERMS = new Terms(null, LocalDate.of(2027, 1, 1));
    private static final RuleBook BOOK = CompiledBook.load();
    private static final Binder BINDER = new Binder();
    private static final Checker CHECKER = new Checker(RuleBase.builtIn(), BOOK, BINDER, Catalogue.builtIn(BINDER));
    private static final Mender MENDER = new Mender(CHECKER, TERMS);
    private static final Mender.Choosing ALL = new Mender.Choosing(Set.of(), Set.of());

    static List<String> samples() {
        try (Stream<Path> folders = Files.list(SAMPLES)) {
            return folders.map(folder -> folder.resolve("rig.yaml"))
                    .filter(Files::exists)
                    .map(Path::toString)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<String> rules() {
        return BOOK.pages().stream().map(RulePage::id);
    }

    /** Every fix of every example, made by itself: outside the span of what it names, every byte is as it was. */
    @ParameterizedTest
    @MethodSource("rules")
    void aFixOfAnExampleLeavesEveryOtherByte(String rule) {
        for (Document rig : examples(rule)) {
            eachFixLeavesEveryOtherByte(rig);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aFixOfASampleLeavesEveryOtherByte(String sample) {
        for (Variant variant : Variant.values()) {
            eachFixLeavesEveryOtherByte(rig(variant.of.apply(text(sample))));
        }
    }

    private static void eachFixLeavesEveryOtherByte(Document rig) {
        for (Assessment.Entry finding : check(rig).findings()) {
            for (Assessment.Remedy fix : finding.fixes()) {
                Document now = rig;
                for (Assessment.Change change : fix.edits()) {
                    Edit edit = new Edit(change.path(), change.to());
                    Document after = rig(Edits.apply(now, List.of(edit)));
                    keepsEveryOtherByte(now, edit, after.text());
                    now = after;
                }
                assertThat(Edits.apply(rig, edits(fix.edits()))).isEqualTo(now.text());
            }
        }
    }

    private static void keepsEveryOtherByte(Document before, Edit edit, String after) {
        byte[] old = before.text().getBytes(UTF_8);
        byte[] now = after.getBytes(UTF_8);
        Optional<Node> node = before.at(edit.path());
        int from;
        int to;
        if (node.isEmpty()) {
            // Something is added: one place is found where the old bytes part, and none of them is lost.
            from = Arrays.mismatch(old, now) < 0 ? old.length : Math.min(Arrays.mismatch(old, now), old.length);
            int tail = 0;
            while (tail < old.length && old[old.length - 1 - tail] == now[now.length - 1 - tail]) {
                tail++;
            }
            assertThat(from + tail)
                    .as("%s adds to\n%s\nand gives\n%s", edit, before.text(), after)
                    .isGreaterThanOrEqualTo(old.length);
            return;
        }
        if (edit.to() == null) {
            Node.Fields holder = before.holderOf(edit.path()).orElseThrow();
            Place key = before.keyOf(edit.path()).orElseThrow();
            List<Node.Field> fields = List.copyOf(holder.fields().values());
            int index = fields.stream().map(Node.Field::key).toList().indexOf(key);
            // Of a flow mapping a comma goes too, of a block the rest of the line.
            from = holder.flow() && index > 0
                    ? fields.get(index - 1).value().place().to()
                    : lineStart(before, key);
            to = holder.flow() && index + 1 < fields.size()
                    ? fields.get(index + 1).key().from()
                    : holder.flow()
                            ? node.get().place().to()
                            : behindLine(before, node.get().place());
        } else {
            boolean block = (node.get() instanceof Node.Fields f && !f.flow())
                    || (node.get() instanceof Node.Items i && !i.flow());
            Optional<Place> key = before.keyOf(edit.path());
            from = block && key.isPresent()
                    ? key.get().to()
                    : node.get().place().from();
            to = node.get().place().to();
        }
        int head = bytes(before, 0, from);
        int tail =
                bytes(before, to, before.text().codePointCount(0, before.text().length()));
        assertThat(now.length).isGreaterThanOrEqualTo(head + tail);
        assertThat(Arrays.equals(old, 0, head, now, 0, head))
                .as("bytes before %s in\n%s\ngive\n%s", edit, before.text(), after)
                .isTrue();
        assertThat(Arrays.equals(old, old.length - tail, old.length, now, now.length - tail, now.length))
                .as("bytes behind %s in\n%s\ngive\n%s", edit, before.text(), after)
                .isTrue();
    }

    private static int lineStart(Document document, Place place) {
        int[] text = document.text().codePoints().toArray();
        int at = place.from();
        while (at > 0 && text[at - 1] != '\n') {
            at--;
        }
        return at;
    }

    private static int behindLine(Document document, Place place) {
        int[] text = document.text().codePoints().toArray();
        int at = place.to();
        while (at < text.length && text[at] != '\n') {
            at++;
        }
        return Math.min(at + 1, text.length);
    }

    private static int bytes(Document document, int from, int to) {
        String text = document.text();
        int start = text.offsetByCodePoints(0, from);
        return text.substring(start, text.offsetByCodePoints(start, to - from)).getBytes(UTF_8).length;
    }

    /** The ways an editor may have saved the same lines. */
    enum Variant {
        AS_IT_IS(text -> text),
        CRLF(text -> text.replace("\n", "\r\n")),
        MARK(text -> "\uFEFF" + text),
        NO_LAST_LINE_END(text -> text.endsWith("\n") ? text.substring(0, text.length() - 1) : text);

        private final UnaryOperator<String> of;

        Variant(UnaryOperator<String> of) {
            this.of = of;
        }
    }

    /** Mended and saved otherwise is the same as saved otherwise and mended. */
    @ParameterizedTest
    @MethodSource("samples")
    void howTheFileIsSavedIsKept(String sample) {
        String mended = MENDER.mend(rig(text(sample)), ALL).text();
        for (Variant variant : Variant.values()) {
            assertThat(MENDER.mend(rig(variant.of.apply(text(sample))), ALL).text())
                    .as("%s", variant)
                    .isEqualTo(variant.of.apply(mended));
        }
    }

    /** Judged from outside, by whole checks: each step was safe, and no fix that is left is. */
    @ParameterizedTest
    @MethodSource("samples")
    void everySafeFixIsMadeAndNoOther(String sample) {
        everySafeFixIsMadeAndNoOther(rig(text(sample)));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everySafeFixOfAnExampleIsMadeAndNoOther(String rule) {
        examples(rule).stream().limit(2).forEach(MenderTest::everySafeFixIsMadeAndNoOther);
    }

    private static void everySafeFixIsMadeAndNoOther(Document rig) {
        Mending mending = MENDER.mend(rig, ALL);
        Document now = rig;
        Map<String, Long> mended = new HashMap<>();
        for (Mending.Step step : mending.done()) {
            assertThat(step.edits())
                    .noneMatch(edit ->
                            edit.path().startsWith("kit.") || edit.path().startsWith("scenes."));
            Assessment before = check(now);
            Document next = rig(Edits.apply(now, edits(step.edits())));
            Assessment after = check(next);
            Assessment.Entry finding = before.findings().stream()
                    .filter(f -> f.rule().equals(step.rule()) && f.title().equals(step.title()))
                    .findFirst()
                    .orElseThrow();
            assertThat(objection(finding, before, after, mended)).as("%s", step).isEmpty();
            mended.put(subject(finding), count(after, subject(finding)));
            now = next;
        }
        assertThat(mending.text()).isEqualTo(now.text());
        Assessment end = check(now);
        assertThat(mending.left().stream().map(left -> left.rule() + left.title()))
                .isEqualTo(
                        end.findings().stream().map(f -> f.rule() + f.title()).toList());
        assertThat(mending.left()).allSatisfy(left -> assertThat(left.why()).isNotEmpty());
        for (Assessment.Entry finding : end.findings()) {
            for (Assessment.Remedy fix : finding.fixes()) {
                // What the crew has and shoots is written down only when asked.
                boolean ofTheCrew = fix.edits().stream()
                        .anyMatch(edit ->
                                edit.path().startsWith("kit.") || edit.path().startsWith("scenes."));
                if (!fix.edits().isEmpty() && !ofTheCrew) {
                    assertThat(stillObjected(now, end, finding, fix, mended))
                            .as("%s is left, though it is safe: %s", finding.rule(), fix.effect())
                            .isTrue();
                }
            }
        }
    }

    private static boolean stillObjected(
            Document now, Assessment end, Assessment.Entry finding, Assessment.Remedy fix, Map<String, Long> mended) {
        try {
            Assessment after = check(rig(Edits.apply(now, edits(fix.edits()))));
            return !objection(finding, end, after, mended).isEmpty();
        } catch (BadInput e) {
            return true;
        }
    }

    private static List<String> objection(
            Assessment.Entry finding, Assessment before, Assessment after, Map<String, Long> mended) {
        List<String> objections = new ArrayList<>();
        if (count(after, subject(finding)) >= count(before, subject(finding))) {
            objections.add("still there");
        }
        for (Assessment.Entry other : after.findings()) {
            boolean fresh = before.findings().stream()
                    .noneMatch(f ->
                            subject(f).equals(subject(other)) && f.severity().compareTo(other.severity()) <= 0);
            if (fresh && other.severity().compareTo(finding.severity()) <= 0) {
                objections.add("new: " + other.title());
            }
            if (count(after, subject(other)) > mended.getOrDefault(subject(other), Long.MAX_VALUE)) {
                objections.add("back: " + other.title());
            }
        }
        after.unchecked().stream()
                .filter(gap -> gap.rule().equals(finding.rule())
                        && finding.units().contains(gap.unit())
                        && !before.unchecked().contains(gap))
                .forEach(gap -> objections.add("unchecked: " + gap.missing()));
        return objections;
    }

    @Test
    void theFaultyOneIsMendedAsFarAsSettingsGo() {
        Document rig =
                rig(text(SAMPLES.resolve("night-market").resolve("rig.yaml").toString()));
        Mending mending = MENDER.mend(rig, ALL);
        assertThat(mending.done()).hasSizeGreaterThan(8);
        assertThat(check(rig(mending.text())).count(Severity.BAKED_IN)).isZero();
        assertThat(mending.text()).contains("# \"full frame looks better\"", "# out of habit");
        assertThat(mending.left())
                .anySatisfy(left -> assertThat(left.why())
                        .anyMatch(why -> why.startsWith("Not safe: ") && why.contains("That would bring: ")))
                .anySatisfy(left -> assertThat(left.why()).allMatch(why -> why.startsWith("By hand: ")));
    }

    @Test
    void onlyTheChosenRulesAreMended() {
        Document rig =
                rig(text(SAMPLES.resolve("night-market").resolve("rig.yaml").toString()));
        Mending mending = MENDER.mend(rig, new Mender.Choosing(Set.of("tone/levels", "white/differs"), Set.of()));
        assertThat(mending.done().stream().map(Mending.Step::rule)).containsExactly("white/differs", "tone/levels");
        assertThat(mending.left())
                .filteredOn(left -> left.rule().equals("motion/blur-differs"))
                .hasSize(1)
                .allSatisfy(left -> assertThat(left.why()).containsExactly("Not chosen."));
    }

    @Test
    void onlyTheChosenUnitIsChanged() {
        Document rig =
                rig(text(SAMPLES.resolve("night-market").resolve("rig.yaml").toString()));
        Mending mending = MENDER.mend(rig, new Mender.Choosing(Set.of(), Set.of("B")));
        assertThat(mending.done()).isNotEmpty();
        assertThat(mending.done())
                .flatExtracting(Mending.Step::edits)
                .extracting(Assessment.Change::path)
                .allMatch(path -> path.startsWith("units.B."));
        assertThat(mending.left())
                .flatExtracting(Mending.Left::why)
                .anyMatch(why -> why.startsWith("Not chosen, since"));
        Document after = rig(mending.text());
        assertThat(Edits.slice(after, after.placeOf("units.A"))).isEqualTo(Edits.slice(rig, rig.placeOf("units.A")));
    }

    @Test
    void anUnknownRuleOrUnitIsNamed() {
        Document rig = Shelf.matchedPair();
        assertThatThrownBy(() -> MENDER.mend(rig, new Mender.Choosing(Set.of("tone/levles"), Set.of())))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("--rule: no rule is called 'tone/levles'. Did you mean 'tone/levels'?");
        assertThatThrownBy(() -> MENDER.mend(rig, new Mender.Choosing(Set.of(), Set.of("C"))))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("--unit: no unit is called 'C'")
                .hasMessageContaining("Allowed: A, B");
    }

    /** B's ISO is wanted one way so that both clip alike, and the other way for the sake of its noise. */
    @Test
    void ofTwoFixesOfOneSettingTheMoreUrgentOneStays() {
        Document changes =
                YamlReader.read("rig.yaml", "gear: {bodies: {small: {profiles: {log: {headroom: 5.6 stops}}}}}");
        Mending mending = MENDER.mend(Examples.lay(changes, Shelf.matchedPair()), ALL);
        assertThat(mending.done()).hasSize(1).allSatisfy(step -> {
            assertThat(step.rule()).isEqualTo("exposure/headroom-differs");
            assertThat(step.edits()).extracting(Assessment.Change::path).contains("units.B.iso");
        });
        assertThat(mending.left()).hasSize(1).allSatisfy(left -> {
            assertThat(left.rule()).isEqualTo("exposure/iso-off-base");
            assertThat(left.why())
                    .anyMatch(why -> why.contains("Set B to ISO")
                            && why.endsWith("It would bring back what was mended: B and A clip at different levels"
                                    + " (exposure/headroom-differs, fixable)."));
        });
    }

    @Test
    void whatIsWaivedStays() {
        Document pair = Shelf.matchedPair();
        String plan = pair.text()
                .replace(
                        "shutter: 180°\n    iso: 800\n    filters: [ND 0.6]",
                        "shutter: 90°\n    iso: 800\n    filters: [ND 0.3]");
        assertThat(plan).isNotEqualTo(pair.text());
        assertThat(MENDER.mend(rig(plan), ALL).text()).isNotEqualTo(plan);
        String waived = plan + "waivers: [{rule: motion/blur-differs, because: agreed}]\n";
        Mending mending = MENDER.mend(rig(waived), new Mender.Choosing(Set.of("motion/blur-differs"), Set.of()));
        assertThat(mending.done()).isEmpty();
        assertThat(mending.text()).isEqualTo(waived);
    }

    private static List<Document> examples(String rule) {
        String page = Shelf.page(rule).orElseThrow();
        return Pages.examples(rule, page).stream()
                .filter(Pages.Example::fires)
                .map(example -> Examples.lay(YamlReader.read(rule, example.text()), Shelf.matchedPair()))
                .toList();
    }

    private static List<Edit> edits(List<Assessment.Change> changes) {
        return changes.stream()
                .map(change -> new Edit(change.path(), change.to()))
                .toList();
    }

    private static String subject(Assessment.Entry finding) {
        return finding.rule() + finding.units();
    }

    private static long count(Assessment in, String subject) {
        return in.findings().stream().filter(f -> subject(f).equals(subject)).count();
    }

    private static Assessment check(Document rig) {
        return CHECKER.check(rig, TERMS, FailOn.LOSSY);
    }

    private static Document rig(String text) {
        return YamlReader.read("rig.yaml", text);
    }

    private static String text(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (IOException e) {
            return fail(e);
        }
    }
}
