package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.Target;
import akin.model.finding.WhereFound;
import akin.model.gear.Aid;
import akin.model.gear.Recorder;
import akin.model.gear.SignalRange;
import akin.model.rig.Unit;
import akin.model.tone.SignalLevel;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The aid on which the levels of a unit are read: the most exact one that shows a number, on the recorder where one records.
 *
 * @param aid the aid; null when none shows a number
 * @param full true when it shows the share of the full code range, as a recorder does that takes full-range codes
 */
public record ExposureAid(@Nullable Aid aid, boolean full) {

    private static final String METERED = "stops";

    /** Names what is needed of a unit to know its aid. */
    static Inputs require(Inputs inputs, Unit unit) {
        Recorder recorder = unit.recording().recorder();
        return inputs.input(
                recorder == null ? unit.body().path("aids") : recorder.path("aids"), WhereFound.MANUAL, aids(unit));
    }

    /** The aid of a unit of which {@link #require} found everything known. */
    static ExposureAid of(Unit unit) {
        return new ExposureAid(
                requireNonNull(aids(unit)).stream()
                        .filter(aid -> aid != Aid.HISTOGRAM)
                        .findFirst()
                        .orElse(null),
                unit.recording().recorder() != null && unit.recording().reads() == SignalRange.FULL);
    }

    private static @Nullable List<Aid> aids(Unit unit) {
        Recorder recorder = unit.recording().recorder();
        return recorder == null ? unit.body().aids() : recorder.aids();
    }

    /**
     * A level, in the unit that the aid shows.
     *
     * @param unit name of the unit
     * @param name what it is the level of
     * @param signal share of the full code range, 0 to 1
     * @param stops the same over middle grey, in stops
     * @param spot where a meter of stops has to look
     */
    Target target(String unit, String name, double signal, double stops, String spot) {
        if (aid == null) {
            return new Target(unit, name, stops, METERED, "hand-held meter: " + spot);
        }
        return switch (aid) {
            case WAVEFORM -> percent(unit, name, signal, "waveform");
            case SPOT -> percent(unit, name, signal, "spot meter");
            case ZEBRA -> percent(unit, name, signal, "zebra");
            case FALSE_COLOUR -> percent(unit, name, signal, "false colour: the band that holds this level");
            case CODE_VALUES ->
                new Target(unit, name, Math.rint(SignalLevel.code10(signal)), "of 1023", "code-value read-out");
            case METER -> new Target(unit, name, stops, METERED, "plus-minus scale: " + spot);
            case HISTOGRAM -> throw new IllegalStateException("a histogram shows no number");
        };
    }

    private Target percent(String unit, String name, double signal, String words) {
        double percent = 100 * (full ? signal : SignalLevel.fullToLegal(signal));
        // No aid is read to better than a tenth of a per cent.
        double read = Math.rint(percent * 10) / 10;
        return new Target(unit, name, read, full ? "% of the full range" : "% of the legal range", words);
    }
}
