/**
 * Numbers, units, dates and labels as text. Depends only on data types, so that a number is
 * formatted in one place.
 */
@NullMarked
package taperbook.format;

import org.jspecify.annotations.NullMarked;
