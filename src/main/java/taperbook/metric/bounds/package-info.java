/** Bounds that rounded, sparse readings imply, without a statistical model. */
@NullMarked
package taperbook.metric.bounds;

import org.jspecify.annotations.NullMarked;
