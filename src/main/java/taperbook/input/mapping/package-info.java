/**
 * {@code columns.csv}, which maps the columns of a log file to channels, and the detection that
 * proposes one.
 */
@NullMarked
package taperbook.input.mapping;

import org.jspecify.annotations.NullMarked;
