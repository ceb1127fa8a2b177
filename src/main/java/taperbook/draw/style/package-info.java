/**
 * What all pictures are painted with: sizes, colours and the grounds that they lie on, the type,
 * pens and markers, and the simplest of shapes. Knows of no chart. The fonts it carries are the
 * only files that {@code draw} reads.
 */
@NullMarked
package taperbook.draw.style;

import org.jspecify.annotations.NullMarked;
