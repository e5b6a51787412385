package akin.model.rig;

import akin.model.quantity.Timespan;
import org.jspecify.annotations.Nullable;

/**
 * How much of a scene each unit is planned to record.
 *
 * @param longest the longest take
 * @param total all takes together
 */
public record Takes(@Nullable Timespan longest, @Nullable Timespan total) {}
