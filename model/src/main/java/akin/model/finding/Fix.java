package akin.model.finding;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A way to put a finding right. The words come from the rule's page, under {@code fixes}, by key.
 *
 * @param key which of the page's fixes this is, such as {@code set-shutter}
 * @param edits what to change in the rig file; empty for something that people do
 * @param values numbers that the page's sentence quotes, beside those of the finding
 */
public record Fix(String key, List<Edit> edits, List<Value> values) {

    /** Copies the lists. */
    public Fix {
        edits = List.copyOf(edits);
        values = List.copyOf(values);
    }

    /** A fix that sets one setting. */
    public static Fix set(String key, String path, Object to) {
        return new Fix(key, List.of(new Edit(path, to.toString())), List.of());
    }

    /** A fix that takes one key out of the rig file. */
    public static Fix remove(String key, String path) {
        return new Fix(key, List.of(new Edit(path, null)), List.of());
    }

    /** A fix that no edit of the rig file makes: a test to shoot, another lens to hire. */
    public static Fix advise(String key) {
        return new Fix(key, List.of(), List.of());
    }

    /** This fix with one more edit. */
    public Fix and(String path, Object to) {
        List<Edit> more = new ArrayList<>(edits);
        more.add(new Edit(path, to.toString()));
        return new Fix(key, more, values);
    }

    /** This fix with one more key taken out. */
    public Fix without(String path) {
        List<Edit> more = new ArrayList<>(edits);
        more.add(new Edit(path, null));
        return new Fix(key, more, values);
    }

    /** This fix with one more number for its sentence. */
    public Fix with(String name, @Nullable String unitOf, double value, String unit) {
        return with(new Value.Quantity(name, unitOf, value, unit));
    }

    /** This fix with one more word for its sentence. */
    public Fix with(String name, @Nullable String unitOf, Object word) {
        return with(new Value.Word(name, unitOf, word.toString()));
    }

    private Fix with(Value value) {
        List<Value> more = new ArrayList<>(values);
        more.add(value);
        return new Fix(key, edits, more);
    }
}
