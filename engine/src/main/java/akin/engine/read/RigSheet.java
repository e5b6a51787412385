package akin.engine.read;

import akin.model.gear.SignalRange;
import akin.model.gear.Stabilisation;
import akin.model.gear.TimecodeSource;
import akin.model.quantity.AngularSpeed;
import akin.model.quantity.Aperture;
import akin.model.quantity.ColourTemperature;
import akin.model.quantity.FrameRate;
import akin.model.quantity.Frequency;
import akin.model.quantity.Iso;
import akin.model.quantity.Length;
import akin.model.quantity.NeutralDensity;
import akin.model.quantity.PictureSize;
import akin.model.quantity.Shutter;
import akin.model.quantity.Timespan;
import akin.model.quantity.Tint;
import akin.model.rig.Build;
import akin.model.rig.Cable;
import akin.model.rig.Dimming;
import akin.model.rig.Knob;
import akin.model.rig.LightKind;
import akin.model.rig.LutHolder;
import akin.model.rig.Match;
import akin.model.rig.Screen;
import akin.model.rig.SyncPlan;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A rig file as it is written: words not yet looked up in the catalogue.
 *
 * @param akin version of the format
 * @param production what the whole production has agreed
 * @param match which unit is the hero, and how close the match has to be
 * @param tolerances limits that this production sets otherwise than its profile, by key
 * @param scenes scenes, as far as they bear on matching
 * @param kit what is on the van
 * @param gear gear that only this rig file knows
 * @param units the cameras as they will stand on set, by name
 * @param waivers agreements that findings stay as they are
 * @param readings what was read of test shots
 */
public record RigSheet(
        @JsonProperty(required = true) Integer akin,
        @JsonProperty(required = true) ProductionSheet production,
        @JsonProperty(required = true) MatchSheet match,
        Map<String, Node.Scalar> tolerances,
        @Nullable List<SceneSheet> scenes,
        @Nullable KitSheet kit,
        @Nullable GearSheet gear,
        @JsonProperty(required = true) Map<String, UnitSheet> units,
        @Nullable List<WaiverSheet> waivers,
        @Nullable ReadingsSheet readings) {

    /** The format version that this program reads. */
    public static final int VERSION = 1;

    /** What the whole production has agreed. */
    public record ProductionSheet(
            @JsonProperty(required = true) String name,
            @JsonProperty(required = true) FrameRate rate,
            @Nullable Frequency mains,
            @Nullable Timespan jamEvery,
            @Nullable DeliverySheet delivery) {}

    /** What the production is delivered as. */
    public record DeliverySheet(
            @Nullable PictureSize picture,
            @Nullable FrameRate rate,
            @Nullable String encoding) {}

    /** Which unit is the hero, and how close the match has to be. */
    public record MatchSheet(
            @JsonProperty(required = true) String hero,
            @Nullable String tolerance,
            Match.@Nullable ViewAxis view) {}

    /** A scene. */
    public record SceneSheet(
            @JsonProperty(required = true) String name,
            @Nullable Length subjectDistance,
            Map<String, Length> distances,
            @Nullable List<LightKind> lights,
            @Nullable AngularSpeed pan,
            @Nullable Frequency mains,
            @Nullable List<Screen> screens,
            @Nullable List<Dimming> dimming,
            @Nullable Frequency flashes,
            @Nullable TakesSheet takes,
            @Nullable List<String> units) {}

    /** How much of a scene each unit is planned to record. */
    public record TakesSheet(
            @Nullable Timespan longest, @Nullable Timespan total) {}

    /** What is on the van. */
    public record KitSheet(
            @Nullable List<NeutralDensity> filters,
            @Nullable List<String> lenses,
            @Nullable List<String> adapters) {}

    /** A camera as it will stand on set. */
    public record UnitSheet(
            @JsonProperty(required = true) String body,
            @JsonProperty(required = true) String mode,
            @Nullable FrameRate rate,
            @Nullable String profile,
            @Nullable LensSheet lens,
            @Nullable Choice<Shutter> shutter,
            @Nullable Choice<Iso> iso,
            @Nullable List<NeutralDensity> filters,
            @Nullable Boolean variableNd,
            @Nullable Choice<ColourTemperature> white,
            @Nullable Tint tint,
            @Nullable Stabilisation stabilisation,
            @Nullable RecorderSheet recorder,
            @Nullable String codec,
            @Nullable MediaPlanSheet media,
            @Nullable String clipNames,
            @Nullable TimecodeSheet timecode,
            @Nullable SoundSheet sound,
            @Nullable String clock,
            @Nullable LocalDate clockDate,
            @Nullable Build build,
            @Nullable MonitorSheet monitor,
            @Nullable List<Knob> keep,
            Map<String, String> intent) {}

    /** What the picture of a unit is judged through. */
    public record MonitorSheet(
            @JsonProperty(required = true) String look,
            @Nullable String encoding,
            @Nullable String gamut,
            @Nullable Integer size,
            @Nullable String viewing,
            @Nullable LutHolder heldBy,
            @Nullable List<Integer> accepts,
            @Nullable Boolean recorded) {}

    /** What a unit writes to. */
    public record MediaPlanSheet(
            @JsonProperty(required = true) String use,
            @JsonProperty(required = true) Integer count) {}

    /** The timecode of a unit. */
    public record TimecodeSheet(
            @Nullable TimecodeSource source,
            SyncPlan.@Nullable Counting counting,
            @Nullable Double boxPpm) {}

    /** The sound that a unit records. */
    public record SoundSheet(
            @Nullable Frequency rate, @Nullable Boolean scratch) {}

    /** A lens on a unit. */
    public record LensSheet(
            @JsonProperty(required = true) String use,
            @Nullable Length focal,
            @Nullable Choice<Aperture> stop,
            @Nullable String adapter) {}

    /** An external recorder on a unit. */
    public record RecorderSheet(
            @JsonProperty(required = true) String use,
            @Nullable String output,
            @Nullable String codec,
            @Nullable SignalRange reads,
            @Nullable String input,
            @Nullable Cable cable,
            @Nullable Boolean overlays,
            @Nullable Boolean startStop) {}

    /** An agreement that a finding stays as it is. */
    public record WaiverSheet(
            @JsonProperty(required = true) String rule,
            @Nullable List<String> units,
            @JsonProperty(required = true) String because,
            @Nullable LocalDate until) {}
}
