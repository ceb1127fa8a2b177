/** Version and content hash of this program, and the date that a report carries. */
@NullMarked
package taperbook.buildinfo;

import org.jspecify.annotations.NullMarked;
