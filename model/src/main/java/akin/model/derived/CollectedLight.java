package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.exposure.Light;
import akin.model.quantity.Iso;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.Shutter;
import akin.model.rig.Unit;
import java.util.List;

/**
 * How bright a unit records a scene: exposure time, sensitivity, photometric stop and neutral density together.
 *
 * @param unitName name of the unit
 * @param seconds exposure time in seconds
 * @param iso sensitivity
 * @param stop photometric stop
 * @param ndStops neutral density in stops
 */
public record CollectedLight(String unitName, double seconds, Iso iso, PhotometricStop stop, double ndStops)
        implements Derived {

    /** The light collected, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        Shutter shutter = unit.shutter();
        Iso iso = unit.iso();
        List<NeutralDensity> filters = unit.filters();
        Inputs inputs = Inputs.of(CollectedLight.class, unit)
                .setting("shutter", shutter)
                .setting("iso", iso)
                .setting("filters", filters);
        return PhotometricStop.require(inputs, unit)
                .derive(() -> new CollectedLight(
                        unit.name(),
                        requireNonNull(shutter).seconds(unit.rate()).doubleValue(),
                        requireNonNull(iso),
                        PhotometricStop.of(unit),
                        stops(requireNonNull(filters))));
    }

    /**
     * Light on the sensor times sensitivity, as stops over 1 s at T1, ISO 1 without filter: log2(t S / (T^2 2^ND)). Only
     * differences mean anything.
     */
    public double stops() {
        return Light.stopsApart(1, 1, 1, 0, seconds, iso.value(), stop.tNumber(), ndStops);
    }

    /** How many stops brighter this unit records the same scene than another; negative when darker. */
    public double stopsFrom(CollectedLight other) {
        return stops() - other.stops();
    }

    /** What a stack of neutral densities takes, in stops: densities add. */
    static double stops(List<NeutralDensity> filters) {
        return filters.stream().mapToDouble(NeutralDensity::stops).sum();
    }
}
