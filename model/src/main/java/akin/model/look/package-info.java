/** The picture that units are judged through: from what each records to a display, exactly and as a look-up table. */
@NullMarked
package akin.model.look;

import org.jspecify.annotations.NullMarked;
