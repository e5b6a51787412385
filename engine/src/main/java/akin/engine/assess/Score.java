package akin.engine.assess;

import akin.engine.book.RuleBook;
import akin.model.finding.Finding;
import akin.model.finding.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * How good a plan is, by what the rules find in it: fewest findings of the most urgent severity, then the least of them in
 * tolerances, then the same of each severity below. A check that could not run counts with the most urgent that its rule can
 * find, so that nothing is won by not knowing. Smaller is better.
 *
 * @param counts of each severity, the most urgent first: findings and checks that could not run
 * @param magnitudes of each severity, the most urgent first: all tolerances together, in millionths
 */
record Score(List<Integer> counts, List<Long> magnitudes) implements Comparable<Score> {

    private static final double MILLION = 1e6;

    static Score of(RuleBook book, List<Finding> findings, List<Unchecked> gaps) {
        List<Integer> counts = new ArrayList<>();
        List<Long> magnitudes = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            List<Finding> of = findings.stream()
                    .filter(finding -> finding.severity() == severity)
                    .toList();
            long unchecked = gaps.stream()
                    .map(Unchecked::rule)
                    .distinct()
                    .filter(rule -> worst(book, rule) == severity)
                    .count();
            counts.add(Math.toIntExact(of.size() + unchecked));
            // Whole numbers: sums of others hang on their order.
            magnitudes.add(of.stream()
                    .mapToLong(finding -> Math.round(Math.min(finding.magnitude(), MILLION) * MILLION))
                    .sum());
        }
        return new Score(List.copyOf(counts), List.copyOf(magnitudes));
    }

    /** True when nothing is found and every check ran: no plan is better. */
    boolean flawless() {
        return counts.stream().allMatch(count -> count == 0);
    }

    private static Severity worst(RuleBook book, String rule) {
        return book.page(rule).severities().stream().sorted().findFirst().orElse(Severity.ADVICE);
    }

    @Override
    public int compareTo(Score other) {
        for (int i = 0; i < counts.size(); i++) {
            int order = Integer.compare(counts.get(i), other.counts.get(i));
            if (order == 0) {
                order = Long.compare(magnitudes.get(i), other.magnitudes.get(i));
            }
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
