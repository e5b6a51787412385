/** Shot clips: what their files say of themselves, for comparison with the plan. */
@NullMarked
package akin.model.footage;

import org.jspecify.annotations.NullMarked;
