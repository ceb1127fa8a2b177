/** Metrics that need a range test, a speed or a price: distances, trips, costs. */
@NullMarked
package taperbook.metric.road;

import org.jspecify.annotations.NullMarked;
