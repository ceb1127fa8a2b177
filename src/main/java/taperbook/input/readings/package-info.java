/** {@code readings.csv}: its columns, sampling interval and gaps. */
@NullMarked
package taperbook.input.readings;

import org.jspecify.annotations.NullMarked;
