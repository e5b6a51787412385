package akin.engine.read;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A setting that a rig file either gives or leaves to the body, written {@code auto}.
 *
 * @param value the value; null when it is left to the body
 */
public record Choice<T>(@Nullable T value) {

    /** True when the body chooses. */
    public boolean automatic() {
        return value == null;
    }

    /** The value, or empty when the body chooses. */
    public Optional<T> given() {
        return Optional.ofNullable(value);
    }
}
