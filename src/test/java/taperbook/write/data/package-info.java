/** Tests of {@code taperbook.write.data}. */
@NullMarked
package taperbook.write.data;

import org.jspecify.annotations.NullMarked;
