/** From a rig to a ranked assessment, by way of the rule session. */
@NullMarked
package akin.engine.assess;

import org.jspecify.annotations.NullMarked;
