/** Straight-line and segmented fits, with the statistics that they need. */
@NullMarked
package taperbook.metric.fit;

import org.jspecify.annotations.NullMarked;
