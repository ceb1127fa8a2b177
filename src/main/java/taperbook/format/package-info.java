/**
 * Numbers, units, dates and labels as text. Depends on the nouns only, so that a number is
 * formatted in one place.
 */
@NullMarked
package taperbook.format;

import org.jspecify.annotations.NullMarked;
