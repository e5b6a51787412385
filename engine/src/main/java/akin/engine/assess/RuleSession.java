package akin.engine.assess;

import akin.model.derived.Derived;
import akin.model.finding.Caution;
import akin.model.finding.Finding;
import akin.model.finding.Missing;
import akin.model.finding.RuleIds;
import akin.model.finding.Target;
import akin.model.rig.Rig;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/** Runs one rig through the rules. Facts are immutable and only ever added, so one pass settles everything. */
final class RuleSession {

    /** Far more firings than any rig needs; reaching it means that a rule loops. */
    private static final int MOST_FIRINGS = 200_000;

    /** A rule loops. */
    static final class Unrest extends IllegalStateException {
        private static final long serialVersionUID = 1L;

        private Unrest() {
            super("the rules do not come to rest");
        }
    }

    private RuleSession() {}

    static Outcome run(KieBase rules, RuleIds ids, Rig rig) {
        return run(rules::newKieSession, ids, rig);
    }

    /** As above, in a session from anywhere; it is given back by disposing of it. */
    static Outcome run(Supplier<KieSession> sessions, RuleIds ids, Rig rig) {
        KieSession session = sessions.get();
        try {
            session.insert(rig);
            session.insert(rig.production());
            session.insert(rig.match());
            session.insert(rig.kit());
            rig.scenes().forEach(session::insert);
            rig.units().forEach(session::insert);
            rig.pairings().forEach(session::insert);
            rig.footage().forEach(session::insert);
            fire(session);
            // Waivers come last, when every finding that they may be for is there.
            session.insert(ids);
            rig.waivers().forEach(session::insert);
            fire(session);
            return collect(session);
        } finally {
            session.dispose();
        }
    }

    private static void fire(KieSession session) {
        // One pass may go a little over.
        if (session.fireAllRules(MOST_FIRINGS) >= MOST_FIRINGS) {
            throw new Unrest();
        }
    }

    private static Outcome collect(KieSession session) {
        Set<Finding> findings = new LinkedHashSet<>();
        Set<Missing> missing = new LinkedHashSet<>();
        Map<String, Set<String>> known = new HashMap<>();
        List<Target> targets = new ArrayList<>();
        Set<Caution> cautions = new LinkedHashSet<>();
        for (Object fact : session.getObjects()) {
            if (fact instanceof Finding finding) {
                findings.add(finding);
            } else if (fact instanceof Missing gap) {
                missing.add(gap);
            } else if (fact instanceof Target target) {
                targets.add(target);
            } else if (fact instanceof Caution caution) {
                cautions.add(caution);
            } else if (fact instanceof Derived derived) {
                known.computeIfAbsent(Coverage.subject(derived), subject -> new HashSet<>())
                        .add(Derived.nameOf(fact.getClass()));
            }
        }
        return new Outcome(findings, missing, known, targets, cautions, Map.of());
    }
}
