package akin.engine.report;

import akin.engine.assess.Unchecked;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A fact that is missing, with every check that waits for it.
 *
 * @param fact dotted path of the fact
 * @param where where such a fact is usually found
 * @param waits the checks, as {@code rule of unit}
 */
public record Gap(String fact, String where, List<String> waits) {

    /** Copies the list. */
    public Gap {
        waits = List.copyOf(waits);
    }

    /** The fact, and where it is usually found. */
    String words() {
        return fact + " (" + where + ")";
    }

    /** What is missing, each fact once, in the order in which checks first name them. */
    public static List<Gap> of(List<Unchecked> unchecked) {
        Map<List<String>, List<String>> byFact = new LinkedHashMap<>();
        for (Unchecked line : unchecked) {
            byFact.computeIfAbsent(List.of(line.missing(), line.where().words()), fact -> new ArrayList<>())
                    .add(line.rule() + " of " + line.unit());
        }
        return byFact.entrySet().stream()
                .map(gap -> new Gap(gap.getKey().get(0), gap.getKey().get(1), gap.getValue()))
                .toList();
    }
}
