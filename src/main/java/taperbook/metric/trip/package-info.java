/** Planning a trip with charging stops, and road load, air and wind, as plain mathematics. */
@NullMarked
package taperbook.metric.trip;

import org.jspecify.annotations.NullMarked;
