package akin.engine.assess;

import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.model.finding.Missing;
import akin.model.rig.Pairing;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

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
        for (RulePage page : book.pages()) {
            for (List<String> subject : subjects(page, rig)) {
                List<Unchecked> gaps = new ArrayList<>();
                boolean applies = true;
                for (String unit : subject) {
                    for (String need : page.needs()) {
                        List<Missing> missing = missing(outcome, unit, need);
                        missing.forEach(m -> gaps.add(new Unchecked(page.id(), unit, m.path(), m.where())));
                        applies &= !missing.isEmpty()
                                || outcome.known().getOrDefault(unit, Set.of()).contains(need);
                    }
                }
                if (applies && gaps.isEmpty()) {
                    ran.add(new Checked.Check(page.id(), subject));
                } else if (applies) {
                    lines.addAll(gaps);
                }
            }
        }
        return new Coverage(List.copyOf(ran), List.copyOf(lines));
    }

    private static List<Missing> missing(Outcome outcome, String unit, String need) {
        return outcome.missing().stream()
                .filter(m -> m.unit().equals(unit) && m.fact().equals(need))
                .sorted(java.util.Comparator.comparing(Missing::path))
                .toList();
    }

    private static List<List<String>> subjects(RulePage page, Rig rig) {
        return switch (page.scope()) {
            case RIG -> List.of();
            case UNIT -> rig.units().stream().map(Unit::name).map(List::of).toList();
            case PAIRING ->
                rig.pairings().stream()
                        .map((Pairing p) -> List.of(p.hero(), p.other()))
                        .toList();
        };
    }
}
