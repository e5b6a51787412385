package akin.model.timing;

/**
 * The published limit for flashing pictures, for people with photosensitive epilepsy.
 *
 * <p>No more than three flashes within any one second. Source: W3C, Understanding WCAG 2.0, "Three Flashes or Below
 * Threshold" (success criterion 2.3.1), which cites Rec. ITU-R BT.1702. Both also know limits of area and contrast, which
 * can only be measured; whether light on a set is safe is for production safety to decide.
 */
public final class Flashing {

    /** Flashes in any one second that the guideline allows. */
    public static final int MOST_IN_A_SECOND = 3;

    private Flashing() {}

    /**
     * Whether so many flashes are more than the guideline allows.
     *
     * <p>Check values: 3 → false, 3.1 → true.
     *
     * @param flashesPerSecond flashes a second, 0 or above
     * @return true if there are more than {@link #MOST_IN_A_SECOND}
     * @throws IllegalArgumentException if the argument is below 0 or not a number
     */
    public static boolean exceeds(double flashesPerSecond) {
        return Require.notNegative("flashes", flashesPerSecond, "a second") > MOST_IN_A_SECOND;
    }
}
