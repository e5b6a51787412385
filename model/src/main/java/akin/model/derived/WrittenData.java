package akin.model.derived;

import static java.util.Objects.requireNonNull;

import akin.model.finding.WhereFound;
import akin.model.gear.Codec;
import akin.model.gear.DataFlow;
import akin.model.gear.Media;
import akin.model.rig.MediaPlan;
import akin.model.rig.Unit;
import java.util.List;

/**
 * How much a unit writes, and how fast its media take it. Only for a unit whose media are planned.
 *
 * @param unitName name of the unit
 * @param bitsPerSecond what the codec writes, for the picture and the rate of the unit
 * @param mediaBitsPerSecond what the media take without a break
 */
public record WrittenData(String unitName, double bitsPerSecond, double mediaBitsPerSecond) implements Derived {

    /** The data and the media, or what is missing for them. */
    public static List<Object> derive(Unit unit) {
        MediaPlan plan = unit.media();
        if (plan == null) {
            return List.of();
        }
        Media media = plan.media();
        return flow(Inputs.of(WrittenData.class, unit), unit)
                .input(media.path("writes"), WhereFound.SPEC_SHEET, media.bitsPerSecond())
                .derive(() -> new WrittenData(unit.name(), bits(unit), requireNonNull(media.bitsPerSecond())));
    }

    /** Names what is needed for the data that a unit writes. */
    static Inputs flow(Inputs inputs, Unit unit) {
        Codec codec = unit.recording().codec();
        inputs.setting(unit.recording().external() ? "recorder.codec" : "codec", codec);
        if (codec != null) {
            DataFlow data = codec.data();
            inputs.input(
                    GradingRoom.path(unit, codec, "data.rate"),
                    WhereFound.SPEC_SHEET,
                    data == null ? null : data.rate());
            inputs.mode("picture", WhereFound.SPEC_SHEET, unit.recordedPicture());
        }
        return inputs;
    }

    /** Bits a second, once everything that {@link #flow} names is known. */
    static double bits(Unit unit) {
        DataFlow data = requireNonNull(requireNonNull(unit.recording().codec()).data());
        return requireNonNull(data.bitsPerSecond(requireNonNull(unit.recordedPicture()), unit.rate()));
    }

    /** What the media would have to take, with this much to spare, in bits a second. */
    public double wanted(double sparePercent) {
        return bitsPerSecond * (1 + sparePercent / 100);
    }

    /** A rate in megabytes a second, as cards state it. */
    public static double megabytes(double bits) {
        return bits / 8e6;
    }
}
