/** Tests of {@code taperbook.write.page}. */
@NullMarked
package taperbook.write.page;

import org.jspecify.annotations.NullMarked;
