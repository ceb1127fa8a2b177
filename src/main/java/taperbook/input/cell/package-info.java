/** Cells and column headers: parsing of numbers, times, units and names. */
@NullMarked
package taperbook.input.cell;

import org.jspecify.annotations.NullMarked;
