/**
 * Paints a chart layer by layer on a Graphics2D: solid lines by XChart, everything else by itself.
 * Texts are handed back to be set.
 */
@NullMarked
package taperbook.draw.paint;

import org.jspecify.annotations.NullMarked;
