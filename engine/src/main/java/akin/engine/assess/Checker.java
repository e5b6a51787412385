package akin.engine.assess;

import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.engine.edit.Edits;
import akin.engine.equip.Catalogue;
import akin.engine.equip.Equipper;
import akin.engine.equip.Notes;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Document;
import akin.engine.read.Node;
import akin.engine.read.YamlReader;
import akin.model.finding.Caution;
import akin.model.finding.Edit;
import akin.model.finding.Finding;
import akin.model.finding.Fix;
import akin.model.finding.Target;
import akin.model.rig.Rig;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;

/** The main job from one end to the other: a rig document in, a finished assessment out. Thread-safe. */
public final class Checker {

    /** Most urgent first; a total order that depends on nothing but the findings themselves. */
    static final Comparator<Finding> URGENCY = Comparator.comparing(Finding::severity)
            .thenComparing(Comparator.comparingDouble(Finding::magnitude).reversed())
            .thenComparingInt(finding -> RuleBook.topicOrder(finding.rule()))
            .thenComparing(Finding::rule)
            .thenComparing(finding -> String.join(" ", finding.units()))
            .thenComparing(finding -> String.join(" ", finding.clips()))
            .thenComparing(Finding::path)
            .thenComparing(Finding::toString);

    private final Supplier<KieBase> rules;
    private final Supplier<RuleBook> book;
    private final Binder binder;
    private final Function<String, Catalogue> catalogues;
    private final @Nullable AddedRules added;

    /** A checker with these rules, pages and gear. */
    public Checker(KieBase rules, RuleBook book, Binder binder, Catalogue catalogue) {
        this(() -> rules, () -> book, binder, rig -> catalogue);
    }

    /**
     * A checker whose rules and pages may still be loading; each is asked for when first needed, and may be again.
     *
     * @param catalogues what words of a rig file are looked up in, by the name of the file: data may lie beside it
     */
    public Checker(
            Supplier<KieBase> rules, Supplier<RuleBook> book, Binder binder, Function<String, Catalogue> catalogues) {
        this(rules, book, binder, catalogues, null);
    }

    /**
     * A checker that goes by the rules of packs too.
     *
     * @param rules Akin's own rules and those of the packs; may still be loading
     */
    public Checker(Supplier<KieBase> rules, AddedRules added, Binder binder, Function<String, Catalogue> catalogues) {
        this(rules, added::book, binder, catalogues, added);
    }

    private Checker(
            Supplier<KieBase> rules,
            Supplier<RuleBook> book,
            Binder binder,
            Function<String, Catalogue> catalogues,
            @Nullable AddedRules added) {
        this.rules = rules;
        this.book = book;
        this.binder = binder;
        this.catalogues = catalogues;
        this.added = added;
    }

    /**
     * Looks up every word of a rig document.
     *
     * @param terms what the check goes by, beside the rig file
     * @throws BadInput at the first word that cannot be looked up
     */
    public Rig equip(Document document, Terms terms) {
        return Equipper.equip(document, binder, catalogues.apply(document.file()), terms);
    }

    /** Assesses a rig document on no particular day: end dates of waivers are not looked at. */
    public Assessment check(Document document, @Nullable String tolerance, FailOn failOn) {
        return check(document, new Terms(tolerance, null), failOn);
    }

    /**
     * Assesses a rig document.
     *
     * @param terms what the check goes by, beside the rig file
     * @param failOn the least urgent thing that makes it fail
     * @throws BadInput at the first thing in it that is wrong
     */
    public Assessment check(Document document, Terms terms, FailOn failOn) {
        return examine(document, terms, failOn).assessment();
    }

    /**
     * Assesses a rig document, and gives the assessment with what it was made from.
     *
     * @param terms what the check goes by, beside the rig file
     * @param failOn the least urgent thing that makes it fail
     * @throws BadInput at the first thing in it that is wrong
     */
    public Checked examine(Document document, Terms terms, FailOn failOn) {
        Judged judged = judge(document, terms);
        Rig rig = judged.rig();
        Outcome outcome = judged.outcome();
        return told(
                document,
                judged,
                failOn,
                book.get(),
                sideEffects(document, terms, judged.ranked()),
                outcome.targets().stream()
                        .sorted(Comparator.comparing(Target::unit)
                                // Middle grey before clip.
                                .thenComparing(Target::name, Comparator.reverseOrder())
                                .thenComparing(Target::aid))
                        .toList(),
                cautions(document, outcome.cautions()),
                notes(document, rig));
    }

