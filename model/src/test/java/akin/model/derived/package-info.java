/** Checks of what follows from one unit's settings and gear. */
@NullMarked
package akin.model.derived;

import org.jspecify.annotations.NullMarked;
