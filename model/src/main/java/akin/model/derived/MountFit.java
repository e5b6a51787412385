package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.finding.WhereFound;
import akin.model.gear.Adapter;
import akin.model.gear.Lens;
import akin.model.gear.Mount;
import akin.model.optics.FlangeFocal;
import akin.model.quantity.Length;
import akin.model.rig.FittedLens;
import akin.model.rig.Rig;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How a lens sits on its body.
 *
 * @param unitName name of the unit
 * @param lensMount the lens's mount, by name
 * @param bodyMount the body's mount, by name
 * @param lensFlangeMm flange focal distance that the lens is made for, in millimetres; the body's where mounts are alike
 * @param bodyFlangeMm flange focal distance of the body, in millimetres; the lens's where mounts are alike
 * @param state what joins them
 */
public record MountFit(
        String unitName, String lensMount, String bodyMount, double lensFlangeMm, double bodyFlangeMm, State state)
        implements Derived {

    /**
     * Least depth at which an adapter between two mounts can be made strong enough, in millimetres. Common practice, no
     * source; thinner rings exist where one mount sits inside the other.
     */
    public static final double LEAST_ADAPTER_MM = 2;

    /** What joins lens and body. */
    public enum State {
        /** The mounts are alike, or the adapter joins them and passes what is needed. */
        FITS("fits"),
        /** The adapter joins them; lens data and the body's iris control do not pass, but the lens has an iris ring. */
        HAND_IRIS("the adapter passes no electronics"),
        /** The adapter joins them, but the iris can be set from nowhere. */
        NO_IRIS("the adapter passes no electronics, and the lens has no iris ring"),
        /** The adapter is made for other mounts. */
        WRONG_ADAPTER("the adapter on it joins other mounts"),
        /** Nothing joins them. */
        NO_ADAPTER("no adapter is planned");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** The state in words. */
        @Override
        public String toString() {
            return words;
        }
    }

    /** How the lens sits, or what is missing to say so. */
    public static List<Object> derive(Unit unit, Rig rig) {
        FittedLens fitted = unit.lens();
        String bodyMount = unit.body().mount();
        Inputs inputs = Inputs.of(MountFit.class, unit)
                .body("mount", WhereFound.SPEC_SHEET, bodyMount)
                .setting("lens", fitted);
        if (fitted == null) {
            return inputs.derive(() -> {
                throw new IllegalStateException("no lens");
            });
        }
        String lensMount = fitted.lens().mount();
        inputs.input(fitted.lens().path("mount"), WhereFound.LENS_MARKINGS, lensMount);
        Adapter adapter = fitted.adapter();
        if (adapter != null) {
            inputs.input(adapter.path("lens-mount"), WhereFound.SPEC_SHEET, adapter.lensMount())
                    .input(adapter.path("body-mount"), WhereFound.SPEC_SHEET, adapter.bodyMount())
                    .input(adapter.path("electronics"), WhereFound.SPEC_SHEET, adapter.electronics());
            if (Boolean.FALSE.equals(adapter.electronics())) {
                inputs.input(
                        fitted.lens().path("iris"),
                        WhereFound.LENS_MARKINGS,
                        fitted.lens().iris());
            }
        }
        boolean alike = Objects.equals(lensMount, bodyMount);
        if (!alike && lensMount != null && bodyMount != null) {
            inputs.input(flangePath(lensMount), WhereFound.SPEC_SHEET, flange(rig.mounts(), lensMount))
                    .input(flangePath(bodyMount), WhereFound.SPEC_SHEET, flange(rig.mounts(), bodyMount));
        }
        return inputs.derive(
                () -> of(unit, fitted, requireNonNull(lensMount), requireNonNull(bodyMount), rig.mounts()));
    }

    private static MountFit of(
            Unit unit, FittedLens fitted, String lensMount, String bodyMount, Map<String, Mount> mounts) {
        boolean alike = lensMount.equals(bodyMount);
        return new MountFit(
                unit.name(),
                called(mounts, lensMount),
                called(mounts, bodyMount),
                alike ? 0 : requireNonNull(flange(mounts, lensMount)).millimetres(),
                alike ? 0 : requireNonNull(flange(mounts, bodyMount)).millimetres(),
                state(fitted, lensMount, bodyMount));
    }

    private static State state(FittedLens fitted, String lensMount, String bodyMount) {
        Adapter adapter = fitted.adapter();
        if (adapter == null) {
            return lensMount.equals(bodyMount) ? State.FITS : State.NO_ADAPTER;
        }
        if (!lensMount.equals(adapter.lensMount()) || !bodyMount.equals(adapter.bodyMount())) {
            return State.WRONG_ADAPTER;
        }
        if (Boolean.TRUE.equals(adapter.electronics())) {
            return State.FITS;
        }
        return fitted.lens().iris() == Lens.Iris.THIRDS ? State.NO_IRIS : State.HAND_IRIS;
    }

    private static String flangePath(String mount) {
        return "gear.mounts." + mount + ".flange";
    }

    private static @Nullable Length flange(Map<String, Mount> mounts, String id) {
        Mount mount = mounts.get(id);
        return mount == null ? null : mount.flange();
    }

    private static String called(Map<String, Mount> mounts, String id) {
        Mount mount = mounts.get(id);
        return mount == null || mount.name() == null ? id : mount.name();
    }

    /** Advice where the iris ring still serves; otherwise the lens cannot be used as planned. */
    public Severity severity() {
        return state == State.HAND_IRIS ? Severity.ADVICE : Severity.BAKED_IN;
    }

    /** What the flange distances leave for an adapter, in words. */
    public String depth() {
        if (lensFlangeMm == 0) {
            return "the mounts are alike";
        }
        return String.format(
                Locale.ROOT,
                "the flange distances (%.2f mm for the lens, %.2f mm on the body) leave %.2f mm for an adapter, which needs"
                        + " at least %.0f mm",
                lensFlangeMm,
                bodyFlangeMm,
                roomMm(),
                LEAST_ADAPTER_MM);
    }

    /** Depth left for an adapter, in millimetres; negative where the lens would have to sit inside the body. */
    public double roomMm() {
        return lensFlangeMm - bodyFlangeMm;
    }

    /** True when an adapter without glass can be made. */
    public boolean adaptable() {
        return lensFlangeMm > 0
                && bodyFlangeMm > 0
                && FlangeFocal.adapterPossible(lensFlangeMm, bodyFlangeMm, LEAST_ADAPTER_MM);
    }

    /**
     * Ways out: an adapter of the kit, taking a needless adapter off, a lens of the kit with the body's mount, or finding
     * an adapter or a lens. Keys: use-adapter, no-adapter, use-lens, find-adapter, find-lens, set-by-hand.
     */
    public List<Fix> fixes(Unit unit, Rig rig) {
        if (state == State.HAND_IRIS) {
            return List.of(Fix.advise("set-by-hand"));
        }
        FittedLens fitted = requireNonNull(unit.lens());
        List<Fix> fixes = new ArrayList<>();
        String lensMount = fitted.lens().mount();
        String bodyMount = unit.body().mount();
        if (Objects.equals(lensMount, bodyMount)) {
            fixes.add(Fix.remove("no-adapter", unit.path("lens.adapter")));
            return fixes;
        }
        List<Adapter> adapters =
                rig.kit().adapters() == null ? List.of() : rig.kit().adapters();
        adapters.stream()
                .filter(adapter -> Objects.equals(adapter.lensMount(), lensMount)
                        && Objects.equals(adapter.bodyMount(), bodyMount)
                        && Boolean.TRUE.equals(adapter.electronics()))
                .findFirst()
                .ifPresent(adapter -> fixes.add(Fix.set("use-adapter", unit.path("lens.adapter"), adapter.id())
                        .with("adapter", null, adapter.name() == null ? adapter.id() : adapter.name())));
        List<Lens> lenses = rig.kit().lenses() == null ? List.of() : rig.kit().lenses();
        lenses.stream()
                .filter(lens -> Objects.equals(lens.mount(), bodyMount)
                        && fitted.focal() != null
                        && fitted.focal()
                                .equals(Alternatives.nearestFocal(
                                        lens, fitted.focal().millimetres())))
                .findFirst()
                .ifPresent(lens -> {
                    Fix fix = Fix.set("use-lens", unit.path("lens.use"), lens.id())
                            .with("lens", null, lens.called());
                    fixes.add(fitted.adapter() == null ? fix : fix.without(unit.path("lens.adapter")));
                });
        fixes.add(Fix.advise(adaptable() ? "find-adapter" : "find-lens"));
        return fixes;
    }
}
