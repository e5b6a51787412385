package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.quantity.Frequency;
import akin.model.quantity.Percent;
import akin.model.rig.Dimming;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Light in a scene that a unit shoots, dimmed by switching it on and off.
 *
 * @param unitName name of the unit
 * @param scene name of the scene
 * @param path dotted path of the dimming in the rig file
 * @param frequency how often a second it is switched on
 * @param duty the part of each cycle that it is on
 */
public record DimmedLight(String unitName, String scene, String path, Frequency frequency, Percent duty)
        implements Derived {

    /** One fact for each such light, and what is not known of one; nothing where none is planned. */
    public static List<Object> derive(Rig rig, Unit unit) {
        List<Object> facts = new ArrayList<>();
        for (Scene scene : rig.scenes()) {
            if (scene.shotBy(unit.name())) {
                for (int i = 0; i < scene.dimming().size(); i++) {
                    facts.addAll(derive(
                            unit,
                            scene,
                            scene.path("dimming." + i),
                            scene.dimming().get(i)));
                }
            }
        }
        return List.copyOf(facts);
    }

    private static List<Object> derive(Unit unit, Scene scene, String path, Dimming dimming) {
        return Inputs.of(DimmedLight.class, unit)
                .input(path + ".frequency", WhereFound.MANUAL, dimming.frequency())
                .input(path + ".duty", WhereFound.TEST, dimming.duty())
                .derive(() -> new DimmedLight(
                        unit.name(),
                        scene.name(),
                        path,
                        requireNonNull(dimming.frequency()),
                        requireNonNull(dimming.duty())));
    }

    static Stream<DimmedLight> known(Rig rig, Unit unit) {
        return derive(rig, unit).stream().filter(DimmedLight.class::isInstance).map(DimmedLight.class::cast);
    }

    Beat beat() {
        return new Beat(Beat.Form.SWITCHED, BigFraction.from(frequency.hertz()), onShare());
    }

    double onShare() {
        return duty.value() / 100;
    }
}
