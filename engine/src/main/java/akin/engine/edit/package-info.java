/** Changes to a rig file that leave every other byte as it was. */
@NullMarked
package akin.engine.edit;

import org.jspecify.annotations.NullMarked;
