package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Mode;
import akin.model.gear.Rates;
import akin.model.quantity.Area;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Timespan;
import akin.model.rig.Delivery;
import akin.model.rig.FittedLens;
import akin.model.rig.Production;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * How the mode of a unit compares with the one of its body that reads most of the sensor.
 *
 * @param unitName name of the unit
 * @param mode the mode that it is in
 * @param widest the mode that reads most; the same where none reads more
 * @param shape width over height of what is delivered, as it lies on the sensor; null where it is not known
 */
public record CropOfBody(
        String unitName, Mode mode, Mode widest, @Nullable Double shape) implements Derived {

    /** The comparison, or what is missing for it. */
    public static List<Object> derive(Unit unit, Production production) {
        Double shape = shape(unit, production);
        Inputs inputs = Inputs.of(CropOfBody.class, unit);
        unit.body().modes().values().stream()
                .sorted(Comparator.comparing(Mode::id))
                .forEach(mode -> inputs.body("modes." + mode.id() + ".area", WhereFound.SPEC_SHEET, mode.activeArea()));
        return inputs.derive(() -> new CropOfBody(
                unit.name(),
                unit.mode(),
                unit.body().modes().values().stream()
                        .max(Comparator.<Mode>comparingDouble(mode -> factor(mode, unit.mode(), shape))
                                .thenComparing(Mode::id))
                        .orElse(unit.mode()),
                shape));
    }

    private static @Nullable Double shape(Unit unit, Production production) {
        Delivery delivery = production.delivery();
        FittedLens fitted = unit.lens();
        Double squeeze = fitted == null ? null : fitted.lens().squeeze();
        if (delivery == null || delivery.picture() == null) {
            return null;
        }
        return delivery.picture().aspect() / (squeeze == null ? 1 : squeeze);
    }

    /** Of as much of the mode as has the shape; of all of it where there is none. */
    private static double diagonal(Mode mode, @Nullable Double shape) {
        Area area = mode.activeArea();
        if (area == null) {
            return 0;
        }
        return shape == null
                ? area.diagonalMm()
                : Math.hypot(
                        Math.min(area.widthMm(), area.heightMm() * shape),
                        Math.min(area.heightMm(), area.widthMm() / shape));
    }

    /**
     * How many times as long the diagonal of one mode is as that of another: of all they read, or of as much of it as has the
     * shape, whichever is less. A taller mode is no wider when both are cut to one shape, and one that is cut for being wider
     * reads no less.
     */
    private static double factor(Mode one, Mode other, @Nullable Double shape) {
        double whole = diagonal(one, null) / diagonal(other, null);
        return Math.min(whole, diagonal(one, shape) / diagonal(other, shape));
    }

    /** How many times as long the diagonal of the widest mode is; 1 or above. */
    public double factor() {
        return factor(widest, mode, shape);
    }

    /** The same in per cent over 1. */
    public double getPercent() {
        return 100 * (factor() - 1);
    }

    /** Stops of light that the smaller area gathers less at the same stop, which is what makes it noisier. */
    public double lightLost() {
        return 2 * Math.log(factor()) / Math.log(2);
    }

    /** What is compared, in words, with which the sentence begins. */
    public String compared() {
        return factor() < factor(widest, mode, null) ? "Cut to the delivered shape, " : "";
    }

    /** What else changes, in words. */
    public String changes() {
        List<String> all = new ArrayList<>();
        change(all, "picture", widest.picture(), mode.picture());
        change(all, "sampling", widest.sampling(), mode.sampling());
        Timespan before = widest.readout();
        Timespan now = mode.readout();
        if (before != null && now != null && !before.equals(now)) {
            all.add(String.format(
                    Locale.ROOT, "read-out %.1f ms to %.1f ms", before.milliseconds(), now.milliseconds()));
        }
        Rates had = widest.rates();
        Rates has = mode.rates();
        if (had != null && has != null) {
            rates(all, "no longer ", had.listed(), has.listed());
            rates(all, "new ", has.listed(), had.listed());
        }
        if (!widest.isoFloors().equals(mode.isoFloors())) {
            all.add("another ISO floor");
        }
        if (mode.crop() != null) {
            all.add("noted for it: " + mode.crop());
        }
        return all.isEmpty() ? "nothing else that is known" : String.join("; ", all);
    }

    private static void change(List<String> all, String what, @Nullable Object before, @Nullable Object now) {
        if (before != null && now != null && !before.equals(now)) {
            all.add(what + " " + before + " to " + now);
        }
    }

    private static void rates(List<String> all, String words, List<FrameRate> these, List<FrameRate> butNot) {
        List<String> rates = these.stream()
                .filter(rate -> !butNot.contains(rate))
                .map(rate -> requireNonNull(rate).toString())
                .toList();
        if (!rates.isEmpty()) {
            all.add(words + String.join(", ", rates) + " fps");
        }
    }
}
