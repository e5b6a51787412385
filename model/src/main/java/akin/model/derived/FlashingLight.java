package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.quantity.Frequency;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import akin.model.timing.Flashing;
import java.util.ArrayList;
import java.util.List;

/**
 * Flashing light that is planned in a scene that a unit shoots.
 *
 * @param unitName name of the unit
 * @param scene the scene
 * @param flashes flashes a second
 */
public record FlashingLight(String unitName, Scene scene, Frequency flashes) implements Derived {

    /** One fact for each scene with flashing light; nothing where none is planned. */
    public static List<Object> derive(Rig rig, Unit unit) {
        List<Object> facts = new ArrayList<>();
        for (Scene scene : rig.scenes()) {
            if (scene.flashes() != null && scene.shotBy(unit.name())) {
                facts.add(new FlashingLight(unit.name(), scene, scene.flashes()));
            }
        }
        return List.copyOf(facts);
    }

    /** True when there are more flashes in a second than the published guideline allows. */
    public boolean tooMany() {
        return Flashing.exceeds(flashes.hertz());
    }

    /** The flashes in a second that the guideline allows. */
    public int most() {
        return Flashing.MOST_IN_A_SECOND;
    }

    /** True for the unit that speaks for all that shoot the scene: what flashes harms people once, not once a camera. */
    public boolean speaks(Rig rig) {
        return rig.units().stream()
                .map(Unit::name)
                .filter(scene::shotBy)
                .findFirst()
                .filter(unitName::equals)
                .isPresent();
    }

    /** What people decide first ({@code decide}), and no more flashes than the guideline allows ({@code slow-down}). */
    public List<Fix> fixes() {
        Frequency most = new Frequency(Flashing.MOST_IN_A_SECOND);
        return List.of(
                Fix.advise("decide"),
                Fix.set("slow-down", scene.path("flashes"), most).with("to", null, Flashing.MOST_IN_A_SECOND, ""));
    }
}
