/**
 * What limits trust in a session: caveats, cross-checks by a second method, and readings that
 * contradict the others.
 */
@NullMarked
package taperbook.metric.quality;

import org.jspecify.annotations.NullMarked;
