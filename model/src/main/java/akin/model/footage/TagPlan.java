package akin.model.footage;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which tags of ITU-T H.273 a file in a given encoding and gamut carries, in the words that ffprobe prints. Camera logs and
 * camera gamuts have no code point there: the right tag for them is none.
 *
 * <p>Source: ITU-T H.273, tables 2 to 4 (from memory; the words are checked against ffmpeg run live). Transfer
 * characteristics 1, 6, 14 and 15 are one function there.
 */
public final class TagPlan {

    private static final Set<String> ONE_FUNCTION = Set.of("bt709", "smpte170m", "bt2020-10", "bt2020-12");

    /** By the id of an encoding. */
    private static final Map<String, String> TRANSFER =
            Map.of("bt709", "bt709", "bt1886", "bt709", "pq", "smpte2084", "hlg", "arib-std-b67", "linear", "linear");

    /** By the id of a gamut. */
    private static final Map<String, String> PRIMARIES = Map.of("bt709", "bt709", "bt2020", "bt2020");

    private static final Set<String> HIGH_RANGE = Set.of("smpte2084", "arib-std-b67");
    private static final List<String> OF_SMALL_PICTURES = List.of("smpte170m", "bt470bg", "fcc", "smpte240m");

    private TagPlan() {}

    /** The transfer tag of an encoding; {@link #NONE} where H.273 has none for it. */
    public static String transfer(String encoding) {
        return TRANSFER.getOrDefault(encoding, NONE);
    }

    /** The primaries tag of a gamut; {@link #NONE} where H.273 has none for it. */
    public static String primaries(String gamut) {
        return PRIMARIES.getOrDefault(gamut, NONE);
    }

    /** The matrix tag that goes with primaries: that of BT.2020 with its own, that of BT.709 with all others. */
    public static String matrix(String primaries) {
        return primaries.equals("bt2020") ? "bt2020nc" : "bt709";
    }

    /** What is said where H.273 has no code point. */
    public static final String NONE = "none";

    /** True when two transfer tags mean one function. */
    public static boolean sameTransfer(String a, String b) {
        return a.equals(b) || (ONE_FUNCTION.contains(a) && ONE_FUNCTION.contains(b));
    }

    /**
     * True when a matrix tag fits. With primaries that H.273 has no code point for, either of the two of large pictures is
     * usual; RGB needs none.
     */
    public static boolean sameMatrix(String planned, boolean primariesNamed, String found) {
        if (found.equals("gbr")) {
            return true;
        }
        boolean wide = found.equals("bt2020nc") || found.equals("bt2020c");
        return primariesNamed
                ? (planned.equals("bt2020nc") ? wide : found.equals(planned))
                : !OF_SMALL_PICTURES.contains(found);
    }

    /** True when a transfer tag says that the picture is for a high-dynamic-range display. */
    public static boolean highRange(String transfer) {
        return HIGH_RANGE.contains(transfer);
    }
}
