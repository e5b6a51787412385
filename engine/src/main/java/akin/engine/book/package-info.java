/** The rule book's pages: what they say, what they need, and their examples. */
@NullMarked
package akin.engine.book;

import org.jspecify.annotations.NullMarked;
