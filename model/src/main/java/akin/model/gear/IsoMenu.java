package akin.model.gear;

import akin.model.quantity.Iso;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The sensitivities a body offers: a list, or a span in conventional third stops, or a span in even steps of ISO.
 *
 * @param listed the values listed; empty when a span is given
 * @param from lowest of the span
 * @param to highest of the span
 * @param step distance in ISO where the span is not in third stops
 */
public record IsoMenu(
        List<Iso> listed,
        @Nullable Iso from,
        @Nullable Iso to,
        @Nullable Integer step) {

    /** The first decade of the customary third-stop series of ISO arithmetic speeds (ISO 12232, from memory). */
    private static final int[] THIRDS = {100, 125, 160, 200, 250, 320, 400, 500, 640, 800};

    /** The highest value that an ISO can have. */
    private static final int MOST = 10_000_000;

    private static final List<Iso> SERIES = series();

    /** Copies the list; needs a list or both ends of a rising span, with a step over 0 if any. */
    public IsoMenu {
        listed = List.copyOf(listed);
        if (listed.isEmpty() && (from == null || to == null)) {
            throw new IllegalArgumentException("an ISO menu is a list of values, or a span with from and to");
        }
        if (from != null && to != null && from.value() > to.value()) {
            throw new IllegalArgumentException("the ISO span goes from " + from + " to " + to + ", which is lower");
        }
        if (step != null && step < 1) {
            throw new IllegalArgumentException("the step of an ISO span is a whole number over 0, not " + step);
        }
    }

    /** Everything the menu offers, in rising order. */
    public List<Iso> offered() {
        if (!listed.isEmpty()) {
            return listed.stream().sorted(Comparator.comparingInt(Iso::value)).toList();
        }
        int low = from == null ? 0 : from.value();
        int high = to == null ? 0 : to.value();
        if (step != null) {
            int by = step;
            return IntStream.iterate(low, v -> v <= high, v -> v + by)
                    .mapToObj(Iso::new)
                    .toList();
        }
        return SERIES.stream()
                .filter(iso -> iso.value() >= low && iso.value() <= high)
                .toList();
    }

    /** The customary series of third stops, in rising order; menus are looked through often, so it is made once. */
    private static List<Iso> series() {
        // The customary series: the last four below 1000 double and tenfold alike from 100 to 800, then
        // 1000, 1250, 1600 ... and 50, 64, 80 below.
        IntStream below = IntStream.of(10, 12, 16, 20, 25, 32, 40, 50, 64, 80);
        IntStream above = IntStream.range(0, 60).map(i -> {
            double exact = 1000 * Math.pow(10, i / 10.0);
            int whole = i / 10;
            int decade = (int) Math.pow(10, whole);
            int[] mantissas = {1000, 1250, 1600, 2000, 2500, 3200, 4000, 5000, 6400, 8000};
            int nominal = mantissas[i % 10] * decade;
            // From 10,000 on the customary numbers go on doubling: 12800, 25600, 51200, 102400.
            return exact < 9000 ? nominal : doubled(i);
        });
        return IntStream.concat(IntStream.concat(below, IntStream.of(THIRDS)), above)
                .filter(v -> v <= MOST)
                .distinct()
                .sorted()
                .mapToObj(Iso::new)
                .toList();
    }

    private static int doubled(int thirdsOver1000) {
        int[] base = {6400, 8000, 10000};
        int thirdsOver6400 = thirdsOver1000 - 8;
        return base[Math.floorMod(thirdsOver6400, 3)] << Math.floorDiv(thirdsOver6400, 3);
    }

    /** True when this value can be set. */
    public boolean offers(Iso iso) {
        return offered().contains(iso);
    }

    /** The offered value nearest in stops; the lower of two equally near. */
    public Optional<Iso> nearest(double iso) {
        return offered().stream().min(Comparator.comparingDouble(v -> Math.abs(Math.log(v.value() / iso))));
    }

    /** The lowest offered value that is not under this one. */
    public Optional<Iso> atLeast(Iso floor) {
        return offered().stream().filter(v -> v.value() >= floor.value()).findFirst();
    }
}
