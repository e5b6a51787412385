package akin.model.tone;

import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Where a camera puts middle grey, and how many stops it leaves above and below, at the speed it is rated at.
 *
 * <p>A sensor's clip is a fixed amount of light on the sensor. Rating it at an exposure index below the speed its facts
 * hold at gives each scene tone more light, so clip sits fewer stops above middle grey and the noise floor more stops
 * below; rating above does the reverse. The shift is {@code log2(EI / base)} stops, until the curve's own ceiling limits
 * the highlights. Common practice; the published clip levels of ARRI LogC3 at eleven exposure indices follow it (linear
 * light at clip is proportional to EI up to the curve's ceiling).
 *
 * @param encoding the curve recorded with
 * @param exposureIndex speed the scene is exposed for, ISO
 * @param baseIso speed at which {@code sensorClipAtBase} and {@code floorStopsAtBase} hold, ISO
 * @param sensorClipAtBase scene-linear light at which the sensor clips when exposed for {@code baseIso}; null when not
 *     known
 * @param floorStopsAtBase stops from middle grey down to the noise floor when exposed for {@code baseIso}; null when not
 *     known
 */
public record TonePlacement(
        Encoding encoding,
        double exposureIndex,
        double baseIso,
        @Nullable Double sensorClipAtBase,
        @Nullable Double floorStopsAtBase) {

    public TonePlacement {
        Objects.requireNonNull(encoding, "encoding");
        requirePositive("exposure index", exposureIndex);
        requirePositive("base ISO", baseIso);
        if (sensorClipAtBase != null) {
            requirePositive("sensor clip", sensorClipAtBase);
        }
        if (floorStopsAtBase != null && !Double.isFinite(floorStopsAtBase)) {
            throw new IllegalArgumentException("noise floor must be a finite number of stops, was " + floorStopsAtBase);
        }
    }

    /** A placement of which neither the sensor's clip nor its noise floor is known. */
    public static TonePlacement of(Encoding encoding, double exposureIndex, double baseIso) {
        return new TonePlacement(encoding, exposureIndex, baseIso, null, null);
    }

    public TonePlacement withSensorClip(double sceneLinearAtBase) {
        return new TonePlacement(encoding, exposureIndex, baseIso, sceneLinearAtBase, floorStopsAtBase);
    }

    public TonePlacement withFloor(double stopsUnderGreyAtBase) {
        return new TonePlacement(encoding, exposureIndex, baseIso, sensorClipAtBase, stopsUnderGreyAtBase);
    }

    /** Middle grey as a share of the full code range. */
    public double middleGrey() {
        return encoding.middleGrey();
    }

    /** Middle grey as per cent of the legal range, as a waveform of unscaled code values shows it. */
    public double middleGreyLegalPercent() {
        return 100 * SignalLevel.fullToLegal(middleGrey());
    }

    /** Middle grey as a 10-bit code value, not rounded. */
    public double middleGreyCode10() {
        return SignalLevel.code10(middleGrey());
    }

    /** Stops that highlights gain against the base, {@code log2(EI / base)}: negative when rated below base. */
    public double highlightShiftStops() {
        return Stops.between(baseIso, exposureIndex);
    }

    /**
     * Stops between middle grey and clip, {@code log2(min(curve ceiling, sensor clip x EI / base) / 0.18)}. Empty when
     * the sensor's clip is not known, since the sensor may clip below the curve's ceiling.
     */
    public OptionalDouble headroomStops() {
        return sensorClipAtBase == null ? OptionalDouble.empty() : OptionalDouble.of(headroomUpTo(sensorClipAtBase));
    }

    /**
     * The most stops that can lie between middle grey and clip: with the sensor's clip when known, else as if the
     * sensor reached the curve's ceiling at base. Below base the shift is lost from it, above base the ceiling holds.
     * Infinite only for linear data of a sensor whose clip is not known.
     */
    public double headroomAtMostStops() {
        return headroomUpTo(sensorClipAtBase == null ? encoding.ceiling() : sensorClipAtBase);
    }

    /** Stops between middle grey and the noise floor, {@code floor at base - log2(EI / base)}. Empty when not known. */
    public OptionalDouble footroomStops() {
        return floorStopsAtBase == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(floorStopsAtBase - highlightShiftStops());
    }

    private double headroomUpTo(double clipAtBase) {
        double clip = Math.min(encoding.ceiling(), clipAtBase * exposureIndex / baseIso);
        return Stops.between(Encoding.MIDDLE_GREY, clip);
    }

    private static void requirePositive(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be greater than 0, was " + value);
        }
    }
}
