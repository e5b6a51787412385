package akin.model.finding;

import org.jspecify.annotations.Nullable;

/**
 * One change to a rig file.
 *
 * @param path dotted path of the setting, such as {@code units.B.shutter}; list elements by number from 0
 * @param to the new value as a rig file writes it (a scalar or a flow list); null removes the key
 */
public record Edit(String path, @Nullable String to) {}
