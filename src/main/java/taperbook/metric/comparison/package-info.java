/** Two sessions against each other, and repeated runs of one. */
@NullMarked
package taperbook.metric.comparison;

import org.jspecify.annotations.NullMarked;
