package akin.model.gear;

import akin.model.quantity.Mass;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.Percent;
import akin.model.quantity.Power;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A camera body as its maker describes it.
 *
 * @param id the word a rig file uses for it
 * @param mount id of the lens mount
 * @param shutter how the shutter is set and what it offers
 * @param iso the sensitivities it offers
 * @param white the white balances it offers
 * @param tintScale name of the scale that its tint is written on; tints compare only on the same scale
 * @param internalNd neutral densities built in, without the clear position; empty when known to have none
 * @param stabilisation what stabilises the picture in the body
 * @param steadyTravel how far sensor stabilisation moves the sensor from the centre, in millimetres
 * @param steadyCrop how much of the width and height electronic stabilisation cuts away, in per cent
 * @param rolls true when the picture is read out line by line
 * @param irCut true when infra-red is blocked well enough for dense filters without a special one
 * @param aids the exposure aids it shows, most exact first
 * @param lutSizes points along an edge of the look-up tables that it takes for watching; empty when it takes none
 * @param modes the ways the sensor can be read, by id
 * @param profiles the recording profiles, by id
 * @param codecs what it can record inside, by id
 * @param outputs its picture connectors, by id
 * @param clips how it writes clips
 * @param clock what it counts timecode by
 * @param keepsSettings true when it still knows its settings after it was switched off
 * @param firmware version that these facts were taken from
 * @param power what it draws at most
 * @param mass its mass, without battery and lens
 * @param source where these facts come from
 */
public record Body(
        String id,
        @Nullable String name,
        @Nullable String maker,
        @Nullable String mount,
        @Nullable ShutterMenu shutter,
        @Nullable IsoMenu iso,
        @Nullable WhiteMenu white,
        @Nullable String tintScale,
        @Nullable List<NeutralDensity> internalNd,
        @Nullable Stabilisation stabilisation,
        @Nullable Double steadyTravel,
        @Nullable Percent steadyCrop,
        @Nullable Boolean rolls,
        @Nullable Boolean irCut,
        @Nullable List<Aid> aids,
        @Nullable List<Integer> lutSizes,
        Map<String, Mode> modes,
        Map<String, Profile> profiles,
        Map<String, Codec> codecs,
        Map<String, Output> outputs,
        @Nullable Clips clips,
        @Nullable Clock clock,
        @Nullable Boolean keepsSettings,
        @Nullable String firmware,
        @Nullable Power power,
        @Nullable Mass mass,
        @Nullable String source) {

    /** The dotted path of one of its facts, such as {@code gear.bodies.x.modes.y.readout}. */
    public String path(String key) {
        return "gear.bodies." + id + "." + key;
    }

    /** The name people call it by: its name, or its id where none is given. */
    public String called() {
        return name == null ? id : name;
    }
}
