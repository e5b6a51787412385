package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Target;
import akin.model.finding.WhereFound;
import akin.model.gear.Aid;
import akin.model.gear.Recorder;
import akin.model.gear.SignalRange;
import akin.model.rig.Unit;
import akin.model.tone.Encoding;
import akin.model.tone.SignalLevel;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where an 18 % grey card must sit on a unit's own exposure aid, or on the recorder's where one records.
 *
 * @param unitName name of the unit
 * @param encoding the encoding that the aid is shown
 * @param aid the most exact aid that shows a number; null when there is none
 * @param full true when the aid shows the share of the full code range, as a recorder does that takes full-range codes
 */
public record GreyAim(
        String unitName, Encoding encoding, @Nullable Aid aid, boolean full) implements Derived {

    private static final String CARD = "middle-grey";

    /** The aim, or what is missing for it; nothing where a table is recorded, whose curve for grey nobody has told. */
    public static List<Object> derive(Unit unit) {
        if (LookRecorded.says(unit)) {
            return List.of();
        }
        Recorder recorder = unit.recording().recorder();
        List<Aid> aids = recorder == null ? unit.body().aids() : recorder.aids();
        Inputs inputs = RecordedEncoding.require(Inputs.of(GreyAim.class, unit), unit);
        inputs.input(recorder == null ? unit.body().path("aids") : recorder.path("aids"), WhereFound.MANUAL, aids);
        return inputs.derive(() -> new GreyAim(
                unit.name(),
                requireNonNull(unit.encoding()),
                numbered(requireNonNull(aids)).orElse(null),
                recorder != null && unit.recording().reads() == SignalRange.FULL));
    }

    private static Optional<Aid> numbered(List<Aid> aids) {
        return aids.stream().filter(aid -> aid != Aid.HISTOGRAM).findFirst();
    }

    /** The level, in the unit that the aid shows. */
    public Target target() {
        double grey = encoding.middleGrey();
        double percent = 100 * (full ? grey : SignalLevel.fullToLegal(grey));
        if (aid == null) {
            return new Target(
                    unitName,
                    CARD,
                    0,
                    "stops",
                    "hand-held meter: incident, or spot on the card, at this unit's ISO less its neutral density");
        }
        return switch (aid) {
            case WAVEFORM -> percent(percent, "waveform");
            case SPOT -> percent(percent, "spot meter");
            case ZEBRA -> percent(percent, "zebra");
            case FALSE_COLOUR -> percent(percent, "false colour: the band that holds this level");
            case CODE_VALUES ->
                new Target(unitName, CARD, Math.rint(SignalLevel.code10(grey)), "of 1023", "code-value read-out");
            case METER -> new Target(unitName, CARD, 0, "stops", "plus-minus scale, spot-metering the card");
            case HISTOGRAM -> throw new IllegalStateException("a histogram shows no number");
        };
    }

    private Target percent(double value, String words) {
        // No aid is read to better than a tenth of a per cent.
        double read = Math.rint(value * 10) / 10;
        return new Target(unitName, CARD, read, full ? "% of the full range" : "% of the legal range", words);
    }
}
