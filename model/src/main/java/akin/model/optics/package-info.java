/**
 * Lenses and picture areas: angle of view, crop, depth of field, diffraction, image circles, flange distances,
 * converters, picture shapes and the skew of a rolling shutter. Lengths are millimetres unless a name says otherwise.
 */
@NullMarked
package akin.model.optics;

import org.jspecify.annotations.NullMarked;
