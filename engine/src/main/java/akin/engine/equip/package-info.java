/** From a rig sheet and the gear catalogue to a rig with every word looked up. */
@NullMarked
package akin.engine.equip;

import org.jspecify.annotations.NullMarked;
