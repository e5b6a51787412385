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
        String id, String name, Area area, @Nullable String source) {}
