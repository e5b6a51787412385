/**
 * Quantities as a film-maker writes them: frame rates, shutters, apertures, filters, lengths and the rest.
 *
 * <p>Every type is immutable, checks its range when it is made, reads its own notation with {@code parse} and writes it
 * back with {@code toString} so that {@code parse(x.toString()).equals(x)}. Numbers are plain decimals with a point: no
 * locale, no exponent, no separators. {@code ALLOWED} says in words how a quantity may be written; {@code PATTERN} says the
 * same as a regular expression that Java and ECMA-262 read alike, and it accepts everything {@code parse} accepts (it may
 * also accept values out of range).
 */
@NullMarked
package akin.model.quantity;

import org.jspecify.annotations.NullMarked;
