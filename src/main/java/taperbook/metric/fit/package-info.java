/** Straight-line and segmented fits, with the required statistics. */
@NullMarked
package taperbook.metric.fit;

import org.jspecify.annotations.NullMarked;
