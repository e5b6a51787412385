package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Missing;
import akin.model.finding.WhereFound;
import akin.model.quantity.Length;
import akin.model.rig.Scene;
import akin.model.rig.Unit;
import java.util.List;

/**
 * How far a unit stands from the subject of a scene that it shoots.
 *
 * @param unitName name of the unit
 * @param scene the scene
 * @param distance from the image plane to the subject
 */
public record SubjectDistance(String unitName, Scene scene, Length distance) implements Derived {

    /** The distance, or what is missing for it; nothing for a scene that the unit does not shoot. */
    public static List<Object> derive(Unit unit, Scene scene) {
        if (!scene.shotBy(unit.name())) {
            return List.of();
        }
        Length distance = scene.distanceOf(unit.name());
        return distance == null
                ? List.of(new Missing(
                        Derived.nameOf(SubjectDistance.class),
                        unit.name(),
                        scene.path("subject-distance"),
                        WhereFound.PLAN))
                : List.of(new SubjectDistance(unit.name(), scene, requireNonNull(distance)));
    }
}
