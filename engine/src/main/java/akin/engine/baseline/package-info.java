/** Findings that a production has known and decided to live with for now, so that only new ones fail a check. */
@NullMarked
package akin.engine.baseline;

import org.jspecify.annotations.NullMarked;
