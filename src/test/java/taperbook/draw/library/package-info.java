@NullMarked
package taperbook.draw.library;

import org.jspecify.annotations.NullMarked;
