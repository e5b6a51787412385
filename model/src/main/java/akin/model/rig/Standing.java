package akin.model.rig;

/** Where a unit is held, by what falls on whom when it lets go. */
public enum Standing {
    /** On its own legs, on a shoulder, in hands. */
    GROUND("ground"),
    /** Over people or over a place where people pass. */
    OVERHEAD("overhead"),
    /** On or in a vehicle, a boat, an aircraft without crew. */
    VEHICLE("vehicle");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    /** The word used in rig files. */
    public String word() {
        return word;
    }

    @Override
    public String toString() {
        return word;
    }
}
