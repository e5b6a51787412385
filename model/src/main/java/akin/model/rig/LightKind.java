package akin.model.rig;

/** Kinds of light, by whether they may pulse with the mains. */
public enum LightKind {
    /** The sun and the sky. */
    DAYLIGHT("daylight", false),
    /** Flame: candles, fire. */
    FLAME("flame", false),
    /** Tungsten at full voltage: its glow barely follows the mains. */
    TUNGSTEN("tungsten", false),
    /** Any light whose driver is known to be free of flicker. */
    FLICKER_FREE("flicker-free", false),
    /** Tungsten on a phase-cut dimmer. */
    DIMMED_TUNGSTEN("dimmed-tungsten", true),
    /** LED on a driver or dimmer that is not known. */
    LED("led", true),
    /** LED on a mains dimmer. */
    DIMMED_LED("dimmed-led", true),
    /** Fluorescent tubes on a magnetic ballast. */
    FLUORESCENT("fluorescent", true),
    /** Discharge lamps on a magnetic ballast: metal halide, street lights. */
    DISCHARGE("discharge", true);

    private final String word;
    private final boolean pulses;

    LightKind(String word, boolean pulses) {
        this.word = word;
        this.pulses = pulses;
    }

    /** The word used in rig files. */
    public String word() {
        return word;
    }

    /** True when it may pulse at twice the mains frequency. */
    public boolean pulses() {
        return pulses;
    }

    @Override
    public String toString() {
        return word;
    }
}
