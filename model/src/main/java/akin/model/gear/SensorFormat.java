package akin.model.gear;

import akin.model.quantity.Area;
import org.jspecify.annotations.Nullable;

/**
 * A standard image format, to say a crop factor or a view against.
 *
 * @param id the word rig and gear files use for it
 * @param area its width and height
 */
public record SensorFormat(
        String id, String name, Area area, @Nullable String source) {

    /** A format without a name or an area is an error: it is nothing but these. */
    public SensorFormat {
        if (name == null || area == null) {
            throw new IllegalArgumentException("a format has a name and an area");
        }
    }
}
