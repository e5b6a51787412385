package akin.engine.book;

import akin.model.finding.RuleIds;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every rule's page, in the order of the book: by topic, then by id. */
public final class RuleBook {

    /** The topics in the order in which reports list findings that are otherwise equally urgent. */
    public static final List<String> TOPICS = List.of(
            "cadence",
            "motion",
            "flicker",
            "view",
            "focus",
            "exposure",
            "white",
            "tone",
            "colour",
            "lut",
            "frame",
            "record",
            "link",
            "sync",
            "kit",
            "footage",
            "proof",
            "caution",
            "waiver");

    /** Topics that are about what was shot. */
    private static final List<String> SHOT = List.of("footage", "proof");

    private final Map<String, RulePage> pages;
    private final RuleIds ids;

    /** A book of these pages, in the order of topics. */
    public RuleBook(List<RulePage> unsorted) {
        Map<String, RulePage> sorted = new LinkedHashMap<>();
        unsorted.stream()
                .sorted(java.util.Comparator.<RulePage>comparingInt(page -> topicOrder(page.id()))
                        .thenComparing(RulePage::id))
                .forEach(page -> sorted.put(page.id(), page));
        pages = Collections.unmodifiableMap(sorted);
        ids = new RuleIds(sorted.keySet());
    }

    /** The ids of the rules there are. */
    public RuleIds ids() {
        return ids;
    }

    /** The part of the book that is about one topic. */
    public RuleBook of(String topic) {
        return new RuleBook(pages.values().stream()
                .filter(page -> page.topic().equals(topic))
                .toList());
    }

    /** Every page, in order. */
    public List<RulePage> pages() {
        return List.copyOf(pages.values());
    }

    /**
     * The page of a rule.
     *
     * @throws IllegalStateException when there is none: the build allows no rule without a page
     */
    public RulePage page(String rule) {
        RulePage page = pages.get(rule);
        if (page == null) {
            throw new IllegalStateException("the rule " + rule + " has no page");
        }
        return page;
    }

    /** True of a rule about the plan; false of one about what was shot. */
    public static boolean ofThePlan(RulePage page) {
        return !SHOT.contains(page.topic());
    }

    /** The place of a rule's topic in the book. */
    public static int topicOrder(String rule) {
        int order = TOPICS.indexOf(rule.substring(0, Math.max(0, rule.indexOf('/'))));
        return order < 0 ? TOPICS.size() : order;
    }
}
