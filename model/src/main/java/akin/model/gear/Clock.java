package akin.model.gear;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The clock that a body counts timecode by.
 *
 * @param ppm how far it may be off, in parts per million, 0 or above; null when not known
 * @param takes how it can be given timecode, best first; empty when it cannot; null when not known
 */
public record Clock(@Nullable Double ppm, @Nullable List<TimecodeSource> takes) {}
