/** Quality of a session: caveats, cross-checks by a second method, and misread detection. */
@NullMarked
package taperbook.metric.quality;

import org.jspecify.annotations.NullMarked;
