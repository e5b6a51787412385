package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Recorder;
import akin.model.rig.Build;
import akin.model.rig.FittedLens;
import akin.model.rig.Unit;
import java.util.List;

/**
 * The mass of a unit and what its support is rated for.
 *
 * @param unitName name of the unit
 * @param kilograms body, lens, recorder and all that hangs on them
 * @param rated what the support is rated for, in kilograms
 */
public record Payload(String unitName, double kilograms, double rated) implements Derived {

    private static final double GRAMS = 1000;

    /** The mass, or what is missing for it; nothing where no support is planned. */
    public static List<Object> derive(Unit unit) {
        Build build = unit.build();
        if (build == null || build.rating() == null) {
            return List.of();
        }
        FittedLens lens = unit.lens();
        Recorder recorder = unit.recording().recorder();
        Inputs inputs = Inputs.of(Payload.class, unit)
                .body("mass", WhereFound.SPEC_SHEET, unit.body().mass())
                .setting("lens", lens)
                .setting("build.accessories", build.accessories());
        if (lens != null) {
            inputs.input(
                    lens.lens().path("mass"), WhereFound.SPEC_SHEET, lens.lens().mass());
        }
        if (recorder != null) {
            inputs.input(recorder.path("mass"), WhereFound.SPEC_SHEET, recorder.mass());
        }
        return inputs.derive(() -> {
            double grams = requireNonNull(unit.body().mass()).grams()
                    + requireNonNull(requireNonNull(lens).lens().mass()).grams()
                    + (recorder == null ? 0 : requireNonNull(recorder.mass()).grams())
                    + requireNonNull(build.accessories()).grams();
            return new Payload(
                    unit.name(), grams / GRAMS, requireNonNull(build.rating()).grams() / GRAMS);
        });
    }

    /** The mass that leaves a spare, in per cent of the rating. */
    public double allowed(double sparePercent) {
        return rated * (1 - sparePercent / 100);
    }

    /** True when the unit is heavier than that. */
    public boolean tooHeavy(double sparePercent) {
        return kilograms > allowed(sparePercent) * (1 + 1e-9);
    }

    /** What that means, in words. */
    public String words() {
        return kilograms > rated ? "more than it is rated for" : "within its rating, with less spare than agreed";
    }
}
