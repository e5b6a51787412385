package akin.model.derived;

import akin.model.rig.Build;
import akin.model.rig.Standing;
import akin.model.rig.Unit;
import java.util.List;

/**
 * A unit that is held where it can fall on people or fly off.
 *
 * @param unitName name of the unit
 * @param standing where it is held
 */
public record Mounting(String unitName, Standing standing) implements Derived {

    /** The mounting; nothing for a unit on the ground or of which nobody says where it is held. */
    public static List<Object> derive(Unit unit) {
        Build build = unit.build();
        return build == null || build.standing() == null || build.standing() == Standing.GROUND
                ? List.of()
                : List.of(new Mounting(unit.name(), build.standing()));
    }

    /** Where that is, in words. */
    public String words() {
        return standing == Standing.OVERHEAD ? "hangs over people" : "rides on a vehicle";
    }
}
