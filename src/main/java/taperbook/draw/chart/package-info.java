/**
 * A chart as it is described before it is painted, in data units: axes, lines with their bands and
 * gaps, marks, who is ahead where; and the same in words.
 */
@NullMarked
package taperbook.draw.chart;

import org.jspecify.annotations.NullMarked;
