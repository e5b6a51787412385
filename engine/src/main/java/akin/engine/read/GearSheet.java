package akin.engine.read;

import akin.model.gear.Adapter;
import akin.model.gear.Body;
import akin.model.gear.Lens;
import akin.model.gear.Media;
import akin.model.gear.Mount;
import akin.model.gear.Recorder;
import akin.model.gear.SensorFormat;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Gear by kind and id, as a gear file or a rig file's own {@code gear:} section gives it.
 *
 * @param akinGear version of the gear file format; a file must say it, a section of a rig file need not
 * @param source where the facts of the whole file come from
 * @param overrides ids of entries that go in place of earlier ones; only a file of a pack says so
 * @param amends ids of entries whose facts are laid over those of earlier ones; only a file of a pack says so
 */
public record GearSheet(
        @Nullable Integer akinGear,
        @Nullable String source,
        @Nullable List<String> overrides,
        @Nullable List<String> amends,
        Map<String, Body> bodies,
        Map<String, Lens> lenses,
        Map<String, Recorder> recorders,
        Map<String, Media> media,
        Map<String, Adapter> adapters,
        Map<String, Mount> mounts,
        Map<String, SensorFormat> formats) {

    /** The format version that this program reads. */
    public static final int VERSION = 1;

    /**
     * A gear file.
     *
     * @throws BadInput when it does not say its version, or does not fit
     */
    public static GearSheet read(Document document, Binder binder) {
        GearSheet sheet = binder.bind(document, GearSheet.class);
        Integer version = sheet.akinGear();
        if (version == null || version != VERSION) {
            throw document.error("akin-gear", "a gear file starts with akin-gear: " + VERSION);
        }
        return sheet;
    }
}
