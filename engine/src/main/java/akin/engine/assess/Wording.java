package akin.engine.assess;

import akin.model.finding.Caution;
import akin.model.finding.Finding;
import akin.model.finding.Fix;
import akin.model.finding.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Fills the sentence templates of a rule's page from a finding's values.
 *
 * <p>{@code {unit}} and {@code {hero}} are names of units. {@code {x}} is the value called x of the comparison,
 * {@code {x:unit}} and {@code {x:hero}} that of one unit. Of a caution there are {@code {where}}, its unit or scene, and
 * {@code {what}}.
 */
final class Wording {

    private static final Pattern SLOT = Pattern.compile("\\{([a-z0-9-]+)(?::(unit|hero))?}");

    private Wording() {}

    static String of(String template, Finding finding) {
        return fill(template, finding, finding.values());
    }

    static String of(String template, Finding finding, Fix fix) {
        List<Value> values = new ArrayList<>(fix.values());
        values.addAll(finding.values());
        return fill(template, finding, values);
    }

    static String of(String template, Caution caution) {
        return fill(
                template,
                caution.rule(),
                List.of(caution.where()),
                List.of(new Value.Word("where", null, caution.where()), new Value.Word("what", null, caution.what())));
    }

    private static String fill(String template, Finding finding, List<Value> values) {
        return fill(template, finding.rule(), finding.units(), values);
    }

    private static String fill(String template, String rule, List<String> units, List<Value> values) {
        String hero = units.get(0);
        String unit = units.get(units.size() - 1);
        Matcher slots = SLOT.matcher(template);
        StringBuilder out = new StringBuilder();
        while (slots.find()) {
            String name = slots.group(1);
            String of = slots.group(2);
            String text;
            if (of == null && name.equals("unit")) {
                text = unit;
            } else if (of == null && name.equals("hero")) {
                text = hero;
            } else {
                text = value(rule, name, of == null ? null : of.equals("unit") ? unit : hero, values);
            }
            slots.appendReplacement(out, Matcher.quoteReplacement(text));
        }
        return slots.appendTail(out).toString();
    }

    private static String value(String rule, String name, @Nullable String unitOf, List<Value> values) {
        for (Value value : values) {
            if (value.name().equals(name) && java.util.Objects.equals(value.unitOf(), unitOf)) {
                return value instanceof Value.Quantity q
                        ? Numbers.spoken(q.value(), q.unit())
                        : ((Value.Word) value).text();
            }
        }
        throw new IllegalStateException(rule + ": its page quotes {" + name + "}, which the finding does not have");
    }
}
