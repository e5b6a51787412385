package akin.model.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What one rule has to say about one unit or pairing: typed evidence, the place of the setting that caused it, and
 * fixes. Sentences are rendered from it with the templates of the rule's page; nothing ever parses text.
 *
 * @param rule id of the rule, such as {@code motion/blur-differs}
 * @param severity when it can still be put right
 * @param magnitude how many tolerances the mismatch is away; 1 where the rule has no tolerance; finite, not negative
 * @param units names of the units concerned; of a pairing the hero first
 * @param clips names of the shot clips concerned; empty when it is about the plan alone
 * @param path dotted path of the setting that caused it
 * @param values the evidence
 * @param remedies ways to put it right, best first, worked out when first asked for
 */
public record Finding(
        String rule,
        Severity severity,
        double magnitude,
        List<String> units,
        List<String> clips,
        String path,
        List<Value> values,
        Fixes remedies) {

    /** Copies the lists and checks the magnitude. */
    public Finding {
        units = List.copyOf(units);
        clips = List.copyOf(clips);
        values = List.copyOf(values);
        if (units.isEmpty()) {
            throw new IllegalArgumentException(rule + ": a finding concerns at least one unit");
        }
        if (!(magnitude >= 0) || Double.isInfinite(magnitude)) {
            throw new IllegalArgumentException(rule + ": magnitude " + magnitude);
        }
    }

    /** Ways to put it right, best first. */
    public List<Fix> fixes() {
        return remedies.get();
    }

    /** Starts a finding of one rule. */
    public static Draft of(String rule, Severity severity) {
        return new Draft(rule, severity);
    }

    /** A finding being put together, so that a rule's consequence reads in the order one would tell it. */
    public static final class Draft {
        private final String rule;
        private final Severity severity;
        private double magnitude = 1;
        private List<String> units = List.of();
        private List<String> clips = List.of();
        private String path = "";
        private final List<Value> values = new ArrayList<>();
        private final List<Supplier<List<Fix>>> fixes = new ArrayList<>();

        private Draft(String rule, Severity severity) {
            this.rule = rule;
            this.severity = severity;
        }

        /** The units concerned; of a pairing the hero first. */
        public Draft units(String... names) {
            units = List.of(names);
            return this;
        }

        /** The shot clips concerned. */
        public Draft clips(String... names) {
            return clips(List.of(names));
        }

        /** The shot clips concerned. */
        public Draft clips(List<String> names) {
            clips = names;
            return this;
        }

        /** Dotted path of the setting that caused it. */
        public Draft at(String settingPath) {
            path = settingPath;
            return this;
        }

        /** How far the mismatch is, in tolerances: {@code |mismatch| / tolerance}. */
        public Draft magnitude(double mismatch, double tolerance) {
            magnitude = Math.abs(mismatch) / tolerance;
            return this;
        }

        /** A number with its physical unit, of one unit (camera) or of the comparison (null). */
        public Draft value(String name, @Nullable String unitOf, double value, String unit) {
            values.add(new Value.Quantity(name, unitOf, value, unit));
            return this;
        }

        /** A word: a setting as its menu writes it, the name of an encoding. */
        public Draft value(String name, @Nullable String unitOf, Object word) {
            values.add(new Value.Word(name, unitOf, word.toString()));
            return this;
        }

        /** More evidence, in this order. */
        public Draft values(List<? extends Value> more) {
            values.addAll(more);
            return this;
        }

        /** One more way to put it right, after those already given. */
        public Draft fix(Fix fix) {
            fixes.add(() -> List.of(fix));
            return this;
        }

        /** More ways to put it right, in this order, worked out when they are first asked for. */
        public Draft fixes(Supplier<List<Fix>> more) {
            fixes.add(more);
            return this;
        }

        /** The finished finding. */
        public Finding build() {
            return new Finding(rule, severity, magnitude, units, clips, path, values, new Fixes(fixes));
        }
    }
}
