/** From the text of a rig or gear file to typed sheets, strictly, keeping the place of every value. */
@NullMarked
package akin.engine.read;

import org.jspecify.annotations.NullMarked;
