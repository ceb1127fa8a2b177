/** Charts of what was measured, as vector and raster images. */
@NullMarked
package taperbook.draw;

import org.jspecify.annotations.NullMarked;
