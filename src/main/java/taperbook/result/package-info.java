/**
 * Results of the metrics stage: numbers with value, interval, basis, caveats and rows, and the
 * curves to draw. No type in this package computes a metric.
 */
@NullMarked
package taperbook.result;

import org.jspecify.annotations.NullMarked;
