package akin.engine.assess;

import akin.engine.book.PackClasses;
import akin.engine.book.Pages;
import akin.engine.book.RuleBook;
import akin.engine.book.RulePack;
import akin.engine.book.RulePage;
import akin.engine.read.BadInput;
import akin.engine.read.Binder;
import akin.engine.read.Say;
import akin.model.rig.Rig;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.drools.kiesession.rulebase.InternalKnowledgeBase;
import org.drools.model.Model;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/**
 * The rules of packs, beside Akin's own. They are program code that the person who runs Akin trusts; but a mistake in one of
 * them is that rule's failure alone. What it breaks off is run again without it, so that all others still say what they find.
 */
public final class AddedRules {

    private static final Pattern ID = Pattern.compile("[a-z]+/[a-z0-9-]+");

    /** How much of a digest is enough to tell packs apart by eye. */
    private static final int SHORT = 12;

    /**
     * A pack with its compiled classes.
     *
     * @param pack what was read
     * @param classes what was compiled from it
     */
    public record Compiled(RulePack pack, PackClasses classes) {}

    /**
     * A rule of a pack.
     *
     * @param pack the pack
     * @param packageName its package
     * @param name its whole name: an id, behind a colon what sets it apart from others of that id; or any words, of a rule
     *     that only derives facts
     */
    private record Added(RulePack pack, String packageName, String name) {

        /** The id of its page; itself where it has none. */
        String id() {
            int colon = name.indexOf(':');
            return name.contains("/") && colon >= 0 ? name.substring(0, colon) : name;
        }

        boolean finds() {
            return name.contains("/");
        }
    }

    private final List<Compiled> packs;
    private final Map<String, Added> rules = new LinkedHashMap<>();
    private final Map<String, String> pageTexts = new TreeMap<>();
    private final RuleBook book;

    /**
     * Joins packs to the rules that come with Akin.
     *
     * @param builtIn the pages that come with Akin
     * @throws BadInput when a pack uses an id that is there already, a page has no rule, a rule no page
     */
    public AddedRules(List<Compiled> packs, RuleBook builtIn, Binder binder) {
        this.packs = List.copyOf(packs);
        Map<String, RulePage> pages = new LinkedHashMap<>();
        builtIn.pages().forEach(page -> pages.put(page.id(), page));
        for (Compiled compiled : packs) {
            Map<String, RulePage> own = pages(compiled.pack(), binder);
            for (Model model : compiled.classes().models()) {
                model.getRules().forEach(rule -> add(new Added(compiled.pack(), rule.getPackage(), rule.getName())));
            }
            own.forEach((id, page) -> {
                if (pages.putIfAbsent(id, page) != null) {
                    throw new BadInput(
                            compiled.pack().called(pathOf(compiled.pack(), id, binder)),
                            "a rule of the id " + id
                                    + " is there already; rules are added, never replaced, so choose another id");
                }
            });
            requirePagesAndRules(compiled.pack(), own.keySet(), binder);
        }
        book = new RuleBook(List.copyOf(pages.values()));
    }

    private void add(Added rule) {
        Added before = rules.putIfAbsent(rule.name(), rule);
        if (before != null) {
            throw new BadInput(
                    rule.pack().name(),
                    "a rule is called " + Say.quote(rule.name()) + " here and in "
                            + before.pack().name() + "; its name must be its alone");
        }
    }

    private Map<String, RulePage> pages(RulePack pack, Binder binder) {
        Map<String, RulePage> pages = new LinkedHashMap<>();
        pack.pages().forEach((path, text) -> {
            RulePage page = Pages.front(pack.called(path), text, binder);
            if (!ID.matcher(page.id()).matches()) {
                throw new BadInput(
                        pack.called(path),
                        "read id " + Say.quote(page.id())
                                + "; an id is topic/what-is-wrong, in small letters and hyphens");
            }
            if (pages.put(page.id(), page) != null) {
                throw new BadInput(pack.called(path), "another page of this folder has the id " + page.id());
            }
            pageTexts.putIfAbsent(page.id(), text);
        });
        return pages;
    }

    private static String pathOf(RulePack pack, String id, Binder binder) {
        return pack.pages().entrySet().stream()
                .filter(page ->
                        Pages.front(page.getKey(), page.getValue(), binder).id().equals(id))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
    }

    private void requirePagesAndRules(RulePack pack, Collection<String> pages, Binder binder) {
        Set<String> found = new TreeSet<>();
        for (Added rule : rules.values()) {
            if (rule.pack().equals(pack) && rule.finds()) {
                found.add(rule.id());
                if (!pages.contains(rule.id())) {
                    throw new BadInput(
                            pack.name(),
                            "the rule " + Say.quote(rule.name()) + " has no page of the id " + rule.id() + "."
                                    + Say.nearest(rule.id(), List.copyOf(pages)));
                }
            }
        }
        for (String page : pages) {
            if (!found.contains(page)) {
                throw new BadInput(
                        pack.called(pathOf(pack, page, binder)),
                        "no rule of this folder is called " + page + "." + Say.nearest(page, List.copyOf(found)));
            }
        }
    }

