/**
 * Tables by their columns: finds the columns that a file has among those it may have, and reads
 * numbers and times from their cells, row by row. What is wrong is told with its place.
 */
@NullMarked
package taperbook.check.table;

import org.jspecify.annotations.NullMarked;
