/** Tests of {@code taperbook.words}. */
@NullMarked
package taperbook.words;

import org.jspecify.annotations.NullMarked;
