/**
 * What the metrics stage returns: numbers with value, interval, basis, caveats and rows, and the
 * curves to draw. No type here computes a metric.
 */
@NullMarked
package taperbook.result;

import org.jspecify.annotations.NullMarked;
