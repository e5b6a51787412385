package akin.model.rig;

import akin.model.colour.Gamut;
import akin.model.gear.Body;
import akin.model.gear.Mode;
import akin.model.gear.Profile;
import akin.model.gear.Stabilisation;
import akin.model.quantity.ColourTemperature;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Iso;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.PictureSize;
import akin.model.quantity.Shutter;
import akin.model.quantity.Tint;
import akin.model.tone.Encoding;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One camera as it will stand on set: body, mode, lens, filters, recorder and settings, with every word of the rig file
 * already looked up.
 *
 * @param name the letter or word the rig file calls it by
 * @param hero true for the unit that the others are matched to
 * @param body the body
 * @param mode the mode the body is in
 * @param profile the recording profile; null when not said
 * @param encoding the encoding that ends up in the file: the profile's, or the one its output forces; null when not known
 * @param gamut the gamut that ends up in the file, likewise
 * @param rate recorded frame rate
 * @param shutter shutter setting; null when not said or automatic
 * @param iso sensitivity; null when not said or automatic
 * @param lens the lens on it; null when not said
 * @param filters neutral densities in front of or behind the lens; empty when said to be none; null when not said
 * @param variableNd true when one of the filters is a variable one, set to the density given; null when not said
 * @param white white balance; null when not said or automatic
 * @param tint tint on the body's own scale
 * @param stabilisation the stabilisation switched on; null when not said
 * @param recording where the picture is written
 * @param media what it writes to; null when not said
 * @param clipNames what the names of its clips begin with; null when not said
 * @param sync how it is kept in step with the others
 * @param automatic settings that the body is left to choose
 * @param intents reasons given for settings that would otherwise be faults, by key under the unit
 * @param build what drives and carries it; null when not said
 * @param monitor what its picture is judged through; null when not said
 * @param keeps what the crew wants left as it is planned
 */
public record Unit(
        String name,
        boolean hero,
        Body body,
        Mode mode,
        @Nullable Profile profile,
        @Nullable Encoding encoding,
        @Nullable Gamut gamut,
        FrameRate rate,
        @Nullable Shutter shutter,
        @Nullable Iso iso,
        @Nullable FittedLens lens,
        @Nullable List<NeutralDensity> filters,
        @Nullable Boolean variableNd,
        @Nullable ColourTemperature white,
        @Nullable Tint tint,
        @Nullable Stabilisation stabilisation,
        Recording recording,
        @Nullable MediaPlan media,
        @Nullable String clipNames,
        SyncPlan sync,
        Set<Setting> automatic,
        Map<String, String> intents,
        @Nullable Build build,
        @Nullable Monitor monitor,
        Set<Knob> keeps) {

    /** The dotted path of one of its keys, such as {@code units.B.shutter}. */
    public String path(String key) {
        return "units." + name + "." + key;
    }

    /**
     * Pixels that end up in the file: those of the output that feeds the recorder where it sends others than the mode; null
     * when not known.
     */
    public @Nullable PictureSize recordedPicture() {
        PictureSize sent =
                recording.output() == null ? null : recording.output().picture();
        return sent == null ? mode.picture() : sent;
    }

    /** True when the rig file gives a reason for this setting, by its key under the unit. */
    public boolean intends(String key) {
        return intents.containsKey(key);
    }

    /** True when the body chooses this setting by itself. */
    public boolean leaves(Setting setting) {
        return automatic.contains(setting);
    }
}
