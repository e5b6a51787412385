package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.rig.Monitor;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The size of the table of a unit, and the sizes that the device which applies it takes.
 *
 * @param unitName name of the unit
 * @param size points along each edge of the table's cube
 * @param device what applies it, in words
 * @param accepts sizes that it takes; empty when it takes none at all
 */
public record LutSize(String unitName, int size, String device, List<Integer> accepts) implements Derived {

    /** Copies the list. */
    public LutSize {
        accepts = List.copyOf(accepts);
    }

    /** The sizes, or what is missing for them; nothing for a unit that is watched as it is recorded. */
    public static List<Object> derive(Rig rig, Unit unit) {
        if (!WatchedLook.asked(rig, unit)) {
            return List.of();
        }
        Monitor monitor = unit.monitor();
        LutDevice device = LutDevice.of(unit);
        Inputs inputs = Inputs.of(LutSize.class, unit);
        WatchedLook.input(inputs, unit, "size", monitor == null ? null : monitor.size());
        WatchedLook.input(inputs, unit, "held-by", device);
        if (device != null) {
            inputs.input(device.path(), WhereFound.MANUAL, device.accepts());
        }
        return inputs.derive(() -> new LutSize(
                unit.name(),
                requireNonNull(requireNonNull(monitor).size()),
                requireNonNull(device).called(),
                requireNonNull(device.accepts())));
    }

    /** True when the device does not take it. */
    public boolean refused() {
        return !accepts.contains(size);
    }

    /** The sizes that the device takes, in words. */
    public String words() {
        return accepts.isEmpty()
                ? "no LUT at all"
                : accepts.stream().sorted().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** The largest size that is not above the planned one, or else the smallest; elsewhere where none is taken. */
    public List<Fix> fixes(Unit unit) {
        Optional<Integer> best = accepts.stream()
                .filter(one -> one <= size)
                .max(Comparator.naturalOrder())
                .or(() -> accepts.stream().min(Comparator.naturalOrder()));
        return best.map(to ->
                        List.of(Fix.set("resize", unit.path("monitor.size"), to).with("to", null, to)))
                .orElseGet(() -> List.of(Fix.advise("elsewhere")));
    }
}
