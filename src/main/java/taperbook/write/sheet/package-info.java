/** A recording sheet in words in, a PDF to print and write on out. */
@NullMarked
package taperbook.write.sheet;

import org.jspecify.annotations.NullMarked;
