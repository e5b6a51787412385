package akin.model.rig;

import akin.model.colour.Gamut;
import akin.model.gear.Codec;
import akin.model.gear.Mode;
import akin.model.gear.Profile;
import akin.model.quantity.ColourTemperature;
import akin.model.quantity.Iso;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.Shutter;
import akin.model.tone.Encoding;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How the {@link Knob}s of a unit are set. What is null is not said, as in a {@link Unit}.
 *
 * @param mode the mode of the body
 * @param profile the recording profile
 * @param encoding the encoding that then ends up in the file
 * @param gamut the gamut that then ends up in the file
 * @param codec what is written
 * @param lens the lens, its focal length and its stop
 * @param shutter the shutter
 * @param iso the sensitivity
 * @param filters the neutral densities
 * @param white the white balance
 * @param automatic settings that the body is left to choose
 */
public record Settings(
        Mode mode,
        @Nullable Profile profile,
        @Nullable Encoding encoding,
        @Nullable Gamut gamut,
        @Nullable Codec codec,
        @Nullable FittedLens lens,
        @Nullable Shutter shutter,
        @Nullable Iso iso,
        @Nullable List<NeutralDensity> filters,
        @Nullable ColourTemperature white,
        Set<Setting> automatic) {

    /** Copies the lists. */
    public Settings {
        filters = filters == null ? null : List.copyOf(filters);
        automatic = automatic.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(automatic));
    }

    /** How a unit is set. */
    public static Settings of(Unit unit) {
        return new Settings(
                unit.mode(),
                unit.profile(),
                unit.encoding(),
                unit.gamut(),
                unit.recording().codec(),
                unit.lens(),
                unit.shutter(),
                unit.iso(),
                unit.filters(),
                unit.white(),
                unit.automatic());
    }

    /** A unit set like this, under a name of its own. */
    public Unit on(Unit unit, String name, @Nullable String clipNames) {
        Recording way = unit.recording();
        return new Unit(
                name,
                unit.hero(),
                unit.body(),
                mode,
                profile,
                encoding,
                gamut,
                unit.rate(),
                shutter,
                iso,
                lens,
                filters,
                unit.variableNd(),
                white,
                unit.tint(),
                unit.stabilisation(),
                new Recording(
                        way.recorder(),
                        way.output(),
                        codec,
                        way.reads(),
                        way.input(),
                        way.cable(),
                        way.overlays(),
                        way.startStop()),
                unit.media(),
                clipNames,
                unit.sync(),
                automatic,
                unit.intents(),
                unit.build(),
                unit.monitor(),
                unit.keeps());
    }

    /** A unit set like this. */
    public Unit on(Unit unit) {
        return on(unit, unit.name(), unit.clipNames());
    }
}
