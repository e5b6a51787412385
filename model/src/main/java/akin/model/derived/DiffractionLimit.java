package akin.model.derived;

import akin.model.finding.Fix;
import akin.model.optics.Diffraction;
import akin.model.quantity.Aperture;
import akin.model.rig.Unit;
import java.util.List;

/**
 * How the blur of a small stop compares with the photosites.
 *
 * @param depth the stop that acts
 * @param pitch distance between photosites
 * @param allowed how many photosites the Airy disk may span
 */
public record DiffractionLimit(FocusDepth depth, PhotositePitch pitch, double allowed) {

    /** Diameter of the Airy disk in green light, in micrometres. */
    public double diskMicrometres() {
        return Diffraction.airyDiameterMicrometres(depth.fNumber());
    }

    /** How many photosites the disk spans. */
    public double photosites() {
        return diskMicrometres() / pitch.micrometres();
    }

    /** The geometric stop that acts at which the disk spans as many as are allowed. */
    public double limit() {
        return Diffraction.stopSpanning(allowed, pitch.micrometres());
    }

    /** Opening up to the limit, where the lens can; otherwise living with it. Keys: open-up, accept. */
    public List<Fix> fixes(Unit unit) {
        StopRange range = StopRange.of(unit);
        if (range == null) {
            return List.of(Fix.advise("accept"));
        }
        Aperture stop = range.atMost(range.set().number() * limit() / depth.fNumber());
        return stop == null
                ? List.of(Fix.advise("accept"))
                : List.of(Fix.set("open-up", unit.path("lens.stop"), stop)
                        .with("stop", null, stop)
                        .with("light", null, range.set().stopsFrom(stop), "stops"));
    }
}
