package akin.model.rig;

import java.util.Collection;

/** What can be set otherwise on a unit without other bodies, adapters or recorders. */
public enum Knob {
    /** The mode of the body. */
    MODE("mode"),
    /** The recording profile. */
    PROFILE("profile"),
    /** What is written, inside or by the recorder. */
    CODEC("codec"),
    /** Everything about the lens: which one, its focal length and its stop. */
    LENS("lens"),
    /** Which lens is on it. */
    LENS_USE("lens.use"),
    /** The focal length. */
    FOCAL("lens.focal"),
    /** The iris. */
    STOP("lens.stop"),
    /** The shutter. */
    SHUTTER("shutter"),
    /** The sensitivity. */
    ISO("iso"),
    /** The neutral densities. */
    FILTERS("filters"),
    /** The white balance. */
    WHITE("white");

    private final String word;

    Knob(String word) {
        this.word = word;
    }

    /** Its key under the unit in a rig file, and the word used under {@code keep}. */
    public String word() {
        return word;
    }

    /** True when one of these is this one, or the lens of which it is a part. */
    public boolean among(Collection<Knob> knobs) {
        return knobs.contains(this) || (word.startsWith(LENS.word + ".") && knobs.contains(LENS));
    }

    @Override
    public String toString() {
        return word;
    }
}
