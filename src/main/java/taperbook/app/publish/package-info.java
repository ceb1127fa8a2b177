/**
 * The folder of a report: a new version takes the place of the old one whole, one run at a time,
 * and published versions are kept with their corrections.
 */
@NullMarked
package taperbook.app.publish;

import org.jspecify.annotations.NullMarked;
