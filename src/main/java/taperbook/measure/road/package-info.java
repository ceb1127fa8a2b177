/**
 * What charging means on the road, as plain mathematics on numbers: plans of trips, the best
 * stretch of a charging curve, the air and wind of a drive. No numbers of reports are made here;
 * that is the business of {@code measure}. Knows {@code model} only.
 */
@NullMarked
package taperbook.measure.road;

import org.jspecify.annotations.NullMarked;
