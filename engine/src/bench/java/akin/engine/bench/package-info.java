/** How fast a warm Akin assesses. */
@NullMarked
package akin.engine.bench;

import org.jspecify.annotations.NullMarked;
