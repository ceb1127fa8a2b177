/**
 * Figures as files: a chart, or whatever else can be painted, with its words; as SVG by Batik's
 * generator, and as PNG in every rendition.
 */
@NullMarked
package taperbook.draw.picture;

import org.jspecify.annotations.NullMarked;
