/** Trip planning with charging stops; road load, air and wind. */
@NullMarked
package taperbook.metric.trip;

import org.jspecify.annotations.NullMarked;
