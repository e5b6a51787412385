/**
 * Time on a set: exposure times and shutter angles, slipping rates and drifting clocks, light that pulses, screens that
 * refresh, timecode counting, and how fast a pan may be. Times and rates are exact fractions wherever two of them are
 * compared, because a shutter of 1/50 s is safe under 50 Hz and one that is almost 1/50 s is only nearly so.
 */
@NullMarked
package akin.model.timing;

import org.jspecify.annotations.NullMarked;
