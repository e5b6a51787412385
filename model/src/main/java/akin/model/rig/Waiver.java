package akin.model.rig;

import akin.model.finding.Finding;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An agreement that a finding stays as it is.
 *
 * @param index its place in the rig file, from 0
 * @param rule id of the rule
 * @param units names of the units it is for; empty: whichever the rule finds
 * @param because why it is agreed; never blank
 * @param until last day on which it holds; null: for the whole production
 * @param expired true when that day is past
 */
public record Waiver(
        int index,
        String rule,
        List<String> units,
        String because,
        @Nullable LocalDate until,
        boolean expired) {

    /** Copies the list; a waiver without a reason is an error. */
    public Waiver {
        units = List.copyOf(units);
        if (because.isBlank()) {
            throw new IllegalArgumentException("a waiver needs a reason");
        }
    }

    /** The dotted path of one of its keys. */
    public String path(String key) {
        return "waivers." + index + "." + key;
    }

    /** True when it is for a rule about shot clips. */
    boolean ofFootage() {
        return rule.startsWith("footage/");
    }

    /** True when it is for a rule about what was read of test shots. */
    boolean ofProof() {
        return rule.startsWith("proof/");
    }

    /** True when it is for this finding, whatever the day. */
    public boolean isFor(Finding finding) {
        return rule.equals(finding.rule()) && finding.units().containsAll(units);
    }

    /** True when this finding is waived: it is for it, and it has not expired. */
    public boolean covers(Finding finding) {
        return !expired && isFor(finding);
    }
}
