package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.quantity.Frequency;
import akin.model.rig.Rig;
import akin.model.rig.Scene;
import akin.model.rig.Screen;
import akin.model.rig.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A screen in the picture of a unit.
 *
 * @param unitName name of the unit
 * @param scene name of the scene
 * @param path dotted path of the screen in the rig file
 * @param called what people call it
 * @param refresh how often a second it is drawn anew
 */
public record ScreenInShot(String unitName, String scene, String path, String called, Frequency refresh)
        implements Derived {

    /** One fact for each screen, and what is not known of one; nothing where none is planned. */
    public static List<Object> derive(Rig rig, Unit unit) {
        List<Object> facts = new ArrayList<>();
        for (Scene scene : rig.scenes()) {
            if (scene.shotBy(unit.name())) {
                for (int i = 0; i < scene.screens().size(); i++) {
                    facts.addAll(derive(
                            unit,
                            scene,
                            scene.path("screens." + i),
                            scene.screens().get(i)));
                }
            }
        }
        return List.copyOf(facts);
    }

    private static List<Object> derive(Unit unit, Scene scene, String path, Screen screen) {
        return Inputs.of(ScreenInShot.class, unit)
                .input(path + ".refresh", WhereFound.TEST, screen.refresh())
                .derive(() -> new ScreenInShot(
                        unit.name(), scene.name(), path, screen.called(), requireNonNull(screen.refresh())));
    }

    static Stream<ScreenInShot> known(Rig rig, Unit unit) {
        return derive(rig, unit).stream().filter(ScreenInShot.class::isInstance).map(ScreenInShot.class::cast);
    }

    Beat beat() {
        return new Beat(Beat.Form.SCREEN, hertz(), 1);
    }

    BigFraction hertz() {
        return BigFraction.from(refresh.hertz());
    }
}
