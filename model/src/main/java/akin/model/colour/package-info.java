/** Gamuts, adaptation between whites, colour temperature shifts and colour difference. */
@NullMarked
package akin.model.colour;

import org.jspecify.annotations.NullMarked;