    /** The pages of Akin's own rules and of these. */
    public RuleBook book() {
        return book;
    }

    /** The page of one of these rules as it was written; empty for any other. */
    public Optional<String> page(String id) {
        return Optional.ofNullable(pageTexts.get(id));
    }

    /** The ids of these rules, in order. */
    public List<String> ids() {
        return List.copyOf(pageTexts.keySet());
    }

    /** Akin's own rules and these, ready for sessions. */
    public KieBase base() {
        return RuleBase.with(models());
    }

    private List<Model> models() {
        return packs.stream().flatMap(pack -> pack.classes().models().stream()).toList();
    }

    private KieBase without(Set<String> names) {
        InternalKnowledgeBase base = RuleBase.with(models());
        names.forEach(name -> {
            Added rule = rules.get(name);
            if (rule != null) {
                base.removeRule(rule.packageName(), name);
            }
        });
        return base;
    }

    /** One line for each pack, so that a report says by which rules it was made. */
    List<String> notes() {
        return packs.stream()
                .map(Compiled::pack)
                .map(pack -> "rules of " + pack.name() + " are loaded ("
                        + pack.digest().substring(0, SHORT) + "): "
                        + String.join(
                                ", ",
                                rules.values().stream()
                                        .filter(rule -> rule.pack().equals(pack) && rule.finds())
                                        .map(Added::id)
                                        .distinct()
                                        .sorted()
                                        .toList()))
                .toList();
    }

    /** What all rules leave behind of a rig; of rules that fail, why. */
    Outcome run(KieBase whole, Rig rig) {
        Map<String, String> failed = new TreeMap<>();
        KieBase base = whole;
        while (true) {
            RuleWatch watch = new RuleWatch(rules.keySet(), book);
            KieBase now = base;
            try {
                Outcome outcome = RuleSession.run(() -> watched(now, watch), book.ids(), rig);
                return outcome.failing(byPage(failed));
            } catch (RuntimeException e) {
                String rule = culprit(e, watch);
                if (rule == null || failed.containsKey(rule)) {
                    throw e;
                }
                failed.put(rule, reason(e));
                base = without(failed.keySet());
            }
        }
    }

    private static KieSession watched(KieBase base, RuleWatch watch) {
        KieSession session = base.newKieSession();
        session.addEventListener(watch.firings());
        session.addEventListener(watch.facts());
        return session;
    }

    /** The rule of a pack that broke a run off; null when none of them did. */
    private @Nullable String culprit(RuntimeException thrown, RuleWatch watch) {
        if (watch.running() != null) {
            return watch.running();
        }
        // A condition that throws is named in the message alone.
        Set<Throwable> seen = new HashSet<>();
        for (Throwable cause = thrown; cause != null && seen.add(cause); cause = cause.getCause()) {
            String message = String.valueOf(cause.getMessage());
            Optional<String> named = rules.keySet().stream()
                    .filter(message::contains)
                    .max(java.util.Comparator.comparingInt(String::length));
            if (named.isPresent()) {
                return named.get();
            }
        }
        return thrown instanceof RuleSession.Unrest ? watch.busiest() : null;
    }

    /** The innermost cause: the outer ones only say that a rule was running. */
    private static String reason(RuntimeException thrown) {
        Throwable cause = thrown;
        Set<Throwable> seen = new HashSet<>();
        while (cause.getCause() != null && seen.add(cause)) {
            cause = cause.getCause();
        }
        String message = cause.getMessage();
        String said = cause instanceof RuleWatch.Breach || cause instanceof IllegalStateException
                ? String.valueOf(message)
                : cause.getClass().getSimpleName() + (message == null ? "" : ": " + message);
        return said.lines().findFirst().orElse(said);
    }

    /** Failures by the ids of pages: one that only derives facts takes along all rules of its pack, which may build on it. */
    private Map<String, String> byPage(Map<String, String> failed) {
        Map<String, String> byPage = new HashMap<>();
        failed.forEach((name, reason) -> {
            Added rule = rules.get(name);
            if (rule != null && rule.finds()) {
                byPage.put(rule.id(), reason);
            } else if (rule != null) {
                List<Added> others = new ArrayList<>(rules.values());
                others.removeIf(other -> !other.pack().equals(rule.pack()) || !other.finds());
                others.forEach(other -> byPage.putIfAbsent(other.id(), Say.quote(name) + ": " + reason));
            }
        });
        return byPage;
    }
}
