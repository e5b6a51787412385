package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.WhereFound;
import akin.model.gear.Lens;
import akin.model.quantity.Aperture;
import akin.model.quantity.Length;
import akin.model.rig.FittedLens;
import akin.model.rig.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The stops that a lens can be set to at its focal length, in the kind of number that the plan sets.
 *
 * @param unitName name of the unit
 * @param lens what the lens is called
 * @param set the stop that is planned
 * @param open widest number
 * @param closed smallest opening's number
 * @param iris how the iris is set
 */
public record StopRange(String unitName, String lens, Aperture set, double open, double closed, Lens.Iris iris)
        implements Derived {

    /** Numbers are printed rounded; this much beyond the end of a range is still the end, in stops. */
    private static final double ROUNDING_STOPS = 0.05;

    /** The stops, or what is missing for them. */
    public static List<Object> derive(Unit unit) {
        FittedLens fitted = unit.lens();
        Inputs inputs = Inputs.of(StopRange.class, unit).setting("lens", fitted);
        if (fitted != null) {
            Lens lens = fitted.lens();
            inputs.setting("lens.focal", fitted.focal())
                    .setting("lens.stop", fitted.stop())
                    .input(lens.path("open"), WhereFound.LENS_MARKINGS, either(lens.open(), lens.openT()))
                    .input(lens.path("closed"), WhereFound.LENS_MARKINGS, either(lens.closed(), lens.closedT()))
                    .input(lens.path("iris"), WhereFound.LENS_MARKINGS, lens.iris());
        }
        return inputs.derive(() -> of(unit.name(), requireNonNull(fitted)));
    }

    /** The stops of a unit, or null where something is missing. */
    static @Nullable StopRange of(Unit unit) {
        List<Object> facts = derive(unit);
        return facts.get(0) instanceof StopRange range ? range : null;
    }

    private static StopRange of(String unit, FittedLens fitted) {
        Lens lens = fitted.lens();
        Aperture set = requireNonNull(fitted.stop());
        boolean geometric = set.kind() == Aperture.Kind.GEOMETRIC;
        Aperture open = geometric ? either(lens.open(), lens.openT()) : either(lens.openT(), lens.open());
        Aperture closed = geometric ? either(lens.closed(), lens.closedT()) : either(lens.closedT(), lens.closed());
        return new StopRange(
                unit,
                lens.called(),
                set,
                requireNonNull(open).number() * closesBy(lens, requireNonNull(fitted.focal())),
                requireNonNull(closed).number(),
                requireNonNull(lens.iris()));
    }

    private static @Nullable Aperture either(@Nullable Aperture first, @Nullable Aperture second) {
        return first == null ? second : first;
    }

    /**
     * How much a zoom's widest number grows from its short end to a focal length: even steps of focal length between the
     * two ends. Common practice, no source: makers seldom say where between them the steps lie.
     */
    private static double closesBy(Lens lens, Length focal) {
        Aperture open = lens.open();
        Aperture openAtLong = lens.openAtLong();
        Length from = lens.focal();
        Length to = lens.focalTo();
        if (open == null
                || openAtLong == null
                || from == null
                || to == null
                || to.millimetres() <= from.millimetres()) {
            return 1;
        }
        double way = (focal.millimetres() - from.millimetres()) / (to.millimetres() - from.millimetres());
        return 1 + way * (openAtLong.number() / open.number() - 1);
    }

    /** How far a number is beyond what the lens can be set to, in stops; 0 inside. */
    public double beyond(double number) {
        double over = 2 * log2(number / closed);
        double under = 2 * log2(open / number);
        double most = Math.max(over, under);
        return most > ROUNDING_STOPS ? most : 0;
    }

    /** How far the planned stop is beyond what the lens can be set to, in stops; 0 inside. */
    public double getBeyondPlanned() {
        return beyond(set.number());
    }

    /** Setting it to the end of the range that it is beyond. Key: set-end. */
    public List<Fix> toItsEnd(Unit unit) {
        Aperture end = nearest(set.number());
        return List.of(Fix.set("set-end", unit.path("lens.stop"), end)
                .with("stop", null, end)
                .with("light", null, Math.abs(end.stopsFrom(set)), "stops")
                .with("more", null, end.stopsFrom(set) > 0 ? "less" : "more"));
    }

    private static double log2(double ratio) {
        return Math.log(ratio) / Math.log(2);
    }

    /** The setting that comes nearest to a number. */
    public Aperture nearest(double number) {
        double inside = Math.max(open, Math.min(closed, number));
        return aperture(
                switch (iris) {
                    case FIXED -> open;
                    case STEPLESS -> tenths(inside);
                    case THIRDS ->
                        thirds().stream()
                                .min(java.util.Comparator.comparingDouble(mark -> Math.abs(log2(mark / inside))))
                                .orElse(inside);
                });
    }

    /** The smallest opening that is not smaller than a number says, or null when all are. */
    public @Nullable Aperture atMost(double number) {
        if (number < open) {
            return null;
        }
        return switch (iris) {
            case FIXED -> aperture(open);
            case STEPLESS -> aperture(Math.max(open, Math.floor(Math.min(closed, number) * 10) / 10));
            case THIRDS ->
                thirds().stream()
                        .filter(mark -> mark <= number)
                        .max(java.util.Comparator.naturalOrder())
                        .map(this::aperture)
                        .orElse(null);
        };
    }

    /** The settings that come into question: third-stop marks and the widest; of a lens without an iris its one stop. */
    public List<Aperture> offered() {
        return iris == Lens.Iris.FIXED
                ? List.of(widest())
                : java.util.stream.Stream.concat(
                                java.util.stream.Stream.of(widest()),
                                thirds().stream().map(this::aperture))
                        .distinct()
                        .toList();
    }

    private List<Double> thirds() {
        return Aperture.THIRD_STOP_MARKS.stream()
                .filter(mark -> beyond(mark) == 0)
                .toList();
    }

    /** To a tenth, unless that leaves the range. */
    private double tenths(double number) {
        double rounded = Math.round(number * 10) / 10.0;
        return rounded < open || rounded > closed ? number : rounded;
    }

    private Aperture aperture(double number) {
        return new Aperture(Math.round(number * 100) / 100.0, set.kind());
    }

    /** The widest setting. */
    public Aperture widest() {
        return aperture(open);
    }

    /** The smallest opening. */
    public Aperture smallest() {
        return aperture(closed);
    }
}
