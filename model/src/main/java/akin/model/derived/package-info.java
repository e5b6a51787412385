/** Per-unit facts that follow from a unit's settings and gear; rules compare these, never raw settings. */
@NullMarked
package akin.model.derived;

import org.jspecify.annotations.NullMarked;
