package akin.model.look;

import akin.model.colour.Gamut;
import akin.model.tone.Encoding;
import java.util.Objects;

/**
 * The display that a picture is judged on.
 *
 * @param encoding what the display is sent: a curve for a display, or of absolute light
 * @param gamut the primaries and the white of the display
 * @param peak luminance of the display's white in cd/m2, for a curve of absolute light; of no effect for another
 */
public record Viewing(Encoding encoding, Gamut gamut, double peak) {

    /** Id of the encoding of a display unless another is asked for: ITU-R BT.1886. */
    public static final String USUAL = "bt1886";

    /** Luminance in cd/m2 of the white of a standard-range display. Source: Rec. ITU-R BT.2035 asks for 100. From memory. */
    public static final double STANDARD_WHITE = 100;

    /** The exponent of the display, by which light follows the signal. Source: Rec. ITU-R BT.1886. */
    public static final double DISPLAY_EXPONENT = 2.4;

    /** @throws IllegalArgumentException when a display cannot be sent this, or its peak is below a standard white */
    public Viewing {
        Objects.requireNonNull(gamut, "gamut");
        if (!shows(encoding)) {
            throw new IllegalArgumentException(encoding.name() + " is no encoding that a display's light follows from");
        }
        if (!(peak >= STANDARD_WHITE && peak <= 10_000)) {
            throw new IllegalArgumentException(
                    "the peak of a display is " + STANDARD_WHITE + " to 10000 cd/m2, not " + peak);
        }
    }

    /** True when the light of a display follows from the code values of this encoding, channel by channel. */
    public static boolean shows(Encoding encoding) {
        return absolute(encoding) || encoding.kind() == Encoding.Kind.DISPLAY;
    }

    private static boolean absolute(Encoding encoding) {
        return encoding.referenceWhite() != null;
    }

    /** How many times brighter than a standard white the display gets. */
    double range() {
        return absolute(encoding) ? peak / STANDARD_WHITE : 1;
    }

    /**
     * The code value for light.
     *
     * @param share light as a share of the brightest that the display shows, 0 to 1
     * @return share of the full code range
     */
    double encode(double share) {
        Double white = encoding.referenceWhite();
        return encoding.encode(white == null ? share : share * peak / white);
    }
}
