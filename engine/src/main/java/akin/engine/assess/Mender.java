package akin.engine.assess;

import akin.engine.edit.Edits;
import akin.engine.equip.Terms;
import akin.engine.read.BadInput;
import akin.engine.read.Document;
import akin.engine.read.Say;
import akin.engine.read.YamlReader;
import akin.model.finding.Finding;
import akin.model.finding.Fix;
import akin.model.finding.Severity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Makes the fixes that are safe, one after the other, until none is left.
 *
 * <p>A fix is safe when the rig, assessed once more with it made, no longer has its finding, has nothing new that is as
 * urgent or more, checks the rule on the same units as before, and has back no finding that an earlier fix removed. So
 * where two fixes want the same setting otherwise, the more urgent finding's stays. After each fix everything is ranked
 * anew. Waived findings are agreed to stay, and do.
 */
public final class Mender {

    /** Each fix removes a finding for good, so this is never reached; it bounds the damage of a mistake in a rule. */
    private static final int MOST_FIXES = 1_000;

    private final Checker checker;
    private final Terms terms;

    /** A mender that judges as this checker does. */
    public Mender(Checker checker, Terms terms) {
        this.checker = checker;
        this.terms = terms;
    }

    /**
     * Which fixes may be made.
     *
     * @param rules ids of the rules whose findings may be mended; empty: all
     * @param units names of the units whose settings may be changed; empty: all, and what belongs to no unit
     */
    public record Choosing(Set<String> rules, Set<String> units) {

        /** Copies the sets, in order. */
        public Choosing {
            rules = java.util.Collections.unmodifiableSet(new TreeSet<>(rules));
            units = java.util.Collections.unmodifiableSet(new TreeSet<>(units));
        }

        private boolean changes(Fix fix) {
            return units.isEmpty()
                    || fix.edits().stream()
                            .allMatch(edit ->
                                    units.stream().anyMatch(unit -> edit.path().startsWith("units." + unit + ".")));
        }
    }

    /**
     * Makes every fix that is chosen and safe.
     *
     * @throws BadInput at the first thing in the document that is wrong, or when no rule or unit has a chosen name
     */
    public Mending mend(Document document, Choosing chosen) {
        Checker.Judged judged = checker.judge(document, terms);
        requireKnown("--rule", "rule", chosen.rules(), checker.book().ids().ids());
        requireKnown(
                "--unit",
                "unit",
                chosen.units(),
                judged.rig().units().stream().map(unit -> unit.name()).toList());
        Run run = new Run(document, judged, chosen);
        for (int round = 0; run.makeOne(); round++) {
            if (round == MOST_FIXES) {
                throw new IllegalStateException("the fixes do not come to rest: " + run.done);
            }
        }
        return new Mending(run.now.text(), run.done, run.left);
    }

    private static void requireKnown(String option, String what, Set<String> names, Collection<String> known) {
        for (String name : names) {
            if (!known.contains(name)) {
                List<String> words = known.stream().sorted().toList();
                throw new BadInput(
                        option,
                        "no " + what + " is called " + Say.quote(name) + "." + Say.nearest(name, words) + " Allowed: "
                                + Say.list(words));
            }
        }
    }

    /** One document on its way. */
    private final class Run {
        private final Choosing chosen;
        private final List<Mending.Step> done = new ArrayList<>();
        private final List<Mending.Left> left = new ArrayList<>();

        /** Of what an earlier fix removed: how much of it there may still be. */
        private final Map<String, Integer> mended = new HashMap<>();

        private Document now;
        private Checker.Judged judged;

        private Run(Document document, Checker.Judged judged, Choosing chosen) {
            this.now = document;
            this.judged = judged;
            this.chosen = chosen;
        }

        /** Makes the first fix that is safe; where none is, says of every finding why it stays. */
        private boolean makeOne() {
            left.clear();
            for (Finding finding : judged.open()) {
                List<String> why = new ArrayList<>();
                if (!chosen.rules().isEmpty() && !chosen.rules().contains(finding.rule())) {
                    why.add("Not chosen.");
                } else if (madeOneOf(finding, why)) {
                    return true;
                }
                left.add(new Mending.Left(
                        finding.rule(),
                        finding.severity(),
                        checker.title(finding),
                        finding.path(),
                        now.placeOf(finding.path()),
                        List.copyOf(why)));
            }
            return false;
        }

