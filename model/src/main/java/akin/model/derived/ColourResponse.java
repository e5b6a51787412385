package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.rig.Unit;
import java.util.List;

/**
 * Whose idea of neutral a unit shows at a white balance: every maker calibrates its own.
 *
 * @param unitName name of the unit
 * @param maker who made the body
 */
public record ColourResponse(String unitName, String maker) implements Derived {

    /** The response, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        String maker = unit.body().maker();
        return Inputs.of(ColourResponse.class, unit)
                .body("maker", WhereFound.SPEC_SHEET, maker)
                .derive(() -> new ColourResponse(unit.name(), requireNonNull(maker)));
    }
}
