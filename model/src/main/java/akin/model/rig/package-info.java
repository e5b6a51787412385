/** A planned production: its units as they will stand on set, its scenes and what they are matched to. */
@NullMarked
package akin.model.rig;

import org.jspecify.annotations.NullMarked;
