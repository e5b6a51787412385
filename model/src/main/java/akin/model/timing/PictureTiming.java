package akin.model.timing;

import akin.model.quantity.FrameRate;
import akin.model.quantity.PictureSize;
import java.math.BigInteger;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A picture with the blanking around it, as a clocked link carries it. Source: the timings of CTA-861 as edid-decode lists them.
 *
 * @param pixels pixels of a line, blanking included
 * @param lines lines of a frame, blanking included
 */
public record PictureTiming(int pixels, int lines) {

    /** Pixels of a line by whole frames a second; rates of the 1000/1001 family have the timing of the whole rate. */
    private static final Map<Integer, Integer> OF_720 = Map.of(24, 3300, 25, 3960, 30, 3300, 50, 1980, 60, 1650);

    private static final Map<Integer, Integer> OF_1080 =
            Map.of(24, 2750, 25, 2640, 30, 2200, 48, 2750, 50, 2640, 60, 2200, 100, 2640, 120, 2200);

    private static final Map<Integer, Integer> OF_2160 =
            Map.of(24, 5500, 25, 5280, 30, 4400, 48, 5500, 50, 5280, 60, 4400);

    private static final Map<Integer, Integer> OF_UHD = Map.of(100, 5280, 120, 4400);

    /**
     * The timing of a picture.
     *
     * @param picture pixels without blanking
     * @return none where the standard lists no timing for this picture at this rate
     */
    public static Optional<PictureTiming> of(PictureSize picture, FrameRate rate) {
        BigInteger[] parts = rate.fraction()
                .getNumerator()
                .divideAndRemainder(rate.fraction().getDenominator());
        int whole = parts[0].intValue() + (parts[1].signum() == 0 ? 0 : 1);
        return switch (picture.toString()) {
            case "1280x720" -> timing(OF_720.get(whole), 750);
            case "1920x1080" -> timing(OF_1080.get(whole), 1125);
            case "3840x2160" -> timing(OF_2160.getOrDefault(whole, OF_UHD.get(whole)), 2250);
            case "4096x2160" -> timing(OF_2160.get(whole), 2250);
            default -> Optional.empty();
        };
    }

    private static Optional<PictureTiming> timing(@Nullable Integer pixels, int lines) {
        return pixels == null ? Optional.empty() : Optional.of(new PictureTiming(pixels, lines));
    }

    /** Pixels a second, blanking included, in MHz. */
    public double megahertz(FrameRate rate) {
        return pixels * (double) lines * rate.perSecond() / 1e6;
    }
}
