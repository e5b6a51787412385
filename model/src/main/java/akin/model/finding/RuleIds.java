package akin.model.finding;

import java.util.Set;

/**
 * The rules there are, for those that look at what a rig file says of rules.
 *
 * @param ids their ids
 */
public record RuleIds(Set<String> ids) {

    /** Copies the set. */
    public RuleIds {
        ids = Set.copyOf(ids);
    }

    /** True when there is a rule of this id. */
    public boolean has(String id) {
        return ids.contains(id);
    }
}
