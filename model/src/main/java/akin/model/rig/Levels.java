package akin.model.rig;

import java.util.Arrays;
import java.util.List;

/**
 * The level of an even patch as it was read, as shares of the full code range.
 *
 * @param red share of the full code range
 * @param green share of the full code range
 * @param blue share of the full code range
 * @param give how far the truth may lie to either side of what was read: half a step of how it was written, or what the
 *     crew says of its aid
 * @param coloured true when the three were read each for itself; false when one level was read, of brightness alone
 */
public record Levels(double red, double green, double blue, double give, boolean coloured) {

    /** @throws IllegalArgumentException when a level is not finite, or the give is negative */
    public Levels {
        if (!Double.isFinite(red + green + blue) || !(give >= 0)) {
            throw new IllegalArgumentException("levels must be finite, and their give not negative");
        }
    }

    /** One level, of brightness alone. */
    public static Levels of(double level, double give) {
        return new Levels(level, level, level, give, false);
    }

    /** Red, green and blue. */
    public double[] all() {
        return new double[] {red, green, blue};
    }

    /** The highest of the three. */
    public double highest() {
        return Arrays.stream(all()).max().orElseThrow();
    }

    /** The same patch with one channel, 0 to 2, read so much higher. */
    public Levels moved(int channel, double by) {
        return new Levels(
                red + (channel == 0 ? by : 0),
                green + (channel == 1 ? by : 0),
                blue + (channel == 2 ? by : 0),
                give,
                coloured);
    }

    /** The levels of several patches channel by channel, averaged; the widest give. */
    public static Levels mean(List<Levels> levels) {
        return new Levels(
                levels.stream().mapToDouble(Levels::red).average().orElseThrow(),
                levels.stream().mapToDouble(Levels::green).average().orElseThrow(),
                levels.stream().mapToDouble(Levels::blue).average().orElseThrow(),
                levels.stream().mapToDouble(Levels::give).max().orElseThrow(),
                levels.stream().allMatch(Levels::coloured));
    }
}
