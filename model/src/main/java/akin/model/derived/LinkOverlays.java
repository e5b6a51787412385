package akin.model.derived;

import akin.model.gear.Output;
import akin.model.rig.Recording;
import akin.model.rig.Unit;
import java.util.List;

/**
 * Whether menus and frame lines are in the picture that a body sends to its recorder.
 *
 * @param unitName name of the unit
 * @param burnedIn true when they are
 */
public record LinkOverlays(String unitName, boolean burnedIn) implements Derived {

    /** Whether they are, or what is missing to say so; nothing for a unit that records inside. */
    public static List<Object> derive(Unit unit) {
        Recording recording = unit.recording();
        if (!recording.external()) {
            return List.of();
        }
        Output output = recording.output();
        boolean clean = output != null && Boolean.FALSE.equals(output.overlays());
        Boolean on = clean ? Boolean.FALSE : recording.overlays();
        return Inputs.of(LinkOverlays.class, unit)
                .setting("recorder.overlays", on)
                .derive(() -> new LinkOverlays(unit.name(), Boolean.TRUE.equals(on)));
    }
}
