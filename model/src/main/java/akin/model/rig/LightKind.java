package akin.model.rig;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Kinds of light, by whether they may pulse with the mains and by what harm they can do. */
public enum LightKind {
    /** The sun and the sky. */
    DAYLIGHT("daylight"),
    /** Flame: candles, fire. */
    FLAME("flame", Trait.HOT),
    /** Tungsten at full voltage: its glow barely follows the mains. */
    TUNGSTEN("tungsten", Trait.MAINS, Trait.HOT),
    /** Any light whose driver is known to be free of flicker. */
    FLICKER_FREE("flicker-free", Trait.MAINS),
    /** Tungsten on a phase-cut dimmer. */
    DIMMED_TUNGSTEN("dimmed-tungsten", Trait.PULSES, Trait.MAINS, Trait.HOT),
    /** LED on a driver or dimmer that is not known. */
    LED("led", Trait.PULSES, Trait.MAINS),
    /** LED on a mains dimmer. */
    DIMMED_LED("dimmed-led", Trait.PULSES, Trait.MAINS),
    /** LED so strong that it harms eyes and sensors, on a driver that is not known: moving heads, searchlights. */
    HIGH_POWER_LED("high-power-led", Trait.PULSES, Trait.MAINS, Trait.PIERCING),
    /** Laser, of a show, a projector or an instrument. */
    LASER("laser", Trait.MAINS, Trait.PIERCING),
    /** Fluorescent tubes on a magnetic ballast. */
    FLUORESCENT("fluorescent", Trait.PULSES, Trait.MAINS),
    /** Discharge lamps on a magnetic ballast: metal halide, street lights. */
    DISCHARGE("discharge", Trait.PULSES, Trait.MAINS, Trait.HOT);

    private enum Trait {
        PULSES,
        MAINS,
        HOT,
        PIERCING
    }

    private final String word;
    private final Set<Trait> traits;

    LightKind(String word, Trait... traits) {
        this.word = word;
        EnumSet<Trait> set = EnumSet.noneOf(Trait.class);
        set.addAll(List.of(traits));
        this.traits = Collections.unmodifiableSet(set);
    }

    /** The word used in rig files. */
    public String word() {
        return word;
    }

    /** True when it may pulse at twice the mains frequency. */
    public boolean pulses() {
        return traits.contains(Trait.PULSES);
    }

    /** True when it may be fed from the mains. */
    public boolean mains() {
        return traits.contains(Trait.MAINS);
    }

    /** True when it gets hot enough to burn and to set fire. */
    public boolean hot() {
        return traits.contains(Trait.HOT);
    }

    /** True when its beam can destroy eyes and sensors. */
    public boolean piercing() {
        return traits.contains(Trait.PIERCING);
    }

    @Override
    public String toString() {
        return word;
    }
}
