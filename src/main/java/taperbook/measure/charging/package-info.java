/**
 * The numbers of one charging session: start and end, peak and hold, windows and marks of state of
 * charge, distance added, taper, and what set the power.
 */
@NullMarked
package taperbook.measure.charging;

import org.jspecify.annotations.NullMarked;
