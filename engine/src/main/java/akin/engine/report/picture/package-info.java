/**
 * Pictures of a rig: what people would rather look at than read. Each is a drawing with its numbers beside it, made from the
 * model's own arithmetic. A unit of which a fact is not known stands among the gaps and is not drawn.
 */
@NullMarked
package akin.engine.report.picture;

import org.jspecify.annotations.NullMarked;
