/** Cells and column headers: numbers, times, units and names as they were written. */
@NullMarked
package taperbook.input.cell;

import org.jspecify.annotations.NullMarked;