        private boolean madeOneOf(Finding finding, List<String> why) {
            if (finding.fixes().isEmpty()) {
                why.add("Nothing is known that mends it.");
            }
            for (Fix fix : finding.fixes()) {
                String effect = checker.effect(finding, fix);
                if (fix.edits().isEmpty()) {
                    why.add("By hand: " + effect);
                } else if (writesFacts(fix) && !chosen.rules().contains(finding.rule())) {
                    why.add("Only when its rule is named (--rule " + finding.rule()
                            + "), since it changes what is on the van or in the scene: " + effect);
                } else if (!chosen.changes(fix)) {
                    why.add("Not chosen, since it changes more than " + String.join(", ", chosen.units()) + ": "
                            + effect);
                } else {
                    Optional<String> objection = made(finding, fix);
                    if (objection.isEmpty()) {
                        return true;
                    }
                    why.add("Not safe: " + effect + " " + objection.get());
                }
            }
            return false;
        }

        /** True when a fix writes down what the crew has or shoots, which a file makes true as little as a finding goes by it. */
        private static boolean writesFacts(Fix fix) {
            return fix.edits().stream()
                    .anyMatch(edit ->
                            edit.path().startsWith("kit.") || edit.path().startsWith("scenes."));
        }

        /** Makes a fix if it is safe; otherwise says why not. */
        private Optional<String> made(Finding finding, Fix fix) {
            Document edited;
            Checker.Judged after;
            try {
                edited = YamlReader.read(now.file(), Edits.apply(now, fix.edits()));
                after = checker.judge(edited, terms);
            } catch (BadInput e) {
                return Optional.of("The rig file could then not be read: " + e.problem());
            }
            Optional<String> objection = objection(finding, after);
            if (objection.isEmpty()) {
                String subject = Checker.subject(finding);
                mended.put(subject, count(after, subject));
                done.add(new Mending.Step(
                        finding.rule(),
                        finding.severity(),
                        checker.title(finding),
                        checker.effect(finding, fix),
                        Checker.changes(now, fix)));
                now = edited;
                judged = after;
            }
            return objection;
        }

        private Optional<String> objection(Finding finding, Checker.Judged after) {
            String subject = Checker.subject(finding);
            if (count(after, subject) >= count(judged, subject)) {
                return Optional.of("The finding would still be there.");
            }
            Set<Unchecked> gaps = new java.util.LinkedHashSet<>(unchecked(after));
            gaps.removeAll(unchecked(judged));
            for (Unchecked gap : gaps) {
                if (gap.rule().equals(finding.rule()) && finding.units().contains(gap.unit())) {
                    return Optional.of("It would only go unchecked: " + gap.missing() + " would not be known.");
                }
            }
            Map<String, EnumSet<Severity>> before = new HashMap<>();
            judged.open()
                    .forEach(f -> before.computeIfAbsent(Checker.subject(f), s -> EnumSet.noneOf(Severity.class))
                            .add(f.severity()));
            for (Finding other : after.open()) {
                String about = Checker.subject(other);
                if (count(after, about) > mended.getOrDefault(about, Integer.MAX_VALUE)) {
                    return Optional.of("It would bring back what was mended: " + checker.named(other) + ".");
                }
                EnumSet<Severity> known = before.getOrDefault(about, EnumSet.noneOf(Severity.class));
                boolean fresh = known.stream().allMatch(severity -> severity.compareTo(other.severity()) > 0);
                if (fresh && other.severity().compareTo(finding.severity()) <= 0) {
                    return Optional.of("That would bring: " + checker.named(other) + ".");
                }
            }
            return Optional.empty();
        }

        private List<Unchecked> unchecked(Checker.Judged of) {
            return Coverage.of(checker.book(), of.rig(), of.outcome()).unchecked();
        }

        private static int count(Checker.Judged in, String subject) {
            return (int) in.open().stream()
                    .filter(finding -> Checker.subject(finding).equals(subject))
                    .count();
        }
    }
}
