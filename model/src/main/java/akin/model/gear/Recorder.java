package akin.model.gear;

import akin.model.quantity.FrameRate;
import akin.model.quantity.Mass;
import akin.model.quantity.Power;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An external recorder.
 *
 * @param id the word a rig file uses for it
 * @param codecs what it writes, by id
 * @param rates the rates it takes; null when not known
 * @param reads the range of codes it takes the signal to be in; null when it can be set to either
 * @param clips how it writes clips
 * @param aids the exposure aids it shows, most exact first
 * @param lutSizes points along an edge of the look-up tables that it takes for watching; empty when it takes none
 * @param inputs its picture inputs, by id
 * @param keepsSettings true when it still knows its settings after it was switched off
 * @param firmware version that these facts were taken from
 * @param power what it draws at most
 * @param mass its mass, without battery and lens
 */
public record Recorder(
        String id,
        @Nullable String name,
        @Nullable String maker,
        Map<String, Codec> codecs,
        @Nullable List<FrameRate> rates,
        @Nullable SignalRange reads,
        @Nullable Clips clips,
        @Nullable List<Aid> aids,
        @Nullable List<Integer> lutSizes,
        Map<String, Input> inputs,
        @Nullable Boolean keepsSettings,
        @Nullable String firmware,
        @Nullable Power power,
        @Nullable Mass mass,
        @Nullable String source) {

    /** The dotted path of one of its facts. */
    public String path(String key) {
        return "gear.recorders." + id + "." + key;
    }

    /** The name people call it by: its name, or its id where none is given. */
    public String called() {
        return name == null ? id : name;
    }
}
