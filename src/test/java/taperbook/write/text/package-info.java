/** Tests of {@code taperbook.write.text}. */
@NullMarked
package taperbook.write.text;

import org.jspecify.annotations.NullMarked;
