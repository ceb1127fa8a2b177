/** The charts of a report: which there are, and what each shows. */
@NullMarked
package taperbook.chart.plots;

import org.jspecify.annotations.NullMarked;
