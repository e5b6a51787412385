/** What is known of bodies, lenses, adapters and recorders. A fact that is not known is {@code null}, never a guess. */
@NullMarked
package akin.model.gear;

import org.jspecify.annotations.NullMarked;