    /**
     * Assesses what was shot by the plan in a rig document: what the rules of one topic find, and nothing else. The plan is what
     * shots are held against; whether it is a good one is for {@link #examine}. Fixes are not tried: nothing in the rig file
     * changes what was shot.
     *
     * @param topic footage or proof
     * @param terms what the check goes by, beside the rig file; with what was shot
     * @param failOn the least urgent thing that makes it fail
     * @param notes what a reader must know of what was shot
     * @throws BadInput at the first thing in the document that is wrong
     */
    public Checked examineShots(String topic, Document document, Terms terms, FailOn failOn, List<String> notes) {
        return told(
                document, judge(document, terms), failOn, book.get().of(topic), Map.of(), List.of(), List.of(), notes);
    }

    /** What the rules of a book, or a part of it, found, in words. */
    private Checked told(
            Document document,
            Judged judged,
            FailOn failOn,
            RuleBook part,
            Map<List<Edit>, List<String>> sideEffects,
            List<Target> targets,
            List<Assessment.Caution> cautions,
            List<String> notes) {
        Rig rig = judged.rig();
        Coverage coverage = Coverage.of(part, rig, judged.outcome());
        List<Assessment.Entry> entries = new ArrayList<>();
        List<Assessment.Waived> waived = new ArrayList<>();
        for (Finding finding : judged.ranked()) {
            if (!part.ids().has(finding.rule())) {
                continue;
            }
            Assessment.Entry entry = entry(document, finding, sideEffects);
            rig.waivers().stream()
                    .filter(waiver -> waiver.covers(finding))
                    .findFirst()
                    .ifPresentOrElse(
                            waiver -> waived.add(new Assessment.Waived(entry, waiver.because(), waiver.until())),
                            () -> entries.add(entry));
        }
        Assessment assessment = new Assessment(
                document.file(),
                rig.production().name(),
                rig.match().hero(),
                rig.match().tolerances().profile(),
                failOn.verdict(
                        entries.stream().map(Assessment.Entry::severity).toList(),
                        !coverage.unchecked().isEmpty()),
                coverage.ran().size(),
                entries,
                waived,
                List.of(),
                coverage.unchecked(),
                targets,
                cautions,
                notes);
        return new Checked(document, rig, assessment, coverage.ran());
    }

    private List<String> notes(Document document, Rig rig) {
        List<String> notes = new ArrayList<>(Notes.of(document, rig, catalogues.apply(document.file())));
        if (added != null) {
            notes.addAll(added.notes());
        }
        return notes;
    }

    /**
     * What the rules say of a rig document, before it is put into words.
     *
     * @param rig the rig
     * @param outcome what the rule session left behind
     * @param ranked its findings, most urgent first, the waived among them
     */
    record Judged(Rig rig, Outcome outcome, List<Finding> ranked) {

        /** The findings that no waiver covers, most urgent first. */
        List<Finding> open() {
            return ranked.stream()
                    .filter(finding -> rig.waivers().stream().noneMatch(waiver -> waiver.covers(finding)))
                    .toList();
        }
    }

    /**
     * Runs a rig document through the rules.
     *
     * @throws BadInput at the first thing in it that is wrong
     */
    Judged judge(Document document, Terms terms) {
        Rig rig = equip(document, terms);
        Outcome outcome = outcome(rig);
        return new Judged(
                rig, outcome, outcome.findings().stream().sorted(URGENCY).toList());
    }

    /** What a rule session leaves behind of a rig. */
    Outcome outcome(Rig rig) {
        return added == null ? RuleSession.run(rules.get(), book.get().ids(), rig) : added.run(rules.get(), rig);
    }

    /** The pages of the rules that this checker goes by. */
    public RuleBook book() {
        return book.get();
    }

    /**
     * What each fix would bring, by its edits. Several findings often share a fix, so each is tried once; and trying is most
     * of the work of a check, so all cores take part.
     */
    private Map<List<Edit>, List<String>> sideEffects(Document document, Terms terms, List<Finding> findings) {
        Set<String> before = findings.stream().map(Checker::subject).collect(Collectors.toSet());
        return findings.stream()
                .flatMap(finding -> finding.fixes().stream())
                .map(Fix::edits)
                .filter(edits -> !edits.isEmpty())
                .distinct()
                .toList()
                .parallelStream()
                .collect(Collectors.toConcurrentMap(
                        edits -> edits, edits -> sideEffects(document, terms, edits, before)));
    }

