/**
 * The rows of {@code readings.csv}, or of a table that is seen as one: time, each channel,
 * dropouts, jumps of the clock and counters that begin anew. Columns come in; traces and caveats go
 * out.
 */
@NullMarked
package taperbook.check.readings;

import org.jspecify.annotations.NullMarked;
