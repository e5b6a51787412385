package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.finding.Missing;
import akin.model.quantity.AngularSpeed;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Tolerance;
import akin.model.rig.Unit;
import akin.model.timing.Judder;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A planned pan as a unit records it. A unit that is off speed on purpose stretches it in time, so it may pan as much
 * faster as it is played slower.
 *
 * @param unitName name of the unit
 * @param scene the scene with the pan
 * @param speed degrees a second
 * @param secondsToCross time that an object takes to cross the picture on screen
 * @param guideline least time that it should take, in seconds
 * @param percentPerFrame how far it steps from one frame on screen to the next, in per cent of the picture width
 * @param fastest the fastest pan that keeps to the guideline, in degrees a second
 */
public record PlannedPan(
        String unitName,
        Scene scene,
        double speed,
        double secondsToCross,
        double guideline,
        double percentPerFrame,
        double fastest)
        implements Derived {

    /** The key under {@code intent} that gives a reason for a pan. */
    public static final String INTENT = "pan";

    /** The pans of a unit, or what is missing for them; nothing where none is planned or a reason is given. */
    public static List<Object> derive(Rig rig, Unit unit) {
        List<Scene> panned = rig.scenes().stream()
                .filter(scene -> scene.shotBy(unit.name()) && degreesPerSecond(scene) > 0)
                .toList();
        if (panned.isEmpty() || unit.intends(INTENT)) {
            return List.of();
        }
        List<Object> all = new ArrayList<>();
        for (Object fact : View.derive(unit, rig.match())) {
            if (fact instanceof View view) {
                panned.forEach(scene -> all.add(of(rig, unit, view, scene)));
            } else {
                all.addAll(Inputs.of(PlannedPan.class, unit)
                        .missing((Missing) fact)
                        .derive(() -> {
                            throw new IllegalStateException("no view of " + unit.name());
                        }));
            }
        }
        return all;
    }

    private static double degreesPerSecond(Scene scene) {
        AngularSpeed pan = scene.pan();
        return pan == null ? 0 : pan.degreesPerSecond();
    }

    private static PlannedPan of(Rig rig, Unit unit, View view, Scene scene) {
        double shown = rig.production().rate().perSecond();
        double slowed = RatePlan.offSpeed(rig.production(), unit) ? unit.rate().perSecond() / shown : 1;
        double speed = degreesPerSecond(scene);
        double degrees = view.horizontalDegrees();
        double guideline = Judder.guidelineSeconds(rig.match().tolerances().of(Tolerance.PAN_CROSSING), shown);
        return new PlannedPan(
                unit.name(),
                scene,
                speed,
                Judder.secondsToCross(degrees, speed / slowed),
                guideline,
                Judder.percentPerFrame(degrees, speed / slowed, shown),
                slowed * degrees / guideline);
    }

    /** True when it crosses the picture faster than the guideline. */
    public boolean tooFast() {
        return speed > fastest;
    }

    /** True when another unit's picture of the same pan suffers more, or as much and comes first by name. */
    public boolean worseIn(PlannedPan other) {
        return other.scene.equals(scene)
                && (other.fastest < fastest || (other.fastest == fastest && other.unitName.compareTo(unitName) < 0));
    }

    /** A pan that keeps to the guideline, to a tenth of a degree a second; or a reason for this one. Keys: slower, say-why. */
    public List<Fix> fixes() {
        BigDecimal tenths = BigDecimal.valueOf(fastest).setScale(1, RoundingMode.DOWN);
        List<Fix> fixes = new ArrayList<>();
        if (tenths.signum() > 0) {
            AngularSpeed slower = new AngularSpeed(tenths.doubleValue());
            fixes.add(Fix.set("slower", scene.path("pan"), slower).with("setting", null, slower));
        }
        fixes.add(Fix.advise("say-why"));
        return fixes;
    }
}
