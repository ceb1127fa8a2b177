/**
 * Draws the figures of a library: small multiples of all curves on equal axes, average against peak
 * power, minutes against driven range. Uses the sizes, colours, type and label placing of {@code
 * draw}, which knows nothing of it.
 */
@NullMarked
package taperbook.draw.library;

import org.jspecify.annotations.NullMarked;
