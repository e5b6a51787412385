package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.footage.Clip;
import akin.model.footage.Scan;
import akin.model.rig.Unit;
import java.util.List;

/**
 * How the lines of a clip were scanned. A planned rate is one of whole frames.
 *
 * @param unitName name of the unit
 * @param clip name of the clip
 * @param scan how
 */
public record ClipScan(String unitName, String clip, Scan scan) implements ClipFact {

    /** The scan, or what is missing for it. */
    public static List<Object> derive(Unit unit, Clip clip) {
        return Inputs.of(ClipScan.class, unit, clip)
                .clip("scan", clip.scan())
                .derive(() -> new ClipScan(unit.name(), clip.name(), requireNonNull(clip.scan())));
    }

    /** True when a frame holds two moments. */
    public boolean interlaced() {
        return scan == Scan.INTERLACED;
    }
}
