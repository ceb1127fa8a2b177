/** Metrics of a charging session and of its battery. */
@NullMarked
package taperbook.metric.session;

import org.jspecify.annotations.NullMarked;
