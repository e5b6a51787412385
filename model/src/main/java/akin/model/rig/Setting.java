package akin.model.rig;

/** A setting that a body can leave to itself. */
public enum Setting {
    /** The shutter. */
    SHUTTER("shutter"),
    /** The iris. */
    STOP("lens.stop"),
    /** The sensitivity. */
    ISO("iso"),
    /** The white balance. */
    WHITE("white");

    private final String key;

    Setting(String key) {
        this.key = key;
    }

    /** Its key under the unit in a rig file. */
    public String key() {
        return key;
    }
}
