package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.exposure.Light;
import akin.model.finding.Target;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.List;

/**
 * The level at which the highlights of a unit clip, on its own exposure aid or on the recorder's where one records.
 *
 * @param unitName name of the unit
 * @param encoding the encoding that the aid is shown
 * @param headroom stops from middle grey to clip, as rated
 * @param aid the aid it is read on
 */
public record ClipAim(String unitName, Encoding encoding, double headroom, ExposureAid aid) implements Derived {

    /** The level, or what is missing for it; nothing where a LUT is recorded, whose curve nobody has told. */
    public static List<Object> derive(Unit unit) {
        if (LookRecorded.says(unit)) {
            return List.of();
        }
        Inputs inputs = ToneRange.require(RecordedEncoding.require(Inputs.of(ClipAim.class, unit), unit), unit);
        return ExposureAid.require(inputs, unit)
                .derive(() -> new ClipAim(
                        unit.name(),
                        requireNonNull(unit.encoding()),
                        requireNonNull(ToneRange.known(unit)).headroom(),
                        ExposureAid.of(unit)));
    }

    /**
     * The level, in the unit that the aid shows: the encoding of {@code 0.18 x 2^headroom}, no more than the highest code.
     */
    public Target target() {
        double signal = Math.min(1, encoding.encode(Encoding.MIDDLE_GREY * Light.ratio(headroom)));
        return aid.target(unitName, Target.CLIP, signal, headroom, "the highlights, spot-metered over the card");
    }
}
