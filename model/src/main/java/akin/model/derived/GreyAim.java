package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Target;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import java.util.List;

/**
 * Where an 18 % grey card must sit on a unit's own exposure aid, or on the recorder's where one records.
 *
 * @param unitName name of the unit
 * @param encoding the encoding that the aid is shown
 * @param aid the aid it is read on
 */
public record GreyAim(String unitName, Encoding encoding, ExposureAid aid) implements Derived {

    /** The aim, or what is missing for it; nothing where a LUT is recorded, whose curve for grey nobody has told. */
    public static List<Object> derive(Unit unit) {
        if (LookRecorded.says(unit)) {
            return List.of();
        }
        Inputs inputs = RecordedEncoding.require(Inputs.of(GreyAim.class, unit), unit);
        return ExposureAid.require(inputs, unit)
                .derive(() -> new GreyAim(unit.name(), requireNonNull(unit.encoding()), ExposureAid.of(unit)));
    }

    /** The level, in the unit that the aid shows. */
    public Target target() {
        String spot = aid.aid() == null
                ? "incident, or spot on the card, at this unit's ISO less its neutral density"
                : "spot-metering the card";
        return aid.target(unitName, Target.MIDDLE_GREY, encoding.middleGrey(), 0, spot);
    }
}
