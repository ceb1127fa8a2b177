/** Figures found a second way, and held against what the displays' rounding allows. */
@NullMarked
package taperbook.measure.crosscheck;

import org.jspecify.annotations.NullMarked;
