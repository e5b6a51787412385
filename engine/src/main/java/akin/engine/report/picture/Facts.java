package akin.engine.report.picture;

import akin.model.finding.Missing;
import akin.model.finding.WhereFound;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the model derives of a unit: facts, or what is missing for them. */
final class Facts {

    private Facts() {}

    static <T> Optional<T> first(List<Object> derived, Class<T> kind) {
        return all(derived, kind).findFirst();
    }

    static <T> Stream<T> all(List<Object> derived, Class<T> kind) {
        return derived.stream().filter(kind::isInstance).map(kind::cast);
    }

    /** What is missing, in words. */
    static Stream<String> gaps(List<Object> derived) {
        return all(derived, Missing.class).map(missing -> gap(missing.unit(), missing.path(), missing.where()));
    }

    static String gap(String unit, String path, WhereFound where) {
        return unit + ": " + path + " is not known (" + where.words() + ")";
    }
}
