/** The charts of a library: many sessions on small multiples and dot plots. */
@NullMarked
package taperbook.chart.library;

import org.jspecify.annotations.NullMarked;
