package akin.model.derived;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Gear and rig records of which a test names only what matters; the rest is not known, or empty. */
final class Sparse {

    private Sparse() {}

    static <T extends Record> T of(Class<T> type, Map<String, Object> named) {
        RecordComponent[] components = type.getRecordComponents();
        Set<String> unused = new HashSet<>(named.keySet());
        Object[] values = Arrays.stream(components)
                .map(c -> {
                    unused.remove(c.getName());
                    return named.containsKey(c.getName()) ? named.get(c.getName()) : unknown(c.getType());
                })
                .toArray();
        if (!unused.isEmpty()) {
            throw new IllegalArgumentException(type.getSimpleName() + " has no " + unused);
        }
        try {
            return type.getDeclaredConstructor(Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class[]::new))
                    .newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object unknown(Class<?> type) {
        if (type == Map.class) {
            return Map.of();
        }
        if (type == Set.class) {
            return Set.of();
        }
        return type == boolean.class ? false : null;
    }
}
