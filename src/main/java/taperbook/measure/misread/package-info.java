/**
 * Sessions to readings that do not fit all others, with what would fit and the slip of the pen that
 * explains it.
 */
@NullMarked
package taperbook.measure.misread;

import org.jspecify.annotations.NullMarked;
