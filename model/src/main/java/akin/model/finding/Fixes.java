package akin.model.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The fixes of a finding, worked out when they are first asked for. Looking through menus and kits is most of the work of a
 * finding, and whoever only wants to know whether it is there, as when another fix is tried, need not pay for it.
 *
 * <p>What they are follows from facts that never change, so it does not matter when they are worked out, or by whom.
 */
public final class Fixes {

    private final List<Supplier<List<Fix>>> parts;
    private volatile @Nullable List<Fix> found;

    Fixes(List<Supplier<List<Fix>>> parts) {
        this.parts = List.copyOf(parts);
    }

    /** The fixes, best first. */
    public List<Fix> get() {
        List<Fix> fixes = found;
        if (fixes == null) {
            List<Fix> all = new ArrayList<>();
            parts.forEach(part -> all.addAll(part.get()));
            fixes = List.copyOf(all);
            found = fixes;
        }
        return fixes;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Fixes fixes && get().equals(fixes.get());
    }

    /** The same for all, so that a finding can be put into a set without working its fixes out. */
    @Override
    public int hashCode() {
        return 0;
    }

    @Override
    public String toString() {
        return get().toString();
    }
}
