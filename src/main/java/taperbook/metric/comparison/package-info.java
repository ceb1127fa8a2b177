/** Comparisons of two sessions and statistics of repeated runs. */
@NullMarked
package taperbook.metric.comparison;

import org.jspecify.annotations.NullMarked;
