/**
 * Draws the figures of a library: small multiples of all curves on equal axes, and lists of
 * sessions sorted by a time. Uses the sizes, colours and type of {@code draw.style} and the label
 * placing of {@code draw.label}, which know nothing of it.
 */
@NullMarked
package taperbook.draw.library;

import org.jspecify.annotations.NullMarked;
