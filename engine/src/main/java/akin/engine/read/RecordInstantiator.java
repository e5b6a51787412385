package akin.engine.read;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.DeserializationConfig;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.deser.ValueInstantiator;
import tools.jackson.databind.deser.ValueInstantiators;
import tools.jackson.databind.deser.std.StdValueInstantiator;

/**
 * Makes records by their constructor. Jackson's own way goes through method handles, for which every start of the
 * program has to spin a class per shape of constructor: most of the time of binding a small file.
 */
final class RecordInstantiator extends StdValueInstantiator {

    private static final long serialVersionUID = 1L;

    private final transient Constructor<?> constructor;

    private RecordInstantiator(StdValueInstantiator original, Constructor<?> constructor) {
        super(original);
        this.constructor = constructor;
    }

    @Override
    public Object createFromObjectWith(DeserializationContext context, @Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Replaces Jackson's instantiator of every record. */
    static final class ForRecords extends ValueInstantiators.Base {
        @Override
        public ValueInstantiator modifyValueInstantiator(
                DeserializationConfig config, BeanDescription.Supplier description, ValueInstantiator original) {
            Class<?> type = description.getBeanClass();
            if (!type.isRecord() || !(original instanceof StdValueInstantiator standard)) {
                return original;
            }
            Class<?>[] components = Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new);
            try {
                Constructor<?> canonical = type.getDeclaredConstructor(components);
                canonical.setAccessible(true);
                return new RecordInstantiator(standard, canonical);
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
