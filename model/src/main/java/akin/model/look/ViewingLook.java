package akin.model.look;

import static akin.model.look.Viewing.DISPLAY_EXPONENT;

import akin.model.colour.Adaptation;
import akin.model.colour.Chromaticity;
import akin.model.colour.Gamut;
import akin.model.colour.Matrix3;
import akin.model.colour.RgbMatrix;
import akin.model.tone.Encoding;

/**
 * The one look that all units of a rig are judged through: scene-linear light to a display, in stages that the open
 * Common LUT Format can hold exactly.
 *
 * <ol>
 *   <li>Scene light goes to a working gamut that holds what cameras' gamuts hold, {@link #WORKING}.
 *   <li>Each channel goes through the tone scale, {@link #tone}: {@code v = y^n / (y^n + k)}, the saturation curve of
 *       Naka and Rushton (Journal of Physiology 185, 1966), used for pictures by Reinhard et al. (ACM Transactions on
 *       Graphics 21, 2002), with {@code y} the light rounded over at black.
 *   <li>A matrix takes the signals to the display's primaries and to {@link #SATURATION}, {@link #toDisplay()}.
 *   <li>Each channel is bent smoothly into what the display can show, and encoded, {@link #finish}.
 * </ol>
 *
 * <p>Two of the three numbers of the tone scale are those of a published system: Rec. ITU-R BT.709 records middle grey
 * at 40.9 %, which BT.1886 shows at 11.7 % of white, and there this scale shows it. With {@code n} of 1 the contrast at
 * grey is then 1.42 (BT.709 with BT.1886: 1.34). A brighter display keeps light and contrast at grey and gains over it.
 * The rest is our own choice, made so that a cube of 65 points follows it closely.
 */
public final class ViewingLook {

    /** The name by which files and reports call this look; a change of any number below is another look. */
    public static final String NAME = "Akin viewing look 1";

    /** Holds the primaries of the gamuts that cameras record, nearly all, so that no channel falls under 0. Own choice. */
    public static final Gamut WORKING = new Gamut(
            "look-1",
            "the working gamut of the look",
            new Chromaticity(0.7347, 0.2653),
            new Chromaticity(0.13, 0.90),
            new Chromaticity(0.08, -0.04),
            new Chromaticity(0.3127, 0.329),
            "own choice; white D65 as in Rec. ITU-R BT.709");

    /** Saturation at the display: mixing signals instead of light raises it, by about what this takes off. Own choice. */
    public static final double SATURATION = 0.8;

    /** Scene light over which black is rounded, so that noise under black leaves no edge. Own choice. */
    static final double BLACK = 0.006;

    /** Share of the signal over which the ends of the display's range are rounded. Own choice. */
    static final double END = 0.02;

    /** Signal of an 18 % grey card. Source: Rec. ITU-R BT.709, opto-electronic transfer function. */
    static final double GREY = 1.099 * StrictMath.pow(Encoding.MIDDLE_GREY, 0.45) - 0.099;

    private static final double CONTRAST = DISPLAY_EXPONENT * (1 - GREY);

    private final Viewing viewing;
    private final Adaptation adaptation;
    private final double exponent;
    private final double half;
    private final Matrix3 toDisplay;

    /**
     * The look on a display.
     *
     * @param adaptation how colours are carried between whites, where a gamut's is not that of the working gamut
     */
    public ViewingLook(Viewing viewing, Adaptation adaptation) {
        this.viewing = viewing;
        this.adaptation = adaptation;
        double grey = GREY / StrictMath.pow(viewing.range(), 1 / DISPLAY_EXPONENT);
        this.exponent = CONTRAST / (DISPLAY_EXPONENT * (1 - grey));
        this.half = StrictMath.pow(Encoding.MIDDLE_GREY, exponent) * (1 - grey) / grey;
        this.toDisplay = saturation(viewing.gamut()).times(RgbMatrix.between(WORKING, viewing.gamut(), adaptation));
    }

    /** Keeps white and the luminance of colours, and takes saturation down to {@link #SATURATION}. */
    private static Matrix3 saturation(Gamut gamut) {
        Matrix3 xyz = RgbMatrix.toXyz(gamut);
        double rest = 1 - SATURATION;
        double r = rest * xyz.at(1, 0);
        double g = rest * xyz.at(1, 1);
        double b = rest * xyz.at(1, 2);
        return Matrix3.ofRows(SATURATION + r, g, b, r, SATURATION + g, b, r, g, SATURATION + b);
    }

    /** The display it is for. */
    public Viewing viewing() {
        return viewing;
    }

    /** How colours are carried between whites. */
    public Adaptation adaptation() {
        return adaptation;
    }

    /** True when a gamut has another white than the working gamut, so that its colours are adapted. */
    public static boolean adapts(Gamut gamut) {
        return !gamut.white().isNear(WORKING.white(), Gamut.SAME_WITHIN);
    }

    /** First stage: linear light of a gamut to linear light of the working gamut. */
    public Matrix3 toWorking(Gamut gamut) {
        return RgbMatrix.between(gamut, WORKING, adaptation);
    }

    /**
     * Second stage: the tone scale.
     *
     * @param light scene-linear light of one channel, 0.18 for middle grey; any number
     * @return 0 to 1, rising with the light
     */
    public double tone(double light) {
        if (light == Double.POSITIVE_INFINITY) {
            return 1;
        }
        double y = StrictMath.pow(over(light, BLACK), exponent);
        return y / (y + half);
    }

    /** Third stage: signals of the working gamut to signals of the display's. */
    public Matrix3 toDisplay() {
        return toDisplay;
    }

    /**
     * Last stage: what the display is sent.
     *
     * @param signal any number; 0 to 1 is what the display can show
     * @return share of the full code range
     */
    public double finish(double signal) {
        double bent = 1 - over(1 - over(signal, END), END);
        return viewing.encode(StrictMath.pow(Math.min(1, Math.max(0, bent)), DISPLAY_EXPONENT));
    }

    /** The number itself where it is well over 0, and ever nearer to 0 the further it is under. */
    private static double over(double x, double width) {
        double root = Math.sqrt(x * x + width * width);
        // Under 0 the plain sum would lose all its digits.
        return x >= 0 ? (x + root) / 2 : width * width / (2 * (root - x));
    }
}
