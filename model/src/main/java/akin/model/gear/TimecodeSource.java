package akin.model.gear;

/** Where the timecode of a unit comes from. */
public enum TimecodeSource {
    /** A small generator that stays on the body and feeds it all day. */
    BOX("box", true),
    /** The body's own clock, set to a common one and left to run. */
    JAMMED("jammed", true),
    /** A generator recorded on a sound track. */
    TRACK("track", true),
    /** The body's own clock, set to nothing. */
    OWN("own", false),
    /** None. */
    NONE("none", false);

    private final String word;
    private final boolean common;

    TimecodeSource(String word, boolean common) {
        this.word = word;
        this.common = common;
    }

    /** True when it is the same time on every unit that is given it. */
    public boolean common() {
        return common;
    }

    /** The word used in rig and gear files. */
    @Override
    public String toString() {
        return word;
    }
}
