/** Checks of the quantities: their notations, their ranges, and their arithmetic against published tables. */
@NullMarked
package akin.model.quantity;

import org.jspecify.annotations.NullMarked;
