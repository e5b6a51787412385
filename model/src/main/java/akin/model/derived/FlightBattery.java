package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Fix;
import akin.model.finding.Severity;
import akin.model.rig.Battery;
import akin.model.rig.Build;
import akin.model.rig.Unit;
import java.util.List;

/**
 * Lithium batteries of a unit that travel on a passenger aircraft.
 *
 * <p>Published limits for spares in the cabin: up to 100 Wh each; over 100 and up to 160 Wh with the airline's approval, two
 * at most; none above. Source: tsa.gov, "Lithium batteries with 100 watt hours or less in a device", and copies of the same
 * authority's text on larger ones.
 *
 * @param unitName name of the unit
 * @param wattHours what one holds
 * @param spares how many spares come along
 */
public record FlightBattery(String unitName, double wattHours, int spares) implements Derived {

    /** Largest battery that needs no approval, in watt-hours. */
    static final double FREE = 100;

    /** Largest battery that a passenger may carry, in watt-hours. */
    static final double APPROVED = 160;

    /** Most spares of those that need approval. */
    static final int MOST_SPARES = 2;

    /** The batteries, or what is missing of them; nothing where they do not fly. */
    public static List<Object> derive(Unit unit) {
        Build build = unit.build();
        Battery battery = build == null ? null : build.battery();
        if (battery == null || !Boolean.TRUE.equals(battery.byAir())) {
            return List.of();
        }
        return Inputs.of(FlightBattery.class, unit)
                .setting("build.battery.energy", battery.energy())
                .setting("build.battery.spares", battery.spares())
                .derive(() -> new FlightBattery(
                        unit.name(), requireNonNull(battery.energy()).wattHours(), requireNonNull(battery.spares())));
    }

    /** True when it takes more than to pack them into the cabin. */
    public boolean restricted() {
        return wattHours > FREE;
    }

    /** Refused batteries have to be replaced by others at a cost; approval is a matter of asking in time. */
    public Severity severity() {
        return wattHours > APPROVED || spares > MOST_SPARES ? Severity.LOSSY : Severity.ADVICE;
    }

    /** Smaller ones or freight where they are refused ({@code leave}); otherwise the airline is asked ({@code ask-airline}). */
    public List<Fix> fixes() {
        return List.of(Fix.advise(severity() == Severity.LOSSY ? "leave" : "ask-airline"));
    }

    /** What holds for them, in words. */
    public String words() {
        if (wattHours > APPROVED) {
            return "over 160 Wh, which passengers may not carry at all";
        }
        return "over 100 and up to 160 Wh, of which passengers may carry two spares at most, with the airline's approval";
    }
}
