package akin.model.rig;

import akin.model.colour.Gamut;
import akin.model.tone.Encoding;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the picture of a unit is judged through on set: a look, as a look-up table made for one encoding, one gamut and
 * one kind of display.
 *
 * @param look name of the look; null when the picture is watched as it is recorded
 * @param encoding the encoding that the table is made for; null when not said
 * @param gamut the gamut that the table is made for; null when not said
 * @param size points along each edge of the table's cube; null when not said
 * @param viewing the encoding of the display that the table is made for; null when not said
 * @param heldBy which device applies the table; null when not said
 * @param accepts sizes that the screen takes, where the screen applies the table; null when not said
 * @param recorded true when the table is recorded with the picture; null when not said
 */
public record Monitor(
        @Nullable String look,
        @Nullable Encoding encoding,
        @Nullable Gamut gamut,
        @Nullable Integer size,
        @Nullable Encoding viewing,
        @Nullable LutHolder heldBy,
        @Nullable List<Integer> accepts,
        @Nullable Boolean recorded) {

    /** The word a rig file writes in place of a look where the picture is watched as it is recorded. */
    public static final String NO_LOOK = "none";

    /** A picture that is watched as it is recorded. */
    public static final Monitor PLAIN = new Monitor(null, null, null, null, null, null, null, null);

    /** True when it is watched through a look. */
    public boolean through() {
        return look != null;
    }
}
