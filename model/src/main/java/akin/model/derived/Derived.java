package akin.model.derived;

import java.util.Locale;

/** A fact that follows from one unit's settings and gear. Its name is what a rule page lists under {@code needs}. */
public interface Derived {

    /** Name of the unit that the fact belongs to. */
    String unitName();

    /** The kebab-case name of a kind of derived fact: {@code ExposureTime} is {@code exposure-time}. */
    static String nameOf(Class<?> kind) {
        return Names.OF.get(kind);
    }

    /** Names are asked for at every derivation, so each is worked out once. */
    final class Names {

        private static final ClassValue<String> OF = new ClassValue<>() {
            @Override
            protected String computeValue(Class<?> kind) {
                return kind.getSimpleName()
                        .replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-")
                        .toLowerCase(Locale.ROOT);
            }
        };

        private Names() {}
    }
}
