package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Missing;
import akin.model.finding.WhereFound;
import akin.model.footage.Clip;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Gathers the inputs of one derived fact and says which are not known. Either all are, and the fact is made, or one
 * {@link Missing} is recorded for each that is not.
 */
final class Inputs {

    private final String fact;
    private final Unit unit;
    private final @Nullable Clip clip;
    private final List<Missing> missing = new ArrayList<>();

    private Inputs(String fact, Unit unit, @Nullable Clip clip) {
        this.fact = fact;
        this.unit = unit;
        this.clip = clip;
    }

    static Inputs of(Class<? extends Derived> fact, Unit unit) {
        return new Inputs(Derived.nameOf(fact), unit, null);
    }

    /** Inputs of a fact of one clip of the unit. */
    static Inputs of(Class<? extends ClipFact> fact, Unit unit, Clip clip) {
        return new Inputs(Derived.nameOf(fact), unit, clip);
    }

    /** Something that the clip says of itself, by its column in tables of clips. */
    Inputs clip(String column, @Nullable Object value) {
        return value == null ? input(requireNonNull(clip).path(column), WhereFound.CLIP, null) : this;
    }

    /** A setting of the unit in the rig file, by the key under the unit, such as {@code lens.focal}. */
    Inputs setting(String key, @Nullable Object value) {
        // A path is only put together where it is missed: most are not, and there are many.
        return value == null ? input(unit.path(key), WhereFound.PLAN, null) : this;
    }

    /** A fact of the unit's body. */
    Inputs body(String key, WhereFound where, @Nullable Object value) {
        return value == null ? input(unit.body().path(key), where, null) : this;
    }

    /** A fact of the mode that the body is in. */
    Inputs mode(String key, WhereFound where, @Nullable Object value) {
        return value == null ? input(unit.body().path("modes." + unit.mode().id() + "." + key), where, null) : this;
    }

    /** Any other input by its whole path. */
    Inputs input(String path, WhereFound where, @Nullable Object value) {
        if (value == null) {
            missing.add(new Missing(fact, unit.name(), clip == null ? null : clip.name(), path, where));
        }
        return this;
    }

    /** What another fact that this one builds on is missing. */
    Inputs missing(Missing other) {
        missing.add(new Missing(fact, unit.name(), clip == null ? null : clip.name(), other.path(), other.where()));
        return this;
    }

    /** What is missing so far. */
    List<Missing> missing() {
        return List.copyOf(missing);
    }

    /** The fact, if every input is known; otherwise what is missing. */
    List<Object> derive(Supplier<? extends Derived> make) {
        return missing.isEmpty() ? List.of(make.get()) : List.copyOf(missing);
    }
}
