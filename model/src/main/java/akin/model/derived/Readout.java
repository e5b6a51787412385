package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.finding.Value;
import akin.model.finding.WhereFound;
import akin.model.gear.Mode;
import akin.model.optics.RollingShutter;
import akin.model.quantity.AngularSpeed;
import akin.model.quantity.PictureSize;
import akin.model.quantity.Timespan;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * How long a unit takes from the first line of the picture to the last.
 *
 * @param unitName name of the unit
 * @param milliseconds read-out time; 0 where the whole picture is taken at once
 */
public record Readout(String unitName, double milliseconds) implements Derived {

    /** The read-out time, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Double time = milliseconds(unit, unit.mode());
        return Inputs.of(Readout.class, unit)
                .mode("readout", WhereFound.TEST, time)
                .derive(() -> new Readout(unit.name(), java.util.Objects.requireNonNull(time)));
    }

    private static @Nullable Double milliseconds(Unit unit, Mode mode) {
        if (Boolean.FALSE.equals(unit.body().rolls())) {
            return 0.0;
        }
        Timespan readout = mode.readout();
        return readout == null ? null : (Double) readout.milliseconds();
    }

    /** How much longer than another's it is, in milliseconds; negative: shorter. */
    public double longerThan(Readout other) {
        return milliseconds - other.milliseconds;
    }

    private record Skew(Scene scene, AngularSpeed pan, double pixels, double degrees) {}

    private List<Skew> skews(Rig rig, Unit unit) {
        List<Skew> all = new ArrayList<>();
        PictureSize picture = unit.recordedPicture();
        if (picture == null || !(View.derive(unit, rig.match()).get(0) instanceof View view)) {
            return all;
        }
        for (Scene scene : rig.scenes()) {
            AngularSpeed pan = scene.pan();
            if (pan != null && scene.shotBy(unitName)) {
                double pixels = RollingShutter.skewPixels(
                        pan.degreesPerSecond(), milliseconds, view.horizontalDegrees(), picture.width());
                all.add(new Skew(scene, pan, pixels, RollingShutter.leanDegrees(pixels, picture.height())));
            }
        }
        return all;
    }

    /** How far uprights lean in each planned pan, in words. */
    public String skewed(Rig rig, Unit unit) {
        List<String> all = skews(rig, unit).stream()
                .map(skew -> String.format(
                        Locale.ROOT,
                        "%.0f px (%.1f°) in %s at %s",
                        skew.pixels(),
                        skew.degrees(),
                        skew.scene().name(),
                        skew.pan()))
                .toList();
        if (milliseconds == 0) {
            return "none";
        }
        return all.isEmpty() ? "not known, for want of a planned pan or of the view" : String.join("; ", all);
    }

    /** Skew in pixels of the unit's own picture, for each scene with a pan; from the second scene on with its number. */
    public List<Value> evidence(Rig rig, Unit unit) {
        List<Value> all = new ArrayList<>();
        for (Skew skew : skews(rig, unit)) {
            String of =
                    skew.scene().index() == 0 ? "" : "-scene-" + (skew.scene().index() + 1);
            all.add(new Value.Quantity("skew" + of, unitName, skew.pixels(), "px"));
            all.add(new Value.Quantity("lean" + of, unitName, skew.degrees(), "°"));
        }
        return all;
    }

    /** A mode of the unit whose read-out is near enough to the hero's; or gentle moves. Keys: like-hero, gentle. */
    public List<Fix> fixes(Unit unit, Readout hero, double tolerance) {
        List<Fix> fixes = new ArrayList<>();
        for (Mode mode : Alternatives.modes(unit)) {
            Double time = milliseconds(unit, mode);
            if (time != null && Math.abs(time - hero.milliseconds) <= tolerance) {
                fixes.add(Fix.set("like-hero", unit.path("mode"), mode.id())
                        .with("mode", null, mode.id())
                        .with("time", null, time, "ms"));
                break;
            }
        }
        fixes.add(Fix.advise("gentle"));
        return fixes;
    }
}
