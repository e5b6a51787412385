/** Encodings of scene light as code values, and what they leave for highlights and shadows. */
@NullMarked
package akin.model.tone;

import org.jspecify.annotations.NullMarked;
