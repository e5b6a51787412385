package akin.model.derived;

import akin.model.gear.Recorder;
import akin.model.rig.LutHolder;
import akin.model.rig.Monitor;
import akin.model.rig.Unit;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The device that puts a unit's look-up table on the picture, and the sizes it takes.
 *
 * @param called the device, in words
 * @param accepts points along an edge that it takes; empty when it takes no table at all; null when not known
 * @param path where the sizes would be written
 */
public record LutDevice(String called, @Nullable List<Integer> accepts, String path) {

    /** The device that the plan names; null when it names none. */
    public static @Nullable LutDevice of(Unit unit) {
        Monitor monitor = unit.monitor();
        LutHolder holder = monitor == null ? null : monitor.heldBy();
        Recorder recorder = unit.recording().recorder();
        if (monitor == null || holder == null) {
            return null;
        }
        return switch (holder) {
            case BODY ->
                new LutDevice(
                        unit.body().called(),
                        unit.body().lutSizes(),
                        unit.body().path("lut-sizes"));
            case RECORDER ->
                recorder == null
                        ? null
                        : new LutDevice(recorder.called(), recorder.lutSizes(), recorder.path("lut-sizes"));
            case SCREEN -> new LutDevice("the screen", monitor.accepts(), unit.path("monitor.accepts"));
        };
    }

    /** Of these sizes those that the device of a unit takes; all of them where that is not known. */
    public static List<Integer> fitting(Unit unit, Collection<Integer> sizes) {
        LutDevice device = of(unit);
        List<Integer> accepts = device == null ? null : device.accepts();
        return sizes.stream()
                .filter(size -> accepts == null || accepts.contains(size))
                .toList();
    }
}
