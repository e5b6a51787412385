package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.exposure.Light;
import akin.model.finding.WhereFound;
import akin.model.gear.Profile;
import akin.model.quantity.Iso;
import akin.model.quantity.Stops;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import akin.model.tone.TonePlacement;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How many stops a unit holds above and below middle grey, as rated.
 *
 * @param unitName name of the unit
 * @param placement encoding, ISO, the base that works at it, clip and floor at that base
 * @param headroom stops from middle grey to clip: the sensor's, shifted by ISO over base, but no more than the encoding
 *     holds
 * @param footroom stops from middle grey down to the usable floor; null when not known
 */
public record ToneRange(
        String unitName,
        TonePlacement placement,
        double headroom,
        @Nullable Double footroom) implements Derived {

    /** The tone range, or what is missing for it. */
    public static List<Object> derive(Unit unit) {
        return require(Inputs.of(ToneRange.class, unit), unit).derive(() -> of(unit));
    }

    /** Names what is needed of a unit for its tone range. */
    static Inputs require(Inputs inputs, Unit unit) {
        Profile profile = writing(unit);
        if (profile == null && unit.profile() != null) {
            // The output forces an encoding that no profile of the body writes: nothing says how it is to be rated.
            return inputs.body("profiles", WhereFound.TEST, null);
        }
        IsoBases.require(inputs, unit, profile);
        if (profile != null) {
            inputs.body("profiles." + profile.id() + ".encoding", WhereFound.MANUAL, unit.encoding());
            inputs.body("profiles." + profile.id() + ".headroom", WhereFound.TEST, profile.headroom());
        }
        return inputs;
    }

    /** The tone range of a unit, or null when something for it is missing. */
    static @Nullable ToneRange known(Unit unit) {
        return derive(unit).get(0) instanceof ToneRange range ? range : null;
    }

    private static ToneRange of(Unit unit) {
        Profile profile = requireNonNull(writing(unit));
        Encoding encoding = requireNonNull(unit.encoding());
        int iso = requireNonNull(unit.iso()).value();
        double clip = Encoding.MIDDLE_GREY
                * Light.ratio(requireNonNull(profile.headroom()).value());
        int base = IsoBases.of(unit, profile).working().value();
        TonePlacement placement = TonePlacement.of(encoding, iso, base).withSensorClip(clip);
        Stops footroom = profile.footroom();
        if (footroom != null) {
            placement = placement.withFloor(footroom.value());
        }
        return new ToneRange(
                unit.name(),
                placement,
                placement.headroomStops().orElseThrow(),
                footroom == null ? null : placement.footroomStops().orElseThrow());
    }

    /** The headroom that a unit would have at another ISO; null when something for it is missing. */
    static @Nullable Double headroomAt(Unit unit, Iso iso) {
        TonePlacement placement = placementAt(unit, iso);
        return placement == null ? null : (Double) placement.headroomStops().orElseThrow();
    }

    /** Where a unit would put what it sees at another ISO; null when something for it is missing. */
    static @Nullable TonePlacement placementAt(Unit unit, Iso iso) {
        ToneRange range = known(unit);
        if (range == null) {
            return null;
        }
        TonePlacement now = range.placement();
        int base = new IsoBases(
                        unit.name(), iso, IsoBases.of(unit, writing(unit)).bases())
                .working()
                .value();
        return new TonePlacement(now.encoding(), iso.value(), base, now.sensorClipAtBase(), now.floorStopsAtBase());
    }

    /**
     * The profile whose facts hold for what ends up in the file: the one set, unless the output forces an encoding that
     * another profile of the body writes.
     */
    static @Nullable Profile writing(Unit unit) {
        Profile set = unit.profile();
        Encoding encoding = unit.encoding();
        if (set == null || encoding == null || encoding.id().equals(set.encoding())) {
            return set;
        }
        return unit.body().profiles().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .filter(profile -> encoding.id().equals(profile.encoding()))
                .findFirst()
                .orElse(null);
    }

    /** Stops from the usable floor to clip; null when the floor is not known. */
    public @Nullable Double whole() {
        return footroom == null ? null : headroom + footroom;
    }

    /** The ISO it is rated at. */
    public Iso iso() {
        return new Iso((int) placement.exposureIndex());
    }

    /** How many stops more than another it holds over middle grey; negative for fewer. */
    public double headroomFrom(ToneRange other) {
        return headroom - other.headroom;
    }
}
