/** Tests of {@code taperbook.write.html}. */
@NullMarked
package taperbook.write.html;

import org.jspecify.annotations.NullMarked;
