package akin.engine.assess;

import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.model.derived.ClipFact;
import akin.model.derived.Derived;
import akin.model.finding.Missing;
import akin.model.finding.WhereFound;
import akin.model.footage.Clip;
import akin.model.rig.Pairing;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which checks ran and which could not. A rule checks each unit, or each pairing, for which all the facts that it needs
 * were derived. Where one of them is missing it is unchecked; where one neither exists nor is missing (the link of a
 * unit that records inside) there is nothing to check.
 *
 * @param ran the checks that ran, in the order of the book
 * @param unchecked what could not be checked, each rule once per unit and missing fact, in the order of the book
 */
record Coverage(List<Checked.Check> ran, List<Unchecked> unchecked) {

    static Coverage of(RuleBook book, Rig rig, Outcome outcome) {
        List<Checked.Check> ran = new ArrayList<>();
        Set<Unchecked> lines = new LinkedHashSet<>();
        Map<List<String>, List<Missing>> missing = missing(outcome);
        Map<RulePage.Scope, List<Subject>> subjects = new EnumMap<>(RulePage.Scope.class);
        for (RulePage page : book.pages()) {
            String failure = outcome.failed().get(page.id());
            if (failure != null) {
                // It ran nowhere, whatever it looks at.
                lines.add(new Unchecked(
                        page.id(), rig.match().hero(), "rules." + page.id() + ": " + failure, WhereFound.RULE));
                continue;
            }
            for (Subject subject : subjects.computeIfAbsent(page.scope(), scope -> subjects(scope, rig))) {
                List<Unchecked> gaps = new ArrayList<>();
                boolean applies = true;
                for (String unit : subject.units()) {
                    String key = subject.key(unit);
                    for (String need : page.needs()) {
                        List<Missing> inputs = missing.getOrDefault(List.of(key, need), List.of());
                        inputs.forEach(m -> gaps.add(new Unchecked(page.id(), unit, m.path(), m.where())));
                        applies &= !inputs.isEmpty()
                                || outcome.known().getOrDefault(key, Set.of()).contains(need);
                    }
                }
                if (applies && gaps.isEmpty()) {
                    ran.add(new Checked.Check(page.id(), subject.units()));
                } else if (applies) {
                    lines.addAll(gaps);
                }
            }
        }
        return new Coverage(List.copyOf(ran), List.copyOf(lines));
    }

    /**
     * What a check looks at.
     *
     * @param units names of units
     * @param clip name of a clip of the one unit; null when it looks at no clip
     */
    private record Subject(List<String> units, @Nullable String clip) {

        String key(String unit) {
            return subject(unit, clip);
        }
    }

    /** What a derived fact is of: its unit, or one clip of it. */
    static String subject(Derived fact) {
        return subject(fact.unitName(), fact instanceof ClipFact shot ? shot.clip() : null);
    }

    private static String subject(String unit, @Nullable String clip) {
        // No name of a unit has a slash in it.
        return clip == null ? unit : unit + "/" + clip;
    }

    /** What is missing, by unit or clip and fact, in the order of paths. */
    private static Map<List<String>, List<Missing>> missing(Outcome outcome) {
        Map<List<String>, List<Missing>> missing = new HashMap<>();
        outcome.missing().stream()
                .sorted(Comparator.comparing(Missing::path))
                .forEach(m -> missing.computeIfAbsent(
                                List.of(subject(m.unit(), m.clip()), m.fact()), key -> new ArrayList<>())
                        .add(m));
        return missing;
    }

    private static List<Subject> subjects(RulePage.Scope scope, Rig rig) {
        return switch (scope) {
            case RIG -> List.of();
            case UNIT ->
                rig.units().stream()
                        .map((Unit unit) -> new Subject(List.of(unit.name()), null))
                        .toList();
            case PAIRING ->
                rig.pairings().stream()
                        .map((Pairing p) -> new Subject(List.of(p.hero(), p.other()), null))
                        .toList();
            case CLIP ->
                rig.footage().stream()
                        .map((Clip clip) -> new Subject(List.of(clip.unitName()), clip.name()))
                        .toList();
        };
    }
}
