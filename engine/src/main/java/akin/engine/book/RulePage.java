package akin.engine.book;

import akin.model.finding.Severity;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a rule's page says about it, in its front matter.
 *
 * @param id such as {@code motion/blur-differs}
 * @param title sentence template: what does not match
 * @param because sentence template: why, in numbers
 * @param severities the severities it can give
 * @param scope what one check of it looks at
 * @param needs names of the derived facts it needs of each unit it looks at
 * @param fixes sentence template of each fix, by key
 * @param sources where the rule and its numbers come from
 */
public record RulePage(
        String id,
        String title,
        String because,
        List<Severity> severities,
        Scope scope,
        List<String> needs,
        Map<String, String> fixes,
        List<String> sources) {

    /** What one check of a rule looks at. */
    public enum Scope {
        /** Each unit by itself. */
        UNIT,
        /** The hero with each other unit. */
        PAIRING,
        /** Each shot clip. */
        CLIP,
        /** What the rig file itself says; not counted as a check of the gear. */
        RIG;

        /** The word used on pages. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * The scope of a word.
         *
         * @throws IllegalArgumentException when there is none
         */
        public static Scope of(String word) {
            for (Scope scope : values()) {
                if (scope.word().equals(word)) {
                    return scope;
                }
            }
            throw new IllegalArgumentException("no scope is called " + word + "; allowed: unit, pairing, clip, rig");
        }
    }

    /** The part of the id before the slash. */
    public String topic() {
        return id.substring(0, id.indexOf('/'));
    }
}
