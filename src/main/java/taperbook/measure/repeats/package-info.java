/**
 * Runs of one session held together: mean, spread and next run of its headline numbers, the mean
 * power curve, and which conditions of sessions are unlike. Gets the numbers and courses of each
 * run, gives numbers, a curve and the spread that comparisons allow for.
 */
@NullMarked
package taperbook.measure.repeats;

import org.jspecify.annotations.NullMarked;