    /** Each caution once, with every reason in the order of its words. */
    private List<Assessment.Caution> cautions(Document document, Set<Caution> found) {
        return book.get().pages().stream()
                .map(page -> new Assessment.Caution(
                        page.id(),
                        page.title(),
                        found.stream()
                                .filter(caution -> caution.rule().equals(page.id()))
                                .map(caution -> new Assessment.Reason(
                                        Wording.of(page.because(), caution),
                                        caution.unit(),
                                        caution.scene(),
                                        caution.path(),
                                        document.placeOf(caution.path())))
                                .sorted(Comparator.comparing(Assessment.Reason::words)
                                        .thenComparing(Assessment.Reason::path))
                                .toList()))
                .filter(caution -> !caution.reasons().isEmpty())
                .toList();
    }

    /** What a finding is about: the same rule on the same units is no new finding, whatever its numbers. */
    static String subject(Finding finding) {
        return finding.rule() + finding.units() + finding.clips();
    }

    private Assessment.Entry entry(Document document, Finding finding, Map<List<Edit>, List<String>> sideEffects) {
        RulePage page = book.get().page(finding.rule());
        List<Assessment.Remedy> remedies = new ArrayList<>();
        for (Fix fix : finding.fixes()) {
            remedies.add(new Assessment.Remedy(
                    changes(document, fix), effect(finding, fix), sideEffects.getOrDefault(fix.edits(), List.of())));
        }
        return new Assessment.Entry(
                finding.rule(),
                finding.severity(),
                finding.magnitude(),
                finding.units(),
                finding.clips(),
                Wording.of(page.title(), finding),
                Wording.of(page.because(), finding),
                finding.values(),
                remedies,
                finding.path(),
                document.placeOf(finding.path()),
                page.sources());
    }

    /** What a fix does, in the words of the rule's page. */
    String effect(Finding finding, Fix fix) {
        String template = Optional.ofNullable(
                        book.get().page(finding.rule()).fixes().get(fix.key()))
                .orElseThrow(() -> new IllegalStateException(
                        finding.rule() + ": its page has no sentence for the fix " + fix.key()));
        return Wording.of(template, finding, fix);
    }

    /** The edits of a fix beside what the document says now. */
    static List<Assessment.Change> changes(Document document, Fix fix) {
        return changes(document, fix.edits());
    }

    /** Edits beside what the document says now. */
    static List<Assessment.Change> changes(Document document, List<Edit> edits) {
        return edits.stream()
                .map(edit -> new Assessment.Change(edit.path(), written(document, edit.path()), edit.to()))
                .toList();
    }

    /** What does not match, in the words of the rule's page. */
    String title(Finding finding) {
        return Wording.of(book.get().page(finding.rule()).title(), finding);
    }

    /** Why, in numbers, in the words of the rule's page. */
    String because(Finding finding) {
        return Wording.of(book.get().page(finding.rule()).because(), finding);
    }

    private static @Nullable String written(Document document, String path) {
        return document.at(path).map(node -> written(document, node)).orElse(null);
    }

    /** What the file says, in one line where its lines hold nothing but single values. */
    private static String written(Document document, Node node) {
        if (node instanceof Node.Scalar scalar) {
            return scalar.text();
        }
        if (node instanceof Node.Items items
                && !items.flow()
                && items.items().stream().allMatch(Node.Scalar.class::isInstance)) {
            return items.items().stream()
                    .map(item -> ((Node.Scalar) item).text())
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        return Edits.slice(document, node.place()).strip();
    }

    /** The findings that edits would newly give: the rig is assessed once more with the edits made. */
    private List<String> sideEffects(Document document, Terms terms, List<Edit> edits, Set<String> before) {
        Set<Finding> after;
        try {
            Document edited = YamlReader.read(document.file(), Edits.apply(document, edits));
            after = outcome(equip(edited, terms)).findings();
        } catch (BadInput e) {
            return List.of("the rig file can then not be read: " + e.problem());
        }
        return after.stream()
                .filter(finding -> !before.contains(subject(finding)))
                .sorted(URGENCY)
                .map(this::named)
                .distinct()
                .toList();
    }

    /** A finding in one line. */
    String named(Finding finding) {
        return title(finding) + " (" + finding.rule() + ", " + finding.severity() + ")";
    }
}
