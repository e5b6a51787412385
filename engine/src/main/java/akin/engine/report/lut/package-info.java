/** Look-up tables as the files that devices and programs read, and what is said of them. */
@NullMarked
package akin.engine.report.lut;

import org.jspecify.annotations.NullMarked;
