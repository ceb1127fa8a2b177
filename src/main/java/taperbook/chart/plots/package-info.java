/** The charts of a report and their content. */
@NullMarked
package taperbook.chart.plots;

import org.jspecify.annotations.NullMarked;
