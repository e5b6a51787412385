package akin.engine.assess;

import akin.engine.book.RuleBook;
import akin.engine.book.RulePage;
import akin.model.finding.Caution;
import akin.model.finding.Finding;
import akin.model.finding.Fix;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.AgendaEventListener;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectDeletedEvent;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.event.rule.ObjectUpdatedEvent;
import org.kie.api.event.rule.RuleRuntimeEventListener;

/**
 * Watches the rules of packs while they run: which one it is, how often, and that it keeps to what any rule may do. It adds
 * facts, never takes or changes any; and what it finds is its own, in words that its page has.
 */
final class RuleWatch {

    /** A rule did what no rule may. */
    static final class Breach extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Breach(String message) {
            super(message);
        }
    }

    /** Far more often than a rig has anything to say; each firing may add a fact, and memory ends before patience does. */
    private static final int MOST_FIRINGS = 20_000;

    private final Set<String> watched;
    private final RuleBook book;
    private final Map<String, Integer> fired = new HashMap<>();
    private @Nullable String running;

    RuleWatch(Set<String> watched, RuleBook book) {
        this.watched = watched;
        this.book = book;
    }

    /** The rule that was running when all stopped; null when it is none of those that are watched. */
    @Nullable
    String running() {
        return running;
    }

    /** The rule that ran most often; null when none ran. */
    @Nullable
    String busiest() {
        return fired.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(null);
    }

    AgendaEventListener firings() {
        return new DefaultAgendaEventListener() {
            @Override
            public void beforeMatchFired(BeforeMatchFiredEvent event) {
                String name = event.getMatch().getRule().getName();
                running = watched.contains(name) ? name : null;
                if (running != null) {
                    if (fired.merge(name, 1, Integer::sum) > MOST_FIRINGS) {
                        throw new Breach("it does not come to rest: it ran " + MOST_FIRINGS + " times");
                    }
                }
            }

            @Override
            public void afterMatchFired(AfterMatchFiredEvent event) {
                running = null;
            }
        };
    }

    RuleRuntimeEventListener facts() {
        return new DefaultRuleRuntimeEventListener() {
            @Override
            public void objectInserted(ObjectInsertedEvent event) {
                if (running != null) {
                    inserted(running, event.getObject());
                }
            }

            @Override
            public void objectUpdated(ObjectUpdatedEvent event) {
                if (running != null) {
                    throw new Breach("it changes a fact; rules only add some");
                }
            }

            @Override
            public void objectDeleted(ObjectDeletedEvent event) {
                if (running != null) {
                    throw new Breach("it takes a fact away; rules only add some");
                }
            }
        };
    }

    private void inserted(String rule, Object fact) {
        int colon = rule.indexOf(':');
        String id = colon < 0 ? rule : rule.substring(0, colon);
        if (fact instanceof Finding finding) {
            own(id, finding.rule());
            worded(finding);
        } else if (fact instanceof Caution caution) {
            own(id, caution.rule());
        }
    }

    private static void own(String id, String said) {
        if (!id.equals(said)) {
            throw new Breach("it finds in the name of " + said);
        }
    }

    /** Fails unless the page has a sentence for everything in a finding, and the finding a value for every sentence. */
    private void worded(Finding finding) {
        RulePage page = book.page(finding.rule());
        if (!page.severities().contains(finding.severity())) {
            throw new Breach(
                    "its page does not have the severity " + finding.severity().word());
        }
        Wording.of(page.title(), finding);
        Wording.of(page.because(), finding);
        for (Fix fix : finding.fixes()) {
            String sentence = page.fixes().get(fix.key());
            if (sentence == null) {
                throw new Breach("its page has no sentence for the fix " + fix.key());
            }
            Wording.of(sentence, finding, fix);
        }
    }
}
