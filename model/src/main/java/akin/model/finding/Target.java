package akin.model.finding;

/**
 * A level on a unit's own exposure aid, which is no fault: where an 18 % card must sit, or highlights clip.
 *
 * @param unit name of the unit (the camera)
 * @param name kebab-case name, {@link #MIDDLE_GREY} or {@link #CLIP}
 * @param value the level
 * @param scale what the number is read on, such as {@code %} or {@code code of 1023}
 * @param aid the aid to read it on, in words
 */
public record Target(String unit, String name, double value, String scale, String aid) {

    /** The level of an 18 % grey card. */
    public static final String MIDDLE_GREY = "middle-grey";

    /** The level at which highlights clip. */
    public static final String CLIP = "clip";

    /** What it is the level of, in words. */
    public String what() {
        return name.equals(MIDDLE_GREY) ? "18 % grey" : name;
    }
}
