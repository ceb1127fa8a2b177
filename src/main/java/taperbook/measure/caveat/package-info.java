/**
 * What a reader must know of a session, of its plateau and of a range test, derived from their
 * facts and readings.
 */
@NullMarked
package taperbook.measure.caveat;

import org.jspecify.annotations.NullMarked;
