/**
 * How much light a setting collects: stops apart, T numbers, light values, neutral density and what a match in depth
 * costs in light. Everything is in stops (powers of two) once it has left its own unit.
 */
@NullMarked
package akin.model.exposure;

import org.jspecify.annotations.NullMarked;
